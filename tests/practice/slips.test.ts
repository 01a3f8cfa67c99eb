/**
 * Right answers and the answers of slips, each row worked by hand (arithmetic of the trade's rules: common practice,
 * no source, unless a row says otherwise). Values of the practice catalogue: sleeve 10 1/8 with 5 from each side, plate
 * 6, socket 1 1/2, saw 1/8, length 240 (training values).
 */
import { describe, expect, test } from 'vitest';
import { everyPrecedence, keeps } from '../../src/practice/models/parts/steps.ts';
import { readLength, type Ticks } from '../../src/trade/length.ts';
import { job } from './means.ts';

const at = (text: string): Ticks => readLength(text);

describe('cut with insertion', () => {
  const cut = (first: string, second: string, distance: string, measured = 'edges') =>
    job('cut-with-insertion', {
      width: 'card-4',
      measured,
      first,
      second,
      distance: at(distance),
      before: at(`6'`),
    });

  test.each([
    // first, second, tape, cut
    ['socket', 'socket', `9'-4"`, 115], // 112 + 1 1/2 + 1 1/2
    ['sleeve', 'sleeve', `9'-4"`, 122], // 112 + 5 + 5
    ['socket', 'sleeve', `9'-4"`, 118.5],
    ['butt', 'sleeve', `9'-4"`, 117],
    ['sleeve', 'free', `9'-4"`, 117],
    ['plate', 'sleeve', `9'-4"`, 117],
    ['sleeve', 'plate', `7'-3 5/8"`, 92.625],
  ])('%s to %s over %s', (first, second, tape, wanted) => {
    const made = cut(first, second, tape);
    expect(made.answer('cut')).toBe(wanted);
    expect(made.answer('left')).toBe(240 - wanted - 1 / 8);
  });

  test('measured to the middles of sleeves: half of each opening comes off', () => {
    expect(cut('sleeve', 'sleeve', `9'-4"`, 'middles').answer('cut')).toBe(111.875); // 112 − 2 × 1/16
    expect(cut('socket', 'sleeve', `9'-4"`, 'middles').answer('cut')).toBe(113.4375); // 112 + 1 1/2 − 1/16
  });

  test.each([
    ['nothingAdded', 'socket', 'socket', 112],
    ['firstEndOnly', 'socket', 'socket', 113.5],
    ['secondEndOnly', 'socket', 'socket', null], // equal insertions: the same answer as the slip above
    ['firstEndOnly', 'socket', 'sleeve', 113.5],
    ['secondEndOnly', 'socket', 'sleeve', 117],
    ['firstEndOnly', 'butt', 'sleeve', null], // one end goes in: one insertion is right
    ['subtracted', 'socket', 'socket', 109],
    ['addedAtButt', 'butt', 'socket', 115],
    ['addedAtButt', 'socket', 'socket', null],
    ['oneInsertionForAll', 'socket', 'sleeve', 122],
    ['oneInsertionForAll', 'sleeve', 'sleeve', null],
    ['toMiddle', 'sleeve', 'sleeve', 122.125], // 112 + 2 × 5 1/16
    ['toMiddle', 'sleeve', 'free', null], // 1/16: no tape tells it
    ['wholeSleeve', 'sleeve', 'sleeve', 132.25], // 112 + 2 × 10 1/8
    ['toPlateEdge', 'plate', 'sleeve', 114], // 117 − 3
    ['kerfOff', 'socket', 'socket', 114.875],
    ['middleForEdge', 'sleeve', 'sleeve', null], // only where the tape goes to the middle
  ])('%s, %s to %s', (slip, first, second, wanted) => {
    expect(cut(first, second, `9'-4"`).slipped(slip, 'cut')).toBe(wanted);
  });

  test('slips where the tape goes to the middles', () => {
    const made = cut('sleeve', 'sleeve', `9'-4"`, 'middles');
    expect(made.slipped('middleForEdge', 'cut')).toBe(122); // 112 + 5 + 5, as if 112 were the clear distance
    expect(made.slipped('nothingAdded', 'cut')).toBe(101.875); // 112 − 2 × 5 1/16
    expect(made.slipped('toMiddle', 'cut')).toBe(112);
    expect(made.slipped('wholeSleeve', 'cut')).toBeNull();
  });

  test('the rest of the length', () => {
    const made = cut('sleeve', 'sleeve', `9'-4"`); // 122
    expect(made.slipped('noKerf', 'left')).toBe(118);
    expect(made.slipped('twoKerfs', 'left')).toBe(117.75);
  });

  test.each([
    ['butt', 'free'],
    ['plate', 'plate'],
    ['free', 'sleeve'],
    ['sleeve', 'butt'],
  ])('no job between %s and %s', (first, second) => {
    expect(cut(first, second, `9'-4"`).plan).toBeNull();
  });

  test('both sides of the shortest and the longest piece', () => {
    // 20 and 228 in, both included; two sleeves add 10.
    expect(cut('sleeve', 'sleeve', '10').plan).not.toBeNull();
    expect(cut('sleeve', 'sleeve', '9 63/64').plan).toBeNull();
    expect(cut('sleeve', 'sleeve', '218').plan).not.toBeNull();
    expect(cut('sleeve', 'sleeve', '218 1/64').plan).toBeNull();
  });
});

describe('read feet, inches and parts', () => {
  const given = {
    hooked: 'hook',
    reading: at(`7'-3 5/8"`),
    first: at(`6'-9 3/4"`),
    second: at(`4'-7 7/8"`),
    third: at('11 1/2'),
    upper: 112.5,
    lower: 104.75,
    metric: 2350,
  };
  const made = job('read-feet-inch', given);

  test.each([
    ['tape', 87.625],
    ['sum', 149.125], // 12'-5 1/8"
    ['drop', 93], // 7.75 ft = 7'-9"
    ['metric', 92.5], // 2350/25.4 = 92.52 (1 in = 25.4 mm: International yard and pound agreement, 1959)
  ])('%s', (ask, wanted) => {
    expect(made.answer(ask)).toBe(wanted);
  });

  test.each([
    ['footAsTen', 'tape', 73.625],
    ['partHalved', 'tape', 87.3125],
    ['partDoubled', 'tape', null], // 10/8 is no part of an inch
    ['inchesAsDecimals', 'tape', 88.225], // 7.3 ft and 5/8
    ['nextInch', 'tape', 88.625],
    ['inchLeftOn', 'tape', null],
    ['partsNotCarried', 'sum', 147.125], // 12'-3 1/8"
    ['carriedAtTen', 'sum', 153.125], // 12'-9 1/8"
    ['leftOut', 'sum', 137.625], // 11'-5 5/8"
    ['tenthsAsInches', 'drop', 91.5],
    ['firstDecimal', 'drop', 91],
    ['decimalsAsInches', 'drop', 159], // 7 ft 75 in
    ['twentyFive', 'metric', 94],
    ['thirty', 'metric', 78.3125],
    ['decimalsAsPart', 'metric', 94.5], // 92 and 5/2
  ])('%s', (slip, ask, wanted) => {
    const answer = made.slipped(slip, ask);
    if (wanted === null) expect(answer).toBeNull();
    else expect(answer).toBeCloseTo(wanted, 9);
  });

  test('held at the 1-in mark', () => {
    const held = job('read-feet-inch', { ...given, hooked: 'inch' });
    expect(held.answer('tape')).toBe(86.625);
    expect(held.slipped('inchLeftOn', 'tape')).toBe(87.625);
    expect(held.slipped('inchAdded', 'tape')).toBe(88.625);
    expect(held.slipped('nextInch', 'tape')).toBeNull();
    expect(held.slipped('footAsTen', 'tape')).toBe(72.625);
  });

  test.each([
    // inch, ft as people write it, answer
    [`7'-9 1/4"`, 7.9 * 12 + 0.25],
    [`7'-10 1/4"`, 7.1 * 12 + 0.25], // written 7.10
    [`7'-11 1/4"`, 7.11 * 12 + 0.25],
    [`7'-0 1/4"`, null],
  ])('%s with its inches as decimals', (reading, wanted) => {
    const answer = job('read-feet-inch', { ...given, reading: at(reading) }).slipped(
      'inchesAsDecimals',
      'tape',
    );
    if (wanted === null) expect(answer).toBeNull();
    else expect(answer).toBeCloseTo(wanted, 9);
  });
});

describe('fill check', () => {
  const cables = (...rows: readonly (readonly [number, number])[]) =>
    rows.map(([count, od]) => ({ count, od }));
  const base = {
    lone2: 1,
    lone4: 2,
    lone6: 2.5,
    cables2: [],
    cables4: [],
    cables6: [],
    spare: 'none',
    lone: 'several',
  };
  const fill = (given: Readonly<Record<string, unknown>>) => job('fill-check', { ...base, ...given });

  test('8 of 0.60 in 4-in ventilated', () => {
    // 8 × π/4 × 0.36 = 2.2619, limit 2.5: NFPA 70-2023, table 392.22(A)(5).
    const made = fill({ bottom: 'ventilated', width: '4', cables4: cables([8, 0.6]) });
    expect(made.answer('area')).toBeCloseTo(2.2619, 4);
    expect([made.answer('row'), made.answer('within')]).toEqual(['ventilated-several', 'yes']);
    expect(made.slipped('squares', 'area')).toBeCloseTo(2.88, 9);
    expect(made.slipped('oneForSeveral', 'row')).toBe('ventilated-one');
    expect(made.slipped('solidForVentilated', 'row')).toBe('solid-several');
    expect(made.slipped('severalForOne', 'row')).toBeNull();
    expect(made.slipped('rowOverlooked', 'row')).toBe('no-row');
    expect(made.slipped('noThoughWithin', 'within')).toBe('no');
    expect(made.slipped('spareForgotten', 'within')).toBeNull();
  });

  test('6-in solid: 2 of 1.05, 4 of 0.72, 6 of 0.41', () => {
    // 4.15 > 3.2: NFPA 70-2023, table 392.22(A)(6).
    const made = fill({ bottom: 'solid', width: '6', cables6: cables([2, 1.05], [4, 0.72], [6, 0.41]) });
    expect(made.answer('area')).toBeCloseTo(4.1525, 3);
    expect([made.answer('row'), made.answer('within')]).toEqual(['solid-several', 'no']);
    expect(made.slipped('squares', 'area')).toBeCloseTo(5.2872, 4);
    expect(made.slipped('diameters', 'area')).toBeCloseTo(7.44, 9);
    expect(made.slipped('oneOfEach', 'area')).toBeCloseTo(1.4051, 3);
    expect(made.slipped('diameterAsRadius', 'area')).toBeCloseTo(16.61, 2);
    expect(made.slipped('radiusAsDiameter', 'area')).toBeCloseTo(1.0381, 3);
    expect(made.slipped('yesThoughOver', 'within')).toBe('yes');
    expect(made.slipped('ventilatedForSolid', 'row')).toBe('ventilated-several');
  });

  test('one cable of 2.30 in 4-in ventilated', () => {
    // 4.155 ≤ 4.5 in the column for one; the other column, 2.5, would say no.
    const made = fill({ bottom: 'ventilated', width: '4', lone: 'one', lone4: 2.3 });
    expect(made.answer('area')).toBeCloseTo(4.1548, 4);
    expect([made.answer('row'), made.answer('within')]).toEqual(['ventilated-one', 'yes']);
    expect(made.slipped('severalForOne', 'row')).toBe('ventilated-several');
    expect(made.slipped('oneOfEach', 'area')).toBeNull();
  });

  test('2-in ventilated: no row, so ask', () => {
    // NFPA 70-2023, table 392.22(A)(5) begins at 3 in.
    const made = fill({ bottom: 'ventilated', width: '2', cables2: cables([2, 0.5]) });
    expect(made.answer('area')).toBeCloseTo(0.3927, 4);
    expect([made.answer('row'), made.answer('within')]).toEqual(['no-row', 'ask']);
    expect(made.slipped('solidForVentilated', 'row')).toBe('solid-several');
    expect(made.slipped('rowThatIsNot', 'row')).toBe('ventilated-several');
    expect(made.slipped('rowThatIsNot', 'within')).toBe('yes'); // half of 2.5 is 1.25
    expect(made.slipped('rowOverlooked', 'row')).toBeNull();
    expect(made.slipped('yesThoughOver', 'within')).toBeNull();
  });

  test('2-in solid has a row', () => {
    const made = fill({ bottom: 'solid', width: '2', cables2: cables([2, 0.5]) });
    expect([made.answer('row'), made.answer('within')]).toEqual(['solid-several', 'yes']);
    expect(made.slipped('ventilatedForSolid', 'row')).toBeNull(); // the other table has none for 2 in
  });

  test('25 % kept free of 2.5 leaves 1.875', () => {
    const over = fill({ bottom: 'ventilated', width: '4', spare: 'quarter', cables4: cables([7, 0.61]) }); // 2.046
    expect([over.answer('within'), over.slipped('spareForgotten', 'within')]).toEqual(['no', 'yes']);
    expect(over.slipped('yesThoughOver', 'within')).toBeNull(); // the same answer, and the spare explains it
    const under = fill({ bottom: 'ventilated', width: '4', spare: 'quarter', cables4: cables([6, 0.6]) }); // 1.696
    expect([under.answer('within'), under.slipped('spareForgotten', 'within')]).toEqual(['yes', null]);
  });

  test('an area too near a limit is no job', () => {
    // 6 of 0.62: 1.8115, 0.0635 from 1.875; 6 of 0.63: 1.8703, 0.0047 from it.
    const at25 = { bottom: 'ventilated', width: '4', spare: 'quarter' };
    expect(fill({ ...at25, cables4: cables([6, 0.62]) }).plan).not.toBeNull();
    expect(fill({ ...at25, cables4: cables([6, 0.63]) }).plan).toBeNull();
  });
});

describe('order of cutting', () => {
  const all = [
    'inspect',
    'choose',
    'support',
    'clamp',
    'align',
    'cut',
    'stop',
    'measure',
    'square',
    'deburr',
    'drill',
    'clean',
    'protect',
    'label',
  ];
  const shuffled = [...all].reverse();
  const made = job('order-of-cutting', { steps: shuffled, width: 'card-4', length: at(`5'`) });
  const { shown, precedence } = orderOf(made);

  function orderOf({ plan }: ReturnType<typeof job>) {
    return plan as unknown as {
      shown: readonly string[];
      precedence: readonly (readonly [string, string])[];
    };
  }
  const exchange = (a: string, b: string) => all.map((step) => (step === a ? b : step === b ? a : step));

  test('the task’s own order holds, and so does every pair that may change places', () => {
    expect(made.answer('order')).toEqual(all);
    expect(shown).toEqual(shuffled);
    expect(keeps(all, precedence)).toBe(true);
    // Look over and choose, measure and try the square: either first. Drilling only waits for the measuring. Common practice, no source.
    expect(keeps(exchange('inspect', 'choose'), precedence)).toBe(true);
    expect(keeps(exchange('measure', 'square'), precedence)).toBe(true);
    expect(keeps(exchange('deburr', 'drill'), precedence)).toBe(true);
  });

  test.each([
    ['clamp', 'cut'],
    ['support', 'clamp'],
    ['align', 'cut'],
    ['cut', 'deburr'],
    ['measure', 'drill'],
    ['clean', 'protect'],
    ['protect', 'label'],
    ['drill', 'clean'],
  ])('%s and %s may not', (before, after) => {
    expect(keeps(exchange(before, after), precedence)).toBe(false);
    expect(precedence).toContainEqual([before, after]);
  });

  test('what lies between need not be shown for two steps to be ordered', () => {
    expect(
      everyPrecedence(
        ['a', 'c'],
        [
          ['a', 'b'],
          ['b', 'c'],
        ],
      ),
    ).toEqual([['a', 'c']]);
  });

  test('a slip moves one step and leaves the others', () => {
    expect(made.slipped('tooLate', 'order', { early: 'cut', late: 'clamp' })).toEqual([
      'inspect',
      'choose',
      'support',
      'align',
      'cut',
      'clamp',
      'stop',
      'measure',
      'square',
      'deburr',
      'drill',
      'clean',
      'protect',
      'label',
    ]);
  });

  test('an order that already holds is no job', () => {
    expect(job('order-of-cutting', { steps: all, width: 'card-4', length: at(`5'`) }).plan).toBeNull();
  });
});
