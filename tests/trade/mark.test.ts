import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromInches, readLength, ticks } from '../../src/trade/length.ts';
import { type MarkGiven, mark } from '../../src/trade/mark.ts';
import cases from '../references/mark.json' with { type: 'json' };

function read(given: Record<string, string>): MarkGiven {
  return Object.fromEntries(
    Object.entries(given).map(([k, v]) => [k, readLength(v)]),
  ) as unknown as MarkGiven;
}

describe('mark', () => {
  test.each(cases)('$id: $source', ({ given, expect: want }) => {
    expect(mark(read(given)).result).toEqual(want);
  });

  test('one tick decides, also where half the hole is half a tick', () => {
    // hole of 3 ticks, no clearance: blocked is 100 ± 1 1/2 ticks; 98 1/2, given back as a mark, is read as 99
    const holes = { firstHole: ticks(100), pitch: ticks(1000), holeWidth: ticks(3), clearance: ticks(0) };
    expect(mark({ ...holes, at: ticks(99) }).result.clear).toBe(true);
    expect(mark({ ...holes, at: ticks(100) }).result).toEqual({
      clear: false,
      shorterIn: 98.5 / 8128,
      longerIn: 101.5 / 8128,
    });
    expect(mark({ ...holes, at: ticks(101) }).result.clear).toBe(false);
    expect(mark({ ...holes, at: ticks(102) }).result.clear).toBe(true);
  });

  test('the working never names a sixteenth that is inside the blocked stretch', () => {
    const { steps } = mark(read({ at: '12', firstHole: '6', pitch: '6', holeWidth: '9/16' }));
    expect(steps.filter((s) => s.say === 'mark.tape').map((s) => s.values?.['tape'])).toEqual([
      `0'-11 1/8"`,
      `1'-0 7/8"`,
    ]);
  });
});

/**
 * The same by looking at every half tick, with the rule as it is written; for small numbers. A mark on the tick that an
 * edge between two ticks is read as stands on that edge.
 */
function bySearch({ at, firstHole, pitch, holeWidth, clearance = holeWidth }: MarkGiven, end: number) {
  const clearAt = (half: number) => {
    for (let k = 0; 2 * (firstHole + k * pitch) <= end + holeWidth + 2 * clearance; k += 1) {
      if (Math.abs(half - 2 * (firstHole + k * pitch)) < holeWidth + 2 * clearance) return false;
    }
    return true;
  };
  let shorter: number | null = 2 * at;
  while (shorter !== null && !clearAt(shorter)) shorter = shorter === 0 ? null : shorter - 1;
  let longer: number | null = 2 * at;
  while (longer !== null && !clearAt(longer)) longer = longer === end ? null : longer + 1;
  const inches = (half: number | null) => (half === null ? null : half / 2 / 8128);
  const onEdge = clearAt(2 * at - 1) && holeWidth % 2 === 1 && at > 0;
  return clearAt(2 * at) || onEdge
    ? { clear: true, shorterIn: inches(2 * at), longerIn: inches(2 * at) }
    : { clear: false, shorterIn: inches(shorter), longerIn: inches(longer) };
}

const small = fc.record({
  at: fc.nat(300).map(ticks),
  firstHole: fc.nat(60).map(ticks),
  pitch: fc.integer({ min: 1, max: 60 }).map(ticks),
  holeWidth: fc.integer({ min: 1, max: 25 }).map(ticks),
  clearance: fc.option(fc.nat(25).map(ticks), { nil: undefined }),
});

test('agrees with a search over every half tick: always clear, always nearest', () => {
  fc.assert(
    fc.property(small, (given) => {
      expect(mark(given).result).toEqual(bySearch(given, 2 * 300 + 400));
    }),
    { numRuns: 3000 },
  );
});

test('a place that was offered is clear itself', () => {
  const real = fc.record({
    at: fc.nat(240 * 8128).map(ticks),
    firstHole: fc.nat(12 * 8128).map(ticks),
    pitch: fc.integer({ min: 1, max: 12 * 8128 }).map(ticks),
    holeWidth: fc.integer({ min: 1, max: 2 * 8128 }).map(ticks),
  });
  fc.assert(
    fc.property(real, (given) => {
      const { clear, shorterIn, longerIn } = mark(given).result;
      for (const place of [shorterIn, longerIn]) {
        if (place !== null) expect(mark({ ...given, at: fromInches(place) }).result.clear).toBe(true);
      }
      if (clear) expect([shorterIn, longerIn]).toEqual([given.at / 8128, given.at / 8128]);
    }),
  );
});
