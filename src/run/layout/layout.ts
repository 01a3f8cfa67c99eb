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
import { bareRun } from './bare.ts';
import { borne } from './borne.ts';
import { holdsOf } from './holds.ts';
import { jobsOf } from './jobs.ts';
import { layLine } from './layLine.ts';
import { noLimit, type Refusal, refusalOf, refusalSource } from './refusal.ts';
import { layoutSteps } from './steps.ts';
import { freeBound, type LeastStock, leastStock } from './stock.ts';
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
  const bare = bareRun(resolveRun(run, catalogue, usual), catalogue, tables);
  const resolved = resolveRun(bare, catalogue, usual);
  const lines = fewestOf(resolved, catalogue, tables);
  if ('refused' in lines) return refused(lines.refused, tables);

  const held = holding(lines.found, bare, (changed) => resolveRun(changed, catalogue, usual));
  if ('refused' in held) return refused(held.refused, tables);
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

/** Few stock lengths; and what each support does, for which some lines may have to be laid anew. */
function holding(
  lines: readonly LaidOut[],
  bare: Run,
  resolve: (run: Run) => ResolvedRun,
): Held | { readonly refused: Refusal } {
  const held = withStock(lines, bare, resolve);
  if (!('refused' in held)) return held;
  const laid = borne(lines, resolve(withLines(bare, lines)));
  if (laid === null) return held;
  const again = withStock(laid, bare, resolve);
  if ('refused' in again) return again;
  // What was laid anew is one choice of many: the bound is to hold for the others too.
  const bound = Math.min(again.stock.bound, freeBound(lines, laid, again.whole.kerf));
  return { ...again, stock: { ...again.stock, bound } };
}

function withStock(
  lines: readonly LaidOut[],
  bare: Run,
  resolve: (run: Run) => ResolvedRun,
): Held | { readonly refused: Refusal } {
  const stock = leastStock(lines, resolve(bare).kerf);
  const whole = resolve(withLines(bare, stock.laid));
  const held = holdsOf(whole);
  return 'refused' in held ? held : { stock, whole, holds: held.holds };
}

function refused(refusal: Refusal, tables: RunTables): Answered<LayoutResult> {
  const source = refusalSource(refusal, tables);
  return { result: { run: null, refused: refusal }, steps: [refusal.say], sources: [source] };
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
