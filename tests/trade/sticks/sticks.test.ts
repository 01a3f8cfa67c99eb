import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faultsOf } from '../../../src/trade/sticks/check.ts';
import { byHand as byRule } from '../../../src/trade/sticks/firstFit.ts';
import { jobOf } from '../../../src/trade/sticks/job.ts';
import { laterAims } from '../../../src/trade/sticks/laterAims.ts';
import { leastStock } from '../../../src/trade/sticks/leastStock.ts';
import { rankOf } from '../../../src/trade/sticks/plan.ts';
import { sticks } from '../../../src/trade/sticks/sticks.ts';
import type {
  CutLength,
  SticksGiven,
  SticksResult,
  StockCertificate,
} from '../../../src/trade/sticks/types.ts';
import { bestByTrying, type Five } from './everyPlan.ts';
import { published, ties, tray, UNIT } from './jobs.ts';
import { randomGiven } from './random.ts';

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
  const small = randomGiven({ kinds: 3, each: 3, stock: 60, piece: 40 });

  test('all five numbers are the best; what is called proven is', () => {
    fc.assert(
      fc.property(small, (one) => {
        const best = bestByTrying(one);
        const result = planned(one);
        expect(result.feasible).toBe(best !== null);
        if (best !== null) expect(fiveOf(result)).toEqual(best);
      }),
      { numRuns: 400 },
    );
  });

  test('as large jobs are planned: never better than the best, and an aim called proven is the best', () => {
    fc.assert(
      fc.property(small, (one) => {
        const job = jobOf(one);
        const first = leastStock(job, { stop: () => false, found: () => {} }, false);
        const best = bestByTrying(one);
        if (first.bound.ticks === Number.POSITIVE_INFINITY) expect(best).toBeNull();
        if (first.plan === null || best === null) return;
        expect(first.bound.ticks).toBeLessThanOrEqual(best[0]);
        const { plan, levels } = laterAims(job, first, first.plan, () => false);
        const [stock, used, longest, setups, stops] = rankOf(plan, job);
        const five = [stock, 0 - used, 0 - longest, setups, stops];
        const proven = stock === first.bound.ticks ? levels : 0;
        expect(five.slice(0, proven)).toEqual(best.slice(0, proven));
      }),
      { numRuns: 400 },
    );
  });
});

describe('larger jobs', () => {
  test('the plan holds, what is called proven is shown, and the rule of thumb is never better', () => {
    fc.assert(
      fc.property(randomGiven({ kinds: 12, each: 6, stock: 960, piece: 640 }), (one) => {
        const result = planned(one);
        const hand = byRule(jobOf(one));
        if (hand === null) return;
        expect(result.feasible).toBe(true);
        expect(fiveOf(result)[0]).toBeLessThanOrEqual(rankOf(hand, jobOf(one))[0]);
      }),
      { numRuns: 60 },
    );
  });

  test('the same again is the same answer', () => {
    const given = tray.find(({ id }) => id === 'tray-divisor-400')?.given as SticksGiven;
    expect(sticks(given)).toEqual(sticks(given));
  });
});

describe('an answer that does not hold is found out', () => {
  const given = tray.find(({ id }) => id === 'ms-short-20')?.given as SticksGiven;
  const { result } = sticks(given);
  const [first, ...rest] = result.lengths as [CutLength, ...CutLength[]];
  const stocked = result.certificate as StockCertificate;
  const rows: readonly (readonly [string, Partial<SticksResult>])[] = [
    ['a piece is missing', { lengths: [{ ...first, pieces: first.pieces.slice(1) }, ...rest] }],
    ['a bar is longer than it is', { lengths: [{ ...first, fromIn: first.fromIn + 1 }, ...rest] }],
    ['a bar is used once too often', { lengths: [first, first, ...rest] }],
    ['a remainder is not what is left', { lengths: [{ ...first, leftIn: first.leftIn + 0.01 }, ...rest] }],
    ['a bar is opened for nothing', { lengths: [...result.lengths, { ...first, pieces: [] }] }],
    ['set-ups are counted wrongly', { setups: (result.setups ?? 0) - 1 }],
    ['the bound is above the plan', { lowerBoundIn: (result.newStockIn ?? 0) + 1 }],
    ['proven without a certificate', { certificate: null }],
    [
      'a weight too many',
      { certificate: { ...stocked, weights: stocked.weights.map((w) => ({ ...w, u: w.u + 1 })) } },
    ],
    [
      'a bar that holds more',
      { certificate: { ...stocked, perStock: stocked.perStock.map((p) => ({ ...p, U: p.U - 1 })) } },
    ],
    ['another bound', { certificate: { ...stocked, bound: stocked.bound + 240 } }],
    ['no plan, but parts of one', { feasible: false }],
  ];

  test.each(rows)('%s', (_, wrong) => {
    expect(faultsOf(given, result)).toEqual([]);
    expect(faultsOf(given, { ...result, ...wrong })).not.toEqual([]);
  });
});
