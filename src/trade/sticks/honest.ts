/**
 * What is proven of a job whose lengths were rounded up: a bound of the rounded lengths says nothing of the true ones,
 * which may just fit. The same job is bounded once more with everything rounded the other way, where every plan of the
 * true lengths still fits; the lesser of the two bounds holds, and later aims are not claimed.
 */
import { NOTHING } from './certificate.ts';
import { jobOf } from './job.ts';
import { leastStock } from './leastStock.ts';
import type { SticksGiven } from './types.ts';
import type { Found } from './write.ts';

/** Least new stock of the true lengths, in ticks; 0 where a piece is too short to be told from none. */
export function trueBound(given: SticksGiven, stop: () => boolean): number {
  const job = jobOf(given, true);
  if (job.kinds.some(({ size }) => size <= 0)) return 0;
  return leastStock(job, { stop, found: () => {} }, false).bound.ticks;
}

/** What was found, with no more claimed than holds for the true lengths. */
export const claimed = (found: Found, ticks: number): Found => ({
  ...found,
  bound: ticks < found.bound.ticks ? { ...NOTHING, ticks } : found.bound,
  levels: Math.min(found.levels, 1),
  tried: false,
});
