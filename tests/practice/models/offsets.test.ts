/**
 * Right answers and those of slips, each row worked by hand. Triangles: plane geometry. Take-outs and insertions: training
 * values (elbow 7 and 9, hinge 3, 1 1/2 goes in). Hands and the words inside and outside: common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { readLength, type Ticks } from '../../../src/trade/length.ts';
import { job } from '../means.ts';

const at = (text: string): Ticks => readLength(text);
const near = (wanted: number) => expect.closeTo(wanted, 2);

describe('straight of an offset: 18 over with two 45° fittings, take-out 4, insertion 1 1/2', () => {
  const made = job('offset-straight', {
    angle: '45',
    offset: at('18'),
    takeOut: at('4'),
    insertion: at('1 1/2'),
  });
  test('25.456 along the slope, 20 7/16 to cut', () => {
    expect(made.answer('travel')).toEqual(near(25.456)); // 18 × 1.41421
    expect(made.answer('straight')).toEqual(near(20.456)); // less 8, plus 3
  });
  test.each([
    ['notMultiplied', 13],
    ['otherAngle', 31], // twice 18, the figure of 30°
    ['rounded', 20.2], // 1.4 × 18 = 25.2
    ['noTakeOut', 28.456],
    ['oneTakeOut', 24.456],
    ['noInsertion', 17.456],
    ['oneInsertion', 18.956],
    ['riseOnly', null],
  ])('%s', (slip, wanted) => {
    expect(made.slipped(slip, 'straight')).toEqual(wanted === null ? null : near(wanted));
  });
  test('at 30° the rounded figure is the exact one', () => {
    const thirty = job('offset-straight', {
      angle: '30',
      offset: at('18'),
      takeOut: at('4'),
      insertion: at('1'),
    });
    expect(thirty.answer('travel')).toEqual(near(36));
    expect(thirty.slipped('rounded', 'travel')).toBeNull();
  });
  test('both sides of the shortest straight', () => {
    // 5 3/4 at 30° slopes 11 1/2: less 8, plus 2 1/2, leaves 6 in, which is made; 1/8 in less of offset is not.
    const of = (offset: string) =>
      job('offset-straight', { angle: '30', offset: at(offset), takeOut: at('4'), insertion: at('1 1/4') })
        .plan;
    expect(of('5 3/4')).not.toBeNull();
    expect(of('5 5/8')).toBeNull();
  });
});

describe('rolling offset: rise 10, roll 14, 45°, take-out 4, insertion 1 1/2', () => {
  const made = job('rolling-offset', {
    angle: '45',
    offset: at('10'),
    roll: at('14'),
    takeOut: at('4'),
    insertion: at('1 1/2'),
  });
  test('the root of 296 times 1.41421, less 5', () => {
    expect(made.answer('straight')).toEqual(near(19.331));
  });
  test.each([
    ['riseOnly', 9.142], // 14.142 − 5
    ['riseAndRoll', 28.941], // 24 × 1.41421 − 5
    ['notMultiplied', 12.205], // 17.205 − 5
  ])('%s', (slip, wanted) => {
    expect(made.slipped(slip, 'straight')).toEqual(near(wanted));
  });
});

describe('hinged fittings: rise 24 over run 60', () => {
  const made = job('hinge-angle', { width: 'card-4', rise: at('24'), run: at('60') });
  test('angle, slope, cut', () => {
    expect(made.answer('angle')).toEqual(near(21.801)); // tangent 0.4
    expect(made.answer('slope')).toEqual(near(64.622)); // root of 4176
    expect(made.answer('cut')).toEqual(near(61.622)); // less 6, plus 3
  });
  test.each([
    ['inverted', 'angle', 68.199],
    ['asSine', 'angle', 23.578],
    ['asCosine', 'angle', 66.422],
    ['asPercent', 'angle', 40],
    ['runForSlope', 'cut', 57],
    ['sidesAdded', 'cut', 81],
    ['noTakeOut', 'cut', 67.622],
    ['oneTakeOut', 'cut', 64.622],
    ['noInsertion', 'cut', 58.622],
    ['oneInsertion', 'cut', 60.122],
  ])('%s', (slip, ask, wanted) => {
    expect(made.slipped(slip, ask)).toEqual(near(wanted));
  });
  test('flatter than 1 in 5 and steeper than 3 in 4 are no jobs', () => {
    const of = (rise: string) => job('hinge-angle', { width: 'card-4', rise: at(rise), run: at('60') }).plan;
    expect([of('12'), of('45')].includes(null)).toBe(false);
    expect([of('11 15/16'), of('45 1/16')]).toEqual([null, null]);
  });
});

describe('hand of a reducer, 6 in to 4 in, the kept line 36 in from the columns on the left', () => {
  const made = (goes: string, keeps: string, sent: string) =>
    job('reducer-hand', { pair: '6-4', goes, keeps, sent, wall: at('36') });
  test.each([
    // A wrong hand is off by the difference in width, 2; a straight one by half of it, 1.
    ['down', 'left', 'right', 'left', 38],
    ['down', 'left', 'straight', 'left', 37],
    ['down', 'right', 'left', 'right', 34],
    ['down', 'right', 'straight', 'right', 35],
    ['down', 'centre', 'left', 'straight', 35],
    ['down', 'centre', 'right', 'straight', 37],
    // From the narrow end the hands are exchanged; a left hand keeps what is the right wall as one goes.
    ['up', 'left', 'left', 'right', 34],
    ['up', 'left', 'straight', 'right', 35],
    ['up', 'right', 'right', 'left', 38],
    ['up', 'centre', 'left', 'straight', 35],
  ])('%s, keeps %s, sent %s', (goes, keeps, sent, hand, lands) => {
    expect([made(goes, keeps, sent).answer('hand'), made(goes, keeps, sent).answer('lands')]).toEqual([
      hand,
      lands,
    ]);
  });
  test('the reducer that is needed is no job', () => {
    expect(made('down', 'left', 'left').plan).toBeNull();
    expect(made('up', 'left', 'right').plan).toBeNull();
  });
  test.each([
    ['down', 'left', 'right', 'notMoved', 36],
    ['down', 'left', 'right', 'halfOfIt', 37],
    ['down', 'left', 'right', 'allOfIt', null],
    ['down', 'left', 'straight', 'allOfIt', 38],
    ['down', 'left', 'right', 'otherWay', 34],
  ])('%s %s %s %s', (goes, keeps, sent, slip, wanted) => {
    expect(made(goes, keeps, sent).slipped(slip, 'lands')).toBe(wanted);
  });
  test('the hand as one goes is looked for from the narrow end only', () => {
    expect(made('up', 'left', 'straight').slipped('handAsItGoes', 'hand')).toBe('left');
    expect(made('down', 'left', 'straight').slipped('handAsItGoes', 'hand')).toBeNull();
  });
});

describe('which elbow', () => {
  const made = (first: string, second: string, width = 'card-4') =>
    job('elbow-hand', { width, first, second, between: at(`10'`) });
  test.each([
    // Towards the open side: inside. Going up it looks back, going down it looks on.
    ['left', 'right', 'flat', 'flat', 109], // 120 − 7 − 7 + 3
    ['left', 'up', 'flat', 'inside', 107], // 120 − 7 − 9 + 3
    ['right', 'down', 'flat', 'outside', 107],
    ['up', 'on', 'inside', 'outside', 105],
    ['down', 'on', 'outside', 'inside', 105],
  ])('%s, then %s', (first, second, one, two, cut) => {
    const { answer } = made(first, second);
    expect([answer('first'), answer('second'), answer('cut')]).toEqual([one, two, cut]);
  });
  test.each([
    ['left', 'on'],
    ['up', 'left'],
    ['up', 'up'],
    ['on', 'left'],
  ])('%s, then %s is no job', (first, second) => {
    expect(made(first, second).plan).toBeNull();
  });
  test('slips', () => {
    const { slipped } = made('up', 'on');
    expect([slipped('exchanged', 'first'), slipped('exchanged', 'second')]).toEqual(['outside', 'inside']);
    expect(slipped('sameAgain', 'second')).toBeNull(); // inside, as one who exchanges the two
    expect(made('left', 'up').slipped('sameAgain', 'second')).toBe('flat');
    expect(slipped('allFlat', 'cut')).toBe(109);
    expect(slipped('noTakeOut', 'cut')).toBe(123);
    expect(slipped('oneTakeOut', 'cut')).toBe(114);
    expect(slipped('noInsertion', 'cut')).toBe(102);
    expect(slipped('oneInsertion', 'cut')).toBe(103.5);
    expect(made('left', 'right').slipped('exchanged', 'first')).toBeNull();
    expect(made('left', 'right').slipped('allVertical', 'cut')).toBe(105);
  });
});

describe('seated to the mark: 1 1/2 goes in, the second mark 4 1/2 from the end', () => {
  const OFF = [-4, -3, -2, 2, 3, 4];
  const made = (firstOff: number, secondOff: number) =>
    job('seat-to-mark', {
      width: 'card-4',
      turn: 'elbow',
      beyond: at('3'),
      off:
        Math.abs(firstOff) > 1
          ? Math.abs(secondOff) > 1
            ? 'both'
            : 'first'
          : Math.abs(secondOff) > 1
            ? 'second'
            : 'none',
      firstSeated: firstOff,
      secondSeated: secondOff,
      firstOff: OFF.indexOf(firstOff),
      secondOff: OFF.indexOf(secondOff),
    });
  test.each([
    // Off in sixteenths; 1/16 either way holds (common practice, no source).
    [0, 0, 'accept'],
    [1, -1, 'accept'],
    [2, 0, 'first'],
    [0, -2, 'second'],
    [-3, 2, 'both'],
  ])('%i and %i sixteenths off', (first, second, seated) => {
    const { answer } = made(first, second);
    expect([answer('first'), answer('second'), answer('seated')]).toEqual([
      1.5 + first / 16,
      1.5 + second / 16,
      seated,
    ]);
  });
  test('slips', () => {
    const { slipped } = made(-2, 3); // in sight 3 1/8 and 2 13/16
    expect([slipped('tapeTaken', 'first'), slipped('tapeTaken', 'second')]).toEqual([3.125, 2.8125]);
    expect(slipped('markTaken', 'first')).toBe(4.5);
    expect(slipped('added', 'first')).toBe(7.625);
    expect(slipped('anyDepth', 'seated')).toBe('accept');
    expect(slipped('firstOnly', 'seated')).toBe('first');
    expect(slipped('deepTaken', 'seated')).toBeNull(); // as one who looks at the first leg only
    expect(made(3, -2).slipped('deepTaken', 'seated')).toBe('second');
    expect(slipped('eighth', 'seated')).toBe('second');
    expect(made(1, 0).slipped('exact', 'seated')).toBe('first');
  });
});

describe('radius of an elbow', () => {
  // NFPA 70-2023: 336.24, Type TC 4 diameters to 1 in, 5 above, 12 under a metallic shield; 330.24(B), interlocked MC 7.
  const cables = (...list: readonly (readonly [string, number])[]) =>
    list.map(([kind, od]) => ({ kind, od }));
  const made = (of: ReturnType<typeof cables>, offer = 'b') =>
    job('radius-of-fitting', { width: 'card-4', cables: of, offer, put: '1', between: at(`8'`) });
  test.each([
    [cables(['tc', 0.9], ['tc', 0.5]), 3.6, 'r1'],
    [cables(['tc', 1.1], ['tc', 0.5]), 5.5, 'r2'],
    [cables(['tc', 0.9], ['mc-interlocked', 0.75]), 5.25, 'r2'],
    [cables(['tc', 1.0], ['tc-shielded', 0.6]), 7.2, 'r3'],
    [cables(['tc-shielded', 1.05], ['tc', 0.5]), 12.6, 'none'],
  ])('case %#: elbows of 4, 6 and 12', (of, least, pick) => {
    expect(made(of).answer('least')).toBeCloseTo(least, 9);
    expect(made(of).answer('pick')).toBe(pick);
  });
  test('slips', () => {
    const { slipped } = made(cables(['tc', 1.1], ['tc-shielded', 0.6])); // 5.5 and 7.2
    expect(slipped('thickestOnly', 'least')).toBeCloseTo(5.5, 9);
    expect(slipped('shieldForgotten', 'least')).toBeCloseTo(5.5, 9);
    expect(slipped('shieldForAll', 'least')).toBeCloseTo(13.2, 9);
    expect(slipped('onRadius', 'least')).toBeCloseTo(3.6, 9);
    expect(slipped('toCentreLine', 'least')).toBeCloseTo(6.9, 9);
    expect(slipped('nearestBelow', 'pick')).toBe('r2');
    const one = made(cables(['tc-shielded', 0.6], ['tc', 0.5]));
    expect([one.answer('pick'), one.slipped('nearestBelow', 'pick')]).toEqual(['r3', 'r2']);
    expect(slipped('armourAsPlain', 'least')).toBeNull();
    const none = made(cables(['tc-shielded', 1.05], ['tc', 0.5]));
    expect([none.slipped('largestTaken', 'pick'), none.slipped('nearestBelow', 'pick')]).toEqual([
      'r3',
      null,
    ]);
  });
  test('take-out of the 6-in radius is 8: 96 less 16, plus 3', () => {
    const { answer, slipped } = made(cables(['tc', 0.9], ['tc', 0.5]));
    expect(answer('cut')).toBe(83);
    expect(slipped('otherRadius', 'cut')).toBe(87); // of the 4-in radius, 6
    expect(slipped('noTakeOut', 'cut')).toBe(99);
    expect(slipped('oneTakeOut', 'cut')).toBe(91);
    expect(slipped('noInsertion', 'cut')).toBe(80);
  });
});
