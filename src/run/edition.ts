import type { Edition } from '../trade/editions.ts';
import type { ResolvedRun } from './resolved.ts';
import type { RunTables } from './tables.ts';

/** Edition of NFPA 70 that a run is judged by: its own, else the one the site has adopted, else the newest. */
export function editionOf(
  { run }: Pick<ResolvedRun, 'run'>,
  { edition }: Pick<RunTables, 'edition'>,
): Edition {
  return run.limits?.edition ?? edition;
}
