/** How far apart the supports of a leg may stand. */
import type { Source } from '../trade/answer.ts';
import { fromInches, type Ticks } from '../trade/length.ts';
import { spanByTable } from '../trade/span.ts';
import { editionOf } from './edition.ts';
import { weightPerFt } from './loads.ts';
import type { ResolvedLeg, ResolvedRun } from './resolved.ts';
import { GIVEN_SPAN, nfpa, valueSource } from './sources.ts';
import type { RunTables } from './tables.ts';

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
  const { maxSpan } = resolved.run.limits ?? {};
  const tableFt = spanByTable(leg.tray.loadTable, lb);
  const byTable = tableFt === null ? null : fromInches(tableFt * 12);
  if (byTable !== null && (maxSpan === undefined || byTable <= maxSpan)) {
    return { limit: byTable, by: 'table', source: valueSource(leg.tray, 'loadTable', 'load table') };
  }
  if (maxSpan !== undefined) return { limit: maxSpan, by: 'run', source: GIVEN_SPAN };
  return { limit: null, by: null, source: null };
}

/**
 * Where the span limits of a run stand. Beside a span that the run gives stands the code, in the edition the run is judged
 * by: it states no number, and asks for the intervals of the tray's instructions.
 */
export function spanSources(resolved: ResolvedRun, tables: Pick<RunTables, 'edition'>): readonly Source[] {
  const limits = resolved.legs.map((leg) => spanLimit(leg, resolved));
  const given = limits.some(({ by }) => by === 'run');
  return [
    ...limits.flatMap(({ source }) => source ?? []),
    ...(given ? [nfpa('392.30(A)', editionOf(resolved, tables))] : []),
  ];
}
