/**
 * What is proven of a job whose lengths were rounded up: a bound of the rounded lengths says nothing of the true ones,
 * which may just fit. The same job is bounded once more with everything rounded the other way, where every plan of the
 * true lengths still fits; the lesser of the two bounds holds, and later aims are not claimed.
 */
import { inches, ticks } from '../length.ts';
import { jobOf } from './job.ts';
import { leastStock } from './leastStock.ts';
import type { SticksGiven, SticksResult } from './types.ts';

/** Least new stock of the true lengths, in ticks; 0 where a piece is too short to be told from none. */
export function trueBound(given: SticksGiven, stop: () => boolean): number {
  const job = jobOf(given, true);
  if (job.kinds.some(({ size }) => size <= 0)) return 0;
  return leastStock(job, { stop, found: () => {} }, false).bound.ticks;
}

/** The answer with no more claimed than holds for the true lengths. */
export function claimed(result: SticksResult, bound: number): SticksResult {
  if (result.newStockIn === null || result.lowerBoundIn === null) return result;
  const lowerBoundIn = Math.min(result.lowerBoundIn, inches(ticks(Math.min(bound, Number.MAX_SAFE_INTEGER))));
  const proven = result.proven && lowerBoundIn >= result.newStockIn;
  return {
    ...result,
    lowerBoundIn,
    proven,
    provenLevels: proven ? 1 : 0,
    certificate: proven ? result.certificate : null,
    why: [{ say: 'sticks.rounded' }, { say: proven ? 'sticks.roundedProof' : 'sticks.roundedOpen' }],
  };
}
