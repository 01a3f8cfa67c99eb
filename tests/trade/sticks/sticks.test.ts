import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ticks } from '../../../src/trade/length.ts';
import { faultsOf } from '../../../src/trade/sticks/check.ts';
import { sticks } from '../../../src/trade/sticks/sticks.ts';
import type { SticksGiven, SticksResult } from '../../../src/trade/sticks/types.ts';
import { bestByTrying, type Five } from './everyPlan.ts';
import { published, ties, tray, UNIT } from './jobs.ts';

const fiveOf = (r: SticksResult): Five =>
  [
    (r.newStockIn ?? 0) * 8128,
    (r.cutFromOffcutsIn ?? 0) * 8128,
    (r.longestReusableIn ?? 0) * 8128,
    r.setups ?? 0,
    r.stopSettings ?? 0,
  ].map(Math.round) as unknown as Five;

/** The answer, checked by code that shares nothing with the search. */
function planned(given: SticksGiven): SticksResult {
  const { result } = sticks(given);
  expect(faultsOf(given, result)).toEqual([]);
  return result;
}

/** Longest first, each into the first stick it fits: the plan made by hand, written anew for the tests. */
function byHand({ stock, pieces, kerf }: SticksGiven): number {
  const room = (stock[0]?.length ?? 0) + kerf;
  const left: number[] = [];
  const sizes = pieces.flatMap(({ length, count }) => new Array<number>(count).fill(length + kerf));
  for (const size of sizes.sort((a, b) => b - a)) {
    const at = left.findIndex((l) => l >= size);
    if (at < 0) left.push(room - size);
    else left[at] = (left[at] as number) - size;
  }
  return left.length;
}

describe('published instances', () => {
  // These take longer, or have no certificate: npm run bench -- sticks shows them.
  const slow = ['Waescher_TEST0022', 'Hard28_BPP40', 'Hard28_BPP14', 'HARD0', '201_2500_DI_0'];

  test.each(published.filter(({ id }) => !slow.includes(id)))('$id: $bins, $source', ({ given, bins }) => {
    const result = planned(given);
    expect(result).toMatchObject({ proven: true, lengthsUsed: bins });
    expect(result.lengthsUsed).toBeLessThanOrEqual(byHand(given));
  });

  test.each(published.filter(({ id }) => slow.includes(id) && id !== 'HARD0'))(
    '$id, stopped early: a plan and a bound that hold',
    ({ given, bins }) => {
      let asked = 0;
      const { result } = sticks(given, { stop: () => ++asked > 200 });
      expect(faultsOf(given, result)).toEqual([]);
      expect(result.lengthsUsed).toBeGreaterThanOrEqual(bins);
      expect(result.lengthsUsed).toBeLessThanOrEqual(byHand(given));
      expect((result.lowerBoundIn ?? 0) / ((given.stock[0]?.length ?? 1) / 8128)).toBeLessThanOrEqual(bins);
    },
  );
});

describe('tray jobs', () => {
  test.each(tray)('$id: $source', ({ given, newStock }) => {
    const result = planned(given);
    expect(result.proven).toBe(true);
    expect(fiveOf(result)[0]).toBe(newStock * UNIT);
  });
});

describe('plans of equal stock', () => {
  test.each(ties)('$id: $source', ({ given, answer: [stock = 0, used = 0, longest = 0, setups, stops] }) => {
    const result = planned(given);
    expect(fiveOf(result)).toEqual([stock * UNIT, used * UNIT, longest * UNIT, setups, stops]);
    expect(result.provenLevels).toBe(5);
    expect(bestByTrying(given)).toEqual(fiveOf(result));
  });
});

describe('small jobs against every plan there is', () => {
  const length = fc.integer({ min: 3, max: 40 });
  const given = fc
    .record({
      stock: fc.array(fc.tuple(fc.integer({ min: 20, max: 60 }), fc.option(fc.nat(3), { nil: undefined })), {
        minLength: 1,
        maxLength: 2,
      }),
      offcuts: fc.array(fc.tuple(fc.integer({ min: 3, max: 50 }), fc.nat(2)), { maxLength: 2 }),
      pieces: fc.array(fc.tuple(length, fc.integer({ min: 1, max: 3 })), { minLength: 1, maxLength: 3 }),
      kerf: fc.nat(2),
      least: fc.nat(20),
    })
    .map(
      ({ stock, offcuts, pieces, kerf, least }): SticksGiven => ({
        stock: stock.map(([l, count]) => ({ length: ticks(l * 508), count })),
        offcuts: offcuts.map(([l, count]) => ({ length: ticks(l * 508), count })),
        pieces: pieces.map(([l, count]) => ({ length: ticks(l * 508), count })),
        kerf: ticks(kerf * 508),
        minReusable: ticks(least * 508),
      }),
    )
    .filter(({ stock, offcuts = [], pieces }) =>
      pieces.every((p) => [...stock, ...offcuts].some((b) => b.length >= p.length)),
    );

  test('all five numbers are the best; what is called proven is', () => {
    fc.assert(
      fc.property(given, (one) => {
        const best = bestByTrying(one);
        const result = planned(one);
        expect(result.feasible).toBe(best !== null);
        if (best !== null) expect(fiveOf(result)).toEqual(best);
      }),
      { numRuns: 400 },
    );
  });
});
