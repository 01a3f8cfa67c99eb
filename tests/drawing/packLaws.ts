import fc from 'fast-check';
import { expect, test } from 'vitest';
import { layCables } from '../../src/drawing/packCables.ts';

/** How cables come to lie: none in another, none through a wall, each resting on something. */
export function packLaws(): void {
  const kinds = fc.array(
    fc.record({ od: fc.double({ min: 0.2, max: 2, noNaN: true }), count: fc.integer({ min: 1, max: 6 }) }),
    { minLength: 1, maxLength: 4 },
  );
  test('cables lie in the channel, on the floor or on each other, and none in another', () => {
    fc.assert(
      fc.property(kinds, (given) => {
        const laid = layCables(4, given);
        expect(laid).toHaveLength(given.reduce((n, k) => n + k.count, 0));
        laid.forEach((c, i) => {
          expect(c.x - c.r).toBeGreaterThanOrEqual(-1e-6);
          expect(c.x + c.r).toBeLessThanOrEqual(4 + 1e-6);
          expect(c.y - c.r).toBeGreaterThanOrEqual(-1e-6);
          const before = laid.slice(0, i);
          for (const o of before)
            expect(Math.hypot(o.x - c.x, o.y - c.y)).toBeGreaterThanOrEqual(c.r + o.r - 1e-5);
          const rests =
            c.y - c.r < 1e-6 || before.some((o) => Math.hypot(o.x - c.x, o.y - c.y) < c.r + o.r + 1e-6);
          expect(rests).toBe(true);
        });
      }),
      { numRuns: 60 },
    );
  });
}
