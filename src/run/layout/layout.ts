/** A run laid out: supports, splices, anchors, jumpers and gaps, or the rule that no choice can satisfy. */
import type { Answered } from '../../trade/answer.ts';
import { distinctSources } from '../../trade/distinctSources.ts';
import type { Ticks } from '../../trade/length.ts';
import type { Catalogue } from '../catalogue.ts';
import { resolveRun } from '../resolve.ts';
import type { PlacedSupport, ResolvedRun } from '../resolved.ts';
import { spanLimit } from '../spanLimit.ts';
import type { RunTables } from '../tables.ts';
import type { Run, Support } from '../types.ts';
import { usualOf } from '../usual.ts';
import { anchored } from './anchored.ts';
import { bareRun } from './bare.ts';
import { holdsOf } from './holds.ts';
import { jobsOf } from './jobs.ts';
import { layLine } from './layLine.ts';
import { noLimit, type Refusal, refusalOf } from './refusal.ts';
import { layoutSteps } from './steps.ts';
import { type LeastStock, leastStock } from './stock.ts';
import { type LaidOut, withJumpers, withLines } from './write.ts';

export type { Refusal } from './refusal.ts';

export interface LaidRun {
  readonly run: Run;
  readonly proven: { readonly supports: true; readonly stock: boolean };
  /** No lay-out has fewer supports; none that has so few takes fewer stock lengths. */
  readonly bound: { readonly supports: number; readonly stock: number };
}

export type LayoutResult = LaidRun | { readonly run: null; readonly refused: Refusal };

/**
 * Lays out a run. What it gives as supports, straight splices, anchors and jumpers is passed over.
 *
 * @throws {GivenError} every fault of the run as given
 */
export function layout(run: Run, catalogue: Catalogue, tables: RunTables): Answered<LayoutResult> {
  const usual = usualOf(tables);
  resolveRun(run, catalogue, usual);
  const bare = bareRun(run, tables);
  const resolved = resolveRun(bare, catalogue, usual);
  const lines = fewestOf(resolved, catalogue, tables);
  if ('refused' in lines) return refused(lines.refused);

  const held = holding(lines.found, bare, (changed) => resolveRun(changed, catalogue, usual));
  if ('refused' in held) return refused(held.refused);
  const { stock, whole } = held;
  const supports = whole.legs.flatMap((leg) =>
    leg.supports.map((support) => {
      const { leg: on, at, way } = support;
      return { leg: on, at, way, hold: held.holds.get(support) ?? support.hold };
    }),
  );
  const last = resolveRun({ ...whole.run, supports }, catalogue, usual);
  const result: LaidRun = {
    run: withJumpers(last, catalogue, tables),
    proven: { supports: true, stock: stock.used === stock.bound },
    bound: { supports: supports.length, stock: stock.bound },
  };
  const { steps, sources } = layoutSteps({ resolved: last, catalogue, tables, stock });
  return { result, steps, sources: distinctSources(sources) };
}

interface Held {
  readonly stock: LeastStock;
  readonly whole: ResolvedRun;
  readonly holds: ReadonlyMap<PlacedSupport, Support['hold']>;
}

/** Few stock lengths; and what each support does, for which some lines may have to be laid anew, leg after leg. */
function holding(
  lines: readonly LaidOut[],
  bare: Run,
  resolve: (run: Run) => ResolvedRun,
): Held | { readonly refused: Refusal } {
  let laid = lines;
  const tried = new Set<string>();
  for (;;) {
    const stock = leastStock(laid, resolve(bare).kerf);
    const whole = resolve(withLines(bare, stock.laid));
    const held = holdsOf(whole);
    if ('holds' in held) return { stock, whole, holds: held.holds };
    const { leg, open, refusal } = held.unheld;
    const section = open.find((one) => !tried.has(`${leg.leg} ${whole.sections.indexOf(one)}`));
    if (section === undefined) return { refused: refusal };
    tried.add(`${leg.leg} ${whole.sections.indexOf(section)}`);
    laid = anchored(laid, section, leg.leg) ?? laid;
  }
}

function refused(refusal: Refusal): Answered<LayoutResult> {
  return { result: { run: null, refused: refusal }, steps: [refusal.say], sources: [] };
}

function fewestOf(
  resolved: ResolvedRun,
  catalogue: Catalogue,
  tables: RunTables,
): { readonly found: readonly LaidOut[] } | { readonly refused: Refusal } {
  const all: LaidOut[] = [];
  for (const leg of resolved.legs) {
    const { limit } = spanLimit(leg, resolved);
    if (limit === null) return { refused: noLimit(leg.leg) };
    for (const job of jobsOf(leg, limit as Ticks, { resolved, catalogue, tables })) {
      const found = layLine(job.problem);
      if (found === null) return { refused: refusalOf(job) };
      all.push({ job, layout: found });
    }
  }
  return { found: all };
}
