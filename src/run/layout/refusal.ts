/** Why a line cannot be laid out: the rule that no choice can satisfy, and where. */
import type { Say, Source } from '../../trade/answer.ts';
import { type HalfTicks, middle, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { RuleId } from '../inspect/finding.ts';
import { ruleOf } from '../inspect/unsupported.ts';
import { ANCHORS, SPLICE_PLACES } from '../sources.ts';
import type { RunTables } from '../tables.ts';
import { fewestSupports } from './fewest.ts';
import type { LineJob } from './jobs.ts';
import type { LineProblem, SpliceRule } from './line.ts';

export interface Refusal {
  readonly rule: RuleId;
  readonly leg: string;
  /** From the leg's first working point; null: the whole leg. */
  readonly at: HalfTicks | null;
  readonly say: Say;
}

const text = (length: number): string => shortLength(ticks(Math.round(length)));

/** Nothing says how far apart the supports of a leg may stand. */
export function noLimit(leg: string): Refusal {
  return { rule: 'span-too-long', leg, at: null, say: { say: 'layout.noLimit', values: { leg } } };
}

/** @param job  a line that fewest.ts finds no lay-out for */
export function refusalOf(job: LineJob): Refusal {
  return unsupported(job) ?? tooFarApart(job) ?? unspliceable(job);
}

function unsupported({ leg, line, faces, problem }: LineJob): Refusal | null {
  const { places, firstBy, lastFrom } = problem;
  const refused = (end: 'from' | 'to'): Refusal => {
    const at = faces[end === 'from' ? 0 : 1];
    const rule = ruleOf(line[end]);
    const values = { leg: leg.leg, at: text(at), limit: text(firstBy - faces[0]) };
    return { rule, leg: leg.leg, at, say: { say: `layout.${rule}`, values } };
  };
  if (!places.some((x) => x <= firstBy)) return refused('from');
  return places.some((x) => x >= lastFrom) ? null : refused('to');
}

function tooFarApart({ leg, problem }: LineJob): Refusal | null {
  const { places, maxSpan, firstBy, lastFrom } = problem;
  // Those before the last that may be the first, and behind the first that may be the last, matter to nobody.
  const first = places.findLast((x) => x <= firstBy) ?? 0;
  const last = places.find((x) => x >= lastFrom) ?? 0;
  const gap = places.findIndex((x, i) => x >= first && x < last && (places[i + 1] as number) - x > maxSpan);
  if (gap < 0) return null;
  const [from, to] = [places[gap] as number, places[gap + 1] as number];
  const values = { leg: leg.leg, from: text(from), to: text(to), limit: text(maxSpan) };
  return {
    rule: 'span-too-long',
    leg: leg.leg,
    at: middle(ticks(from), ticks(to)),
    say: { say: 'layout.span-too-long', values },
  };
}

/** What would be if one rule of splices did not hold; the first that would help is the one in the way. */
const RELAXED: readonly (readonly [RuleId, (rule: SpliceRule) => SpliceRule])[] = [
  ['splice-past-quarter', (rule) => ({ ...rule, share: 1 / 2 })],
  ['splice-on-support', (rule) => ({ ...rule, length: 0 })],
  ['splice-past-quarter', (rule) => ({ ...rule, share: 1 / 2, length: 0 })],
];

function unspliceable({ leg, problem }: LineJob): Refusal {
  const relaxed = RELAXED.find(
    ([, relax]) => fewestSupports({ ...problem, splice: relax(problem.splice) }) !== null,
  );
  const rule = relaxed?.[0] ?? (fromTheEnds(problem) ? 'splice-in-end-span' : 'two-splices-in-span');
  const [from, to] = problem.channel;
  const values = { leg: leg.leg, length: text(to - from), stock: text(problem.stock) };
  return { rule, leg: leg.leg, at: middle(ticks(from), ticks(to)), say: { say: `layout.${rule}`, values } };
}

/** Whether a piece from either end of the line cannot reach beyond the end span, or all spans would be end spans. */
function fromTheEnds({ places, channel, stock }: LineProblem): boolean {
  const [second, lastButOne] = [places[1], places.at(-2)];
  if (second === undefined || lastButOne === undefined || places.length < 4) return true;
  return second - channel[0] > stock || channel[1] - lastButOne > stock;
}

/** Where the rule stands that cannot be kept. */
export function refusalSource({ rule }: Refusal, { limits }: RunTables): Source {
  if (rule.endsWith('-unsupported')) return limits.supportWithin.source;
  if (rule.startsWith('anchor-')) return ANCHORS;
  return rule === 'splice-past-quarter' ? limits.spliceShare.source : SPLICE_PLACES;
}
