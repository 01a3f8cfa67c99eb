/** A run laid out so that an inspection finds nothing in it. */
import type { Catalogue, Metal } from '../../run/catalogue.ts';
import { cutOnHole } from '../../run/hole.ts';
import { type Finding, inspect } from '../../run/inspect/inspect.ts';
import { cheapest, prepare } from '../../run/layout/cheapest.ts';
import { holdsOf } from '../../run/layout/holds.ts';
import { jobsOf } from '../../run/layout/jobs.ts';
import { layLine } from '../../run/layout/layLine.ts';
import type { LineLayout, LineProblem } from '../../run/layout/line.ts';
import { byPiece } from '../../run/layout/price.ts';
import { type LaidOut, withJumpers, withLines } from '../../run/layout/write.ts';
import { resolveRun, stockFaults } from '../../run/resolve.ts';
import type { ResolvedRun } from '../../run/resolved.ts';
import { spanLimit } from '../../run/spanLimit.ts';
import type { RunTables } from '../../run/tables.ts';
import type { Run } from '../../run/types.ts';
import { TRADE_USUAL } from '../../run/usual.ts';
import { GivenError } from '../../trade/given.ts';
import { ticks } from '../../trade/length.ts';
import { routeOf } from './route.ts';
import { spread } from './spread.ts';
import type { RouteValues } from './wants.ts';

/** What a run of practice is made and judged with; the tables are the trade's own, nothing adopted. */
export interface Bench {
  readonly catalogue: Catalogue;
  readonly tables: RunTables;
}

export interface SoundRun {
  readonly run: Run;
  readonly resolved: ResolvedRun;
}

/** Metal of a part of the catalogue. */
export function metalOf(id: string | null, { catalogue }: Pick<Bench, 'catalogue'>): Metal | null {
  const item = id === null ? undefined : catalogue.get(id);
  return item !== undefined && 'metal' in item ? item.metal : null;
}

/** @returns null where the run has a fault: practice draws again */
export function resolvedOf(run: Run, { catalogue }: Pick<Bench, 'catalogue'>): ResolvedRun | null {
  try {
    // Draws are fixed for ever: no paper of a site may change them.
    return resolveRun(run, catalogue, TRADE_USUAL);
  } catch (cause) {
    if (cause instanceof GivenError) return null;
    throw cause;
  }
}

export const findingsIn = (resolved: ResolvedRun, { catalogue, tables }: Bench): readonly Finding[] =>
  inspect(resolved, catalogue, tables).result.findings;

/**
 * From drawn values to a run with supports, splices, anchors and jumpers, sound in every rule, whose pieces can be cut.
 *
 * @returns null where the values make none
 */
export function soundRun(values: RouteValues, bench: Bench): SoundRun | null {
  const route = routeOf(values, bench.catalogue);
  const laid = route === null ? null : laidOut(route, bench);
  if (laid === null) return null;
  const resolved = resolvedOf(values.splice === 'plate' ? plated(laid) : laid, bench);
  if (resolved === null || stockFaults(resolved).length > 0) return null;
  return findingsIn(resolved, bench).length === 0 ? { run: resolved.run, resolved } : null;
}

/** Each line with the fewest supports. @returns null where some rule leaves no choice */
export function laidOut(route: Run, bench: Bench): Run | null {
  const bare = resolvedOf(route, bench);
  const lines = bare === null ? null : linesOf(bare, bench);
  if (lines === null) return null;
  const whole = resolvedOf(withLines(route, lines), bench);
  const held = whole === null ? null : holdsOf(whole);
  if (whole === null || held === null || 'refused' in held) return null;
  const supports = whole.legs.flatMap((leg) =>
    leg.supports.map((support) => {
      const { leg: on, at, way, hold } = support;
      return { leg: on, at, way, hold: held.holds.get(support) ?? hold };
    }),
  );
  const last = resolvedOf({ ...whole.run, supports }, bench);
  return last === null ? null : withJumpers(last, bench.catalogue, bench.tables);
}

function linesOf(resolved: ResolvedRun, bench: Bench): readonly LaidOut[] | null {
  const all: LaidOut[] = [];
  for (const leg of resolved.legs) {
    const { limit } = spanLimit(leg, resolved);
    if (limit === null) return null;
    for (const job of jobsOf(leg, limit, { resolved, ...bench })) {
      // What hangs over at another tray is held to the rule of an end: nobody lays channel far out over nothing.
      const lastFrom = job.faces[1] - bench.tables.limits.supportWithin.value;
      const problem = { ...job.problem, lastFrom: Math.max(job.problem.lastFrom, lastFrom) };
      const layout = fewestPieces(problem, resolved.kerf);
      // Looked at here already, because most values that are sent back are sent back for it.
      if (
        layout === null ||
        layout.cuts.some((cut) => cutOnHole(ticks(cut), leg.tray.webHoles, ticks(problem.stock)))
      )
        return null;
      all.push({ job: { ...job, problem }, layout });
    }
  }
  return all.map(({ job, layout }) => ({ job, layout: spread(job.problem, layout) }));
}

/** The fewest supports, and among such lay-outs the fewest pieces: whole lengths first, as they are laid. */
function fewestPieces(problem: LineProblem, kerf: number): LineLayout | null {
  const fewest = layLine(problem);
  if (fewest === null || fewest.cuts.length === 1) return fewest;
  const ready = prepare(problem, fewest.supports.length);
  const price = byPiece({ length: problem.stock, kerf });
  return ready === null ? fewest : (cheapest(ready, price)?.layout ?? fewest);
}

/** The same run with plates for sleeves. */
const plated = (run: Run): Run => ({
  ...run,
  joints: run.joints?.map((joint) => (joint.kind === 'socketed' ? { ...joint, kind: 'butt' } : joint)),
});
