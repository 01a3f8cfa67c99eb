/** The length in which the channel of a leg comes. */
import type { Ticks } from '../trade/length.ts';
import type { ResolvedLeg, ResolvedRun } from './resolved.ts';

/** As the run gives it, for all its channel; else as the channel of the leg comes. */
export function stockOf({ tray }: Pick<ResolvedLeg, 'tray'>, { run }: Pick<ResolvedRun, 'run'>): Ticks {
  return run.stock ?? tray.length;
}
