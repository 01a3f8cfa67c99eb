/**
 * Right answers and those of slips in the families of measuring, worked by hand. Arithmetic of the trade's rules: common
 * practice, no source, unless a row says otherwise. Take-outs, insertions, splices and strut: practice catalogue, training
 * values (90° elbow 7 at 4 in, 9 at 6 in and where it turns down, 45° fitting 4, tee 9; 1 1/2 goes in; plate 6; sleeve
 * 10 1/8 with 5 from each side; reducer 9; length 240; saw 1/8; strut 1 5/8).
 */
import { describe, expect, test } from 'vitest';
import { readLength, type Ticks } from '../../../src/trade/length.ts';
import { job } from '../means.ts';

const at = (text: string): Ticks => readLength(text);
type Row = readonly [slip: string, ask: string, wanted: number | string | null];

/** Each slip's answer; null where it cannot be made. */
function slips(made: ReturnType<typeof job>, rows: readonly Row[]) {
  test.each(rows)('%s on %s', (slip, ask, wanted) => {
    const answer = made.slipped(slip, ask);
    if (typeof wanted === 'number') expect(answer).toBeCloseTo(wanted, 9);
    else expect(answer).toBe(wanted);
  });
}

describe('read a tape', () => {
  const made = job('read-tape', { hooked: 'hook', reading: at(`7'-3 5/8"`) });
  test('right', () => {
    expect(made.answer('length')).toBe(87.625);
    expect(made.answer('feet')).toBeCloseTo(7.302083, 6);
  });
  slips(made, [
    ['footAsTen', 'length', 73.625],
    ['sixteenthForEighth', 'length', 87.3125],
    ['eighthForSixteenth', 'length', null], // ten eighths are no part of an inch
    ['decimalFeet', 'length', 88.225], // 7.3 ft and 5/8
    ['nextInch', 'length', 88.625],
    ['inchLeftOn', 'length', null],
    ['inchTakenOff', 'length', 86.625],
    ['pointForFoot', 'feet', 7.3625],
    ['partDropped', 'feet', 7.25],
  ]);

  describe('held at the 1-in mark', () => {
    const held = job('read-tape', { hooked: 'inch', reading: at(`7'-3 5/8"`) });
    test('right', () => expect(held.answer('length')).toBe(86.625));
    slips(held, [
      ['inchLeftOn', 'length', 87.625],
      ['inchAdded', 'length', 88.625],
      ['inchTakenOff', 'length', null],
    ]);
  });

  test('an edge on a whole inch is no job', () => {
    expect(job('read-tape', { hooked: 'hook', reading: at(`7'-3"`) }).plan).toBeNull();
  });
});

describe('add lengths', () => {
  const made = job('add-lengths', {
    lengths: [`6'-9 3/4"`, `4'-7 7/8"`, '11 1/2'].map((length) => ({ length: at(length) })),
    rest: at(`2'-8 1/4"`),
  });
  test('right', () => {
    expect(made.answer('sum')).toBe(149.125);
    expect(made.answer('rest')).toBe(32.25); // 15'-1 3/8 less 12'-5 1/8
  });
  slips(made, [
    ['partsNotCarried', 'sum', 147.125], // 12'-3 1/8"
    ['carriedAtTen', 'sum', 153.125], // 12'-9 1/8"
    ['lastLeftOut', 'sum', 137.625], // 11'-5 5/8"
    ['borrowedTen', 'rest', 30.25],
    ['smallFromLarge', 'rest', 39.75], // 3 ft and 5 1/8 − 1 3/8
    ['footKept', 'rest', 44.25],
  ]);
  test('nothing to borrow', () => {
    const plain = job('add-lengths', { lengths: [{ length: at(`2'-3"`) }], rest: at(`1'-6"`) });
    expect(plain.answer('rest')).toBe(18);
    expect(plain.slipped('borrowedTen', 'rest')).toBeNull();
  });
});

describe('drop between elevations', () => {
  const given = { strut: 'deep', upper: at(`112'-6"`), lower: at(`103'-9 1/2"`) };
  const made = job('drop-between-elevations', { ...given, noted: 'tray' });
  test('right', () => expect(made.answer('drop')).toBe(104.5)); // 8'-8 1/2"
  slips(made, [
    ['asDecimals', 'drop', 103.8], // 112.6 − 103.95 ft
    ['strutAdded', 'drop', 106.125],
    ['strutForgotten', 'drop', null],
    ['borrowedTen', 'drop', 102.5],
    ['smallFromLarge', 'drop', 111.5], // 9 ft and 9 1/2 − 6
    ['footKept', 'drop', 116.5],
  ]);
  describe('the underside of the strut is noted', () => {
    const strut = job('drop-between-elevations', { ...given, noted: 'underside' });
    test('right', () => expect(strut.answer('drop')).toBe(106.125));
    slips(strut, [
      ['strutForgotten', 'drop', 104.5],
      ['strutTakenOff', 'drop', 102.875],
      ['strutAdded', 'drop', null],
    ]);
  });
});

describe('decimal elevations', () => {
  const made = job('decimal-elevations', { title: 'said', upper: 112.5, lower: 104.75 });
  test('right', () => expect([made.answer('unit'), made.answer('drop')]).toEqual(['decimal', 93]));
  slips(made, [
    ['tenthsAsInches', 'drop', 91.5],
    ['firstDecimal', 'drop', 91],
    ['decimalsAsInches', 'drop', 159], // 7 ft 75 in
    ['askedThoughSaid', 'unit', 'ask'],
    ['assumed', 'unit', null],
  ]);
  test('where the drawing does not say, ask', () => {
    const silent = job('decimal-elevations', { title: 'silent', upper: 112.5, lower: 104.75 });
    expect(silent.answer('unit')).toBe('ask');
    expect(silent.slipped('assumed', 'unit')).toBe('decimal');
  });
  test('in metres, where the title block says so', () => {
    const metric = job('decimal-elevations', { title: 'metres', upper: 112.5, lower: 104.75 });
    expect([metric.answer('unit'), metric.answer('drop')]).toEqual(['metres', 305.125]); // 7750 / 25.4 = 305.118
    expect([metric.slipped('feetForMetres', 'unit'), metric.slipped('feetForMetres', 'drop')]).toEqual([
      'decimal',
      93,
    ]);
    expect(metric.slipped('roughMetre', 'drop')).toBe(306.875); // 7.75 × 3.3 = 25.575 ft, 306.9 in
    expect(metric.slipped('tenthsAsInches', 'drop')).toBeNull();
    expect(made.slipped('roughMetre', 'drop')).toBeNull();
  });
});

describe('read a drawing', () => {
  const drawn = {
    sheet: 300,
    last: 3,
    newest: 'top',
    state: 'for-comment',
    register: 'earlier',
    first: at(`8'-3"`),
    second: at(`10'-6"`),
    third: at(`6'-0 1/2"`),
    bay: 2,
    steel: 112.5,
    over: 1.25,
    down: 7.6,
    level: 'channel',
  };
  const made = job('read-drawing', drawn);
  // D is for comment, so C is in hand; the register knows B.
  test('right', () => {
    expect(['revision', 'next', 'dimension'].map(made.answer)).toEqual(['c', 'ask', 126]);
    expect(made.answer('elevation')).toBe(113.75);
  });
  slips(made, [
    ['notIssued', 'revision', 'd'],
    ['otherEnd', 'revision', 'b'],
    ['workedAhead', 'next', 'work'],
    ['registerTrusted', 'next', 'newer'],
    ['workedByOld', 'next', null],
    ['nextBay', 'dimension', 72.5],
    ['overall', 'dimension', 297.5], // 99 + 126 + 72.5
    ['scaled', 'dimension', 99.1875], // a third of 297.5, on a tape
    ['markBelow', 'elevation', 112.5],
    ['markAbove', 'elevation', null],
    ['pointForInches', 'elevation', 113.625], // 113 ft 7.5 in
  ]);
  test.each([
    ['same', 'c', 'work'],
    ['later', 'c', 'newer'],
  ])('the register the %s', (register, revision, next) => {
    const other = job('read-drawing', { ...drawn, register });
    expect(['revision', 'next'].map(other.answer)).toEqual([revision, next]);
  });
  test('all issued, the last is in hand; the other marks', () => {
    const issued = job('read-drawing', { ...drawn, state: 'issued', level: 'stand', newest: 'bottom' });
    expect(['revision', 'elevation'].map(issued.answer)).toEqual(['d', 104.9]);
    expect(issued.slipped('markAbove', 'elevation')).toBe(112.5);
    expect(job('read-drawing', { ...drawn, level: 'steel' }).slipped('markAbove', 'elevation')).toBe(113.75);
  });
});

describe('metric drawing', () => {
  // 1 in = 25.4 mm: International yard and pound agreement, 1959.
  const made = job('metric-drawing', { metric: 2350, length: at(`7'-3 5/8"`) });
  test('right', () => {
    expect(made.answer('inches')).toBe(92.5); // 92.52
    expect(made.answer('mm')).toBeCloseTo(2225.675, 6);
  });
  slips(made, [
    ['twentyFive', 'inches', 94],
    ['thirty', 'inches', 78.3125],
    ['decimalsAsPart', 'inches', 94.5], // 92 and 5/2
    ['twentyFive', 'mm', 2190.625],
    ['footAsTen', 'mm', 1870.075], // 73 5/8
    ['partDropped', 'mm', 2209.8], // 87
  ]);
});

describe('face to face', () => {
  const face = (first: string, second: string) =>
    job('face-to-face', { width: 'card-4', first, second, distance: at(`9'-4"`) });
  const made = face('socket', 'socket');
  test('right', () => expect([made.answer('ends'), made.answer('cut')]).toEqual(['both', 115]));
  slips(made, [
    ['noInsertion', 'cut', 112],
    ['noInsertion', 'ends', 'neither'],
    ['firstInsertionOnly', 'cut', 113.5],
    ['firstInsertionOnly', 'ends', 'first'],
    ['insertionTakenOff', 'cut', 109],
    ['insertionAtBoth', 'cut', null],
  ]);
  describe('one end butts', () => {
    const one = face('butt', 'socket');
    test('right', () => expect([one.answer('ends'), one.answer('cut')]).toEqual(['second', 113.5]));
    slips(one, [
      ['insertionAtBoth', 'cut', 115],
      ['insertionAtOther', 'ends', 'first'],
      ['insertionAtOther', 'cut', 113.5], // the same length: only the ends tell it
      ['firstInsertionOnly', 'cut', null],
    ]);
  });
  test('two ends that butt are no job', () => expect(face('butt', 'butt').plan).toBeNull());
});

describe('between working points', () => {
  const points = (first: string, second: string) =>
    job('between-working-points', { width: 'card-4', first, second, distance: at(`10'-6"`) });
  const made = points('elbow-90', 'elbow-90');
  test('right', () => expect([made.answer('faces'), made.answer('cut')]).toEqual([112, 115]));
  slips(made, [
    ['noTakeOut', 'cut', 129],
    ['noTakeOut', 'faces', 126],
    ['firstTakeOutOnly', 'cut', 122],
    ['secondTakeOutOnly', 'cut', null], // equal take-outs: the same answer
    ['noInsertion', 'cut', 112],
    ['firstInsertionOnly', 'cut', 113.5],
    ['otherWidth', 'cut', 111], // 9, the 6-in elbow's, twice
  ]);
  test('a 45° elbow and a tee', () => {
    const mixed = points('elbow-45', 'tee');
    expect(mixed.answer('cut')).toBe(116); // 126 − 4 − 9 + 3
    expect(mixed.slipped('firstTakeOutOnly', 'cut')).toBe(125);
    expect(mixed.slipped('secondTakeOutOnly', 'cut')).toBe(120);
    expect(mixed.slipped('otherWidth', 'cut')).toBeNull();
  });
});

describe('from a ladder’s rail', () => {
  const given = { width: 'card-4', ladder: 'w12', start: 'butt', fitting: 'elbow-90', distance: at(`6'`) };
  const made = job('from-ladder-rail', { ...given, from: 'rail' });
  test('right', () => expect([made.answer('ends'), made.answer('cut')]).toEqual(['second', 66.5]));
  slips(made, [
    ['insertionAtBoth', 'cut', 68],
    ['toCentre', 'cut', 72.5],
    ['noInsertion', 'cut', 65],
    ['noElbow', 'cut', 73.5],
    ['halfTakenOff', 'cut', 60.5],
    ['wholeLadder', 'cut', null],
  ]);
  describe('drawn from the centre line', () => {
    const centre = job('from-ladder-rail', { ...given, from: 'centre' });
    test('right', () => expect(centre.answer('cut')).toBe(60.5));
    slips(centre, [
      ['toCentre', 'cut', 66.5],
      ['wholeLadder', 'cut', 54.5],
      ['halfTakenOff', 'cut', null],
    ]);
  });
});

describe('last piece', () => {
  const run = (given: Readonly<Record<string, unknown>>) =>
    job('last-piece', {
      width: 'card-4',
      joint: 'plate',
      expansion: 'none',
      distance: at(`47'-3"`),
      gap: at('5/8'),
      ...given,
    });
  const made = run({});
  test('right', () => expect([made.answer('whole'), made.answer('cut')]).toEqual([2, 87]));
  slips(made, [
    ['fromPlateEdge', 'cut', 84],
    ['plateTakenOff', 'cut', 81],
    ['kerfOff', 'cut', 86.875],
    ['wholeRoundedUp', 'whole', 3],
    ['openingsForgotten', 'cut', null],
    ['gapForgotten', 'cut', null],
  ]);
  describe('with one expansion gap of 5/8', () => {
    // Full movement 1 in: NEMA VE 2, from memory.
    const gap = run({ expansion: 'one' });
    test('right', () => expect(gap.answer('cut')).toBe(86.375));
    slips(gap, [
      ['gapForgotten', 'cut', 87],
      ['gapAdded', 'cut', 87.625],
      ['fullMovement', 'cut', 86],
      ['halfGap', 'cut', 86.6875],
    ]);
  });
  describe('with sleeves, 1/8 open at each', () => {
    const sleeves = run({ joint: 'sleeve' });
    test('right', () => expect(sleeves.answer('cut')).toBe(86.75));
    slips(sleeves, [
      ['openingsForgotten', 'cut', 87],
      ['oneOpening', 'cut', 86.875],
      ['fromSleeveEdge', 'cut', 81.75],
      ['fromPlateEdge', 'cut', null],
    ]);
    test('a sleeve and a gap', () => {
      const both = run({ joint: 'sleeve', expansion: 'one' });
      expect(both.answer('cut')).toBe(86.25); // 87 − 5/8 − 1/8
      expect(both.slipped('openingsForgotten', 'cut')).toBe(86.375);
      expect(both.slipped('oneOpening', 'cut')).toBeNull();
    });
  });
});

describe('vertical drop', () => {
  const given = { width: 'card-4', distance: at(`8'-8 1/2"`), above: at('4') };
  const made = job('vertical-drop', { ...given, lower: 'free' });
  test('right', () => expect([made.answer('ends'), made.answer('cut')]).toEqual(['first', 93]));
  slips(made, [
    ['noInsertion', 'cut', 91.5],
    ['insertionAtBoth', 'cut', 94.5],
    ['noTakeOut', 'cut', 102],
    ['toStand', 'cut', 97],
  ]);
  test('into a box', () => {
    const box = job('vertical-drop', { ...given, lower: 'socket' });
    expect([box.answer('ends'), box.answer('cut')]).toEqual(['both', 94.5]);
  });
});

describe('reducer run', () => {
  const made = job('reducer-run', {
    reducer: 'card-6-4-reducer',
    hand: 'straight',
    run: at(`22'`),
    toFace: at(`12'`),
  });
  test('right', () => expect([made.answer('wide'), made.answer('narrow')]).toEqual([145.5, 112.5]));
  slips(made, [
    ['noInsertion', 'wide', 144],
    ['noInsertion', 'narrow', 111],
    ['toReducerMiddle', 'narrow', 117],
    ['insertionAtBoth', 'narrow', 114],
    ['reducerForgotten', 'narrow', 121.5],
  ]);
});

describe('route total', () => {
  const made = job('route-total', {
    width: 'card-4',
    first: 'elbow-90',
    second: 'elbow-90',
    one: at(`14'-6"`),
    two: at(`9'`),
    three: at(`11'-3"`),
  });
  test('right', () => expect([made.answer('middle'), made.answer('total')]).toEqual([97, 395]));
  slips(made, [
    ['centreLines', 'total', 417],
    ['noInsertion', 'total', 389],
    ['insertionOnce', 'total', 393.5],
    ['takeOutOnce', 'total', 409],
    ['noTakeOut', 'total', 423],
    ['legForgotten', 'total', 265.5],
    ['insertionOnce', 'middle', 95.5],
    ['takeOutOnce', 'middle', 104],
  ]);
});

describe('reference points', () => {
  const points = (first: string, second: string) =>
    job('reference-points', { width: 'card-4', number: 3, first, second });
  test.each([
    ['sleeve', 'sleeve-edge', 'goes-in'],
    ['plate', 'channel-end', 'butts'],
    ['socket', 'face', 'goes-in'],
    ['butt', 'face', 'butts'],
  ])('%s', (kind, point, joint) => {
    const made = points(kind, 'free');
    expect([made.answer('first-point'), made.answer('first-joint')]).toEqual([point, joint]);
    expect([made.answer('second-point'), made.answer('second-joint')]).toEqual(['end-mark', 'free']);
  });
  test('a slip is made at the end that it names', () => {
    const made = points('sleeve', 'plate');
    expect(made.slipped('sleeveMiddle', 'first-point', { end: 'first' })).toBe('sleeve-middle');
    expect(made.slipped('sleeveMiddle', 'second-point', { end: 'second' })).toBeNull();
    expect(made.slipped('addedAtButt', 'second-joint', { end: 'second' })).toBe('goes-in');
    expect(made.slipped('addedAtButt', 'first-joint', { end: 'second' })).toBe('goes-in');
  });
});
