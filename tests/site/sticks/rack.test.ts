import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cutFrom,
  leftOvers,
  offRack,
  onRack,
  type Rack,
  tidyRack,
  usedUp,
} from '../../../src/site/sticks/rack.ts';
import { fromInches, type Ticks } from '../../../src/trade/length.ts';
import { sticks } from '../../../src/trade/sticks/sticks.ts';

const L = fromInches;
const of = (...rows: readonly (readonly [inch: number, count: number])[]): Rack =>
  rows.map(([inch, count]) => ({ length: L(inch), count }));

describe('what lies on the rack', () => {
  test('one entry to a length, longest first, none that there is nothing of', () => {
    expect(tidyRack(of([12, 1], [40, 2], [12, 2], [30, 0]))).toEqual(of([40, 2], [12, 3]));
  });
  test('put on and taken off; at most as many as there are', () => {
    const rack = onRack(of([40, 1]), L(40), 2);
    expect(rack).toEqual(of([40, 3]));
    expect(offRack(rack, L(40))).toEqual(of([40, 2]));
    expect(offRack(rack, L(40), 9)).toEqual([]);
    expect(offRack(rack, L(39.9375))).toEqual(rack);
  });
});

const plan = [
  { fromIn: 40, offcut: true, pieces: [{ in: 30 }], leftIn: 9.875 },
  { fromIn: 240, offcut: false, pieces: [{ in: 200 }], leftIn: 39.875 },
  { fromIn: 240, offcut: false, pieces: [{ in: 227.875 }], leftIn: 12 },
  { fromIn: 240, offcut: false, pieces: [{ in: 240 }], leftIn: 0 },
];

describe('what a plan does to it', () => {
  test('left-overs from the shortest worth keeping on, both sides of it', () => {
    expect(leftOvers(plan, L(12))).toEqual(of([39.875, 1], [12, 1]));
    expect(leftOvers(plan, L(12.0625))).toEqual(of([39.875, 1]));
    expect(leftOvers(plan, L(0))).toEqual(of([39.875, 1], [12, 1], [9.875, 1]));
  });
  test('used comes off, left-overs go on, the rest stays', () => {
    expect(usedUp(plan)).toEqual(of([40, 1]));
    expect(cutFrom(of([60, 1], [40, 2]), plan, L(12))).toEqual(of([60, 1], [40, 1], [39.875, 1], [12, 1]));
  });
});

test('whatever is cut from whatever rack, no metal comes out of nothing', () => {
  const inch = (max: number) => fc.integer({ min: 16, max: max * 16 }).map((n) => L(n / 16));
  const total = (rack: readonly { length: Ticks; count: number }[]) =>
    rack.reduce((sum, { length, count }) => sum + length * count, 0);
  let used = 0;
  fc.assert(
    fc.property(
      fc.array(fc.record({ length: inch(100), count: fc.integer({ min: 1, max: 3 }) }), { maxLength: 4 }),
      fc.array(fc.record({ length: inch(120), count: fc.integer({ min: 1, max: 3 }) }), {
        minLength: 1,
        maxLength: 4,
      }),
      (put, pieces) => {
        const rack = tidyRack(put);
        const kerf = L(1 / 8);
        const { lengths, newStockIn } = sticks({
          stock: [{ length: L(240) }],
          offcuts: rack,
          pieces,
          kerf,
          minReusable: L(12),
        }).result;
        const after = cutFrom(rack, lengths, L(12));
        if (lengths.some(({ offcut }) => offcut)) used++;
        expect(total(after)).toBeLessThanOrEqual(total(rack) + L(newStockIn ?? 0) - total(pieces));
        for (const { count } of after) expect(count).toBeGreaterThan(0);
        expect(after).toEqual(tidyRack(after));
      },
    ),
    { numRuns: 60 },
  );
  expect(used).toBeGreaterThan(15);
});
