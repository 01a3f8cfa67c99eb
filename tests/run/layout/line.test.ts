/** One line: the two exact searches against every lay-out there is. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapest, prepare } from '../../../src/run/layout/cheapest.ts';
import { fewestSupports } from '../../../src/run/layout/fewest.ts';
import type { LineLayout, LineProblem } from '../../../src/run/layout/line.ts';
import { costOf, type Price } from '../../../src/run/layout/price.ts';
import { everyLayout } from './brute.ts';

/** Small whole numbers stand for ticks; the grain of splices is finer than the places. */
const tiny = fc
  .record({
    places: fc.uniqueArray(fc.integer({ min: 0, max: 13 }), { minLength: 1, maxLength: 9 }),
    firstBy: fc.integer({ min: 0, max: 5 }),
    fromEnd: fc.integer({ min: 0, max: 5 }),
    channel: fc.tuple(fc.integer({ min: -2, max: 0 }), fc.integer({ min: 1, max: 3 })),
    maxSpan: fc.integer({ min: 2, max: 9 }),
    stock: fc.integer({ min: 3, max: 14 }),
    length: fc.integer({ min: 1, max: 3 }),
    opening: fc.tuple(fc.integer({ min: 0, max: 1 }), fc.integer({ min: 0, max: 1 })),
  })
  .map(({ places, firstBy, fromEnd, channel, maxSpan, stock, length, opening }): LineProblem => {
    const scaled = places.map((x) => 4 * x).sort((a, b) => a - b);
    const end = Math.max(...scaled);
    return {
      places: scaled,
      firstBy: 4 * firstBy,
      lastFrom: end - 4 * fromEnd,
      channel: [channel[0], end + channel[1]],
      maxSpan: 4 * maxSpan,
      stock: 4 * stock,
      splice: { length: 2 * length, before: opening[0], behind: opening[1], share: 1 / 4, grain: 2 },
    };
  });

const same = (a: LineLayout, b: LineLayout) =>
  a.supports.join() === b.supports.join() && a.splices.join() === b.splices.join();

describe('fewest supports', () => {
  it('are those of the best of all lay-outs, and there are none where no lay-out is', () => {
    let none = 0;
    let spliced = 0;
    fc.assert(
      fc.property(tiny, (problem) => {
        const found = fewestSupports(problem);
        let fewest = Number.POSITIVE_INFINITY;
        let whole = false;
        let among = false;
        for (const layout of everyLayout(problem)) {
          fewest = Math.min(fewest, layout.supports.length);
          whole ||= layout.splices.length === 0;
          among ||= found !== null && same(layout, found);
        }
        expect(found?.supports.length ?? Number.POSITIVE_INFINITY).toBe(fewest);
        expect(among).toBe(found !== null);
        if (found === null) none++;
        else if (!whole) spliced++;
      }),
      { numRuns: 3000, seed: 4 },
    );
    expect(Math.min(none, spliced)).toBeGreaterThan(20);
  });
});

describe('the cheapest lay-out', () => {
  const price = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 6 })), { maxLength: 4 })
    .map((steps) => (stock: number): Price => {
      const tops = [...new Set(steps.map(([top]) => top).filter((top) => top < stock))].sort((a, b) => a - b);
      let cost = -2;
      return {
        steps: [...tops, stock].map((upTo, i) => {
          cost += steps[i]?.[1] ?? 1;
          return { upTo, cost };
        }),
      };
    });

  it('costs what the cheapest of all lay-outs with so many supports costs', () => {
    let spliced = 0;
    fc.assert(
      fc.property(tiny, price, fc.integer({ min: 0, max: 2 }), (problem, of, more) => {
        const p = of(problem.stock);
        const first = fewestSupports(problem);
        if (first === null) return;
        const count = first.supports.length + more;
        const ready = prepare(problem, count);
        const found = ready === null ? null : cheapest(ready, p);
        expect(ready).not.toBeNull();
        let least = Number.POSITIVE_INFINITY;
        let among = false;
        for (const layout of everyLayout(problem)) {
          if (layout.supports.length !== count) continue;
          const cost = layout.cuts.reduce((sum, cut) => sum + costOf(p, cut), 0);
          least = Math.min(least, cost);
          among ||= found !== null && same(layout, found.layout) && cost === found.cost;
        }
        expect(found?.cost ?? Number.POSITIVE_INFINITY).toBe(least);
        expect(among).toBe(found !== null);
        if (found !== null && found.layout.splices.length > 0) spliced++;
      }),
      { numRuns: 3000, seed: 5 },
    );
    expect(spliced).toBeGreaterThan(20);
  });
});
