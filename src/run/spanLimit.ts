/** How far apart the supports of a leg may stand. */
import type { Source } from '../trade/answer.ts';
import { fromInches, type Ticks } from '../trade/length.ts';
import { spanByTable } from '../trade/span.ts';
import { weightPerFt } from './loads.ts';
import type { ResolvedLeg, ResolvedRun } from './resolved.ts';
import { nfpa, valueSource } from './sources.ts';

export type SpanLimit =
  | {
      readonly limit: Ticks;
      /** What governs: the load table of the leg's channel, or the greatest span that the run gives. */
      readonly by: 'table' | 'run';
      readonly source: Source;
    }
  | { readonly limit: null; readonly by: null; readonly source: null };

/**
 * The lesser of the run's `maxSpan` and the longest listed span whose listed load carries the channel and all that runs
 * over the leg. Where no row carries it, `maxSpan` alone; where there is neither, nothing is known and nothing judged.
 */
export function spanLimit(leg: ResolvedLeg, resolved: Pick<ResolvedRun, 'run' | 'cablesOver'>): SpanLimit {
  const { lb } = weightPerFt(leg, resolved);
  const { maxSpan, edition } = resolved.run.limits ?? {};
  const tableFt = spanByTable(leg.tray.loadTable, lb);
  const byTable = tableFt === null ? null : fromInches(tableFt * 12);
  if (byTable !== null && (maxSpan === undefined || byTable <= maxSpan)) {
    return { limit: byTable, by: 'table', source: valueSource(leg.tray, 'loadTable', 'load table') };
  }
  if (maxSpan !== undefined) return { limit: maxSpan, by: 'run', source: nfpa('392.30(A)', edition) };
  return { limit: null, by: null, source: null };
}
