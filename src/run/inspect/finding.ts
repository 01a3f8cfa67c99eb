/** What a rule is, what it finds, and what it may look at. */
import type { Say, Source } from '../../trade/answer.ts';
import { type HalfTicks, TICKS_PER_INCH, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Catalogue } from '../catalogue.ts';
import { type FillOver, fillOver } from '../fillOver.ts';
import { type JumperPlace, jumperPlaces } from '../jumpers.ts';
import type { ResolvedLeg, ResolvedRun } from '../resolved.ts';
import type { RunTables } from '../tables.ts';

/** Rules in the order in which findings of one place are listed. */
export const RULE_IDS = [
  'span-too-long',
  'splice-past-quarter',
  'two-splices-in-span',
  'splice-in-end-span',
  'splice-on-support',
  'fitting-unsupported',
  'expansion-unsupported',
  'end-unsupported',
  'insertion-short',
  'insertion-long',
  'ends-butted',
  'hole-wrong',
  'cut-in-hole',
  'jumper-missing',
  'jumper-needless',
  'jumper-small',
  'gap-wrong',
  'anchor-none',
  'anchor-many',
  'anchor-off-middle',
  'fill-over',
  'fill-no-row',
  'radius-small',
  'power-with-signal',
  'air-with-cables',
  'open-gap-long',
  'used-as-step',
  'metals-mixed',
  'wrong-hand',
] as const;
export type RuleId = (typeof RULE_IDS)[number];

export type Unit = 'in' | 'in2' | null;

export interface Finding {
  readonly rule: RuleId;
  readonly leg: string;
  /** Ticks from the leg's first working point (the middle of a span may be half a tick); null: the whole leg. */
  readonly at: HalfTicks | null;
  readonly measured: number | string | null;
  readonly limit: number | string | null;
  readonly unit: Unit;
  readonly source: Source;
  /** What is wrong. */
  readonly say: Say;
  /** What to do. */
  readonly todo: Say;
}

export interface Scope {
  readonly resolved: ResolvedRun;
  readonly catalogue: Catalogue;
  readonly tables: RunTables;
  /** Worked out once for every rule that looks at them. */
  readonly jumpers: readonly JumperPlace[];
  /** By leg: a row, with a barrier a row a side. */
  readonly fills: ReadonlyMap<ResolvedLeg, readonly FillOver[]>;
}

export function scopeOf(resolved: ResolvedRun, catalogue: Catalogue, tables: RunTables): Scope {
  return {
    resolved,
    catalogue,
    tables,
    jumpers: jumperPlaces(resolved, catalogue, tables),
    fills: new Map(resolved.legs.map((leg) => [leg, fillOver(leg, resolved, tables)])),
  };
}

/** What a finder hands back: its rule fills in the rest. */
export interface Found {
  readonly leg: string;
  readonly at: HalfTicks | null;
  readonly measured?: number | string | null;
  readonly limit?: number | string | null;
  readonly unit?: Unit;
  /** Where it stands, if not where the rule says. */
  readonly source?: Source;
  readonly values?: Say['values'] | undefined;
  /** Which of the rule's sentences, where it has several: `none` says `inspect.RULE-none`. */
  readonly variant?: string;
  /** The same for what to do: `sized` says `inspect.RULE-todo-sized`. */
  readonly todo?: string | undefined;
}

export interface Rule {
  readonly id: RuleId;
  readonly source: (scope: Scope) => Source;
  readonly find: (scope: Scope) => readonly Found[];
}

/** A rule that finds one thing at most on a leg. */
export function overLegs(
  id: RuleId,
  source: Rule['source'],
  find: (leg: ResolvedLeg, scope: Scope) => Omit<Found, 'leg'> | null,
): Rule {
  return {
    id,
    source,
    find: (scope) =>
      scope.resolved.legs.flatMap((leg) => {
        const found = find(leg, scope);
        return found === null ? [] : [{ leg: leg.leg, ...found }];
      }),
  };
}

/** Findings of a rule, its sentences by the rule's id: `inspect.RULE` says it, `inspect.RULE-todo` what to do. */
export function findingsOf({ id, source, find }: Rule, scope: Scope): readonly Finding[] {
  const key = (...parts: readonly (string | undefined)[]) =>
    `inspect.${[id, ...parts.filter((part) => part !== undefined)].join('-')}`;
  return find(scope).map(({ variant, todo, values = {}, ...found }) => {
    const place = found.at === null ? {} : { at: text(found.at) };
    const said = { leg: found.leg, ...place, ...values };
    return {
      rule: id,
      leg: found.leg,
      at: found.at,
      measured: found.measured ?? null,
      limit: found.limit ?? null,
      unit: found.unit ?? null,
      source: found.source ?? source(scope),
      say: { say: key(variant), values: said },
      todo: { say: key('todo', todo), values: said },
    };
  });
}

/** A length measured against its limit, both said. */
export function lengths(measured: number, limit: number): Pick<Found, 'measured' | 'limit' | 'unit'> {
  return { measured: inchesOf(measured), limit: inchesOf(limit), unit: 'in' };
}

/** Inches of ticks that need not be whole. */
export const inchesOf = (length: number): number => length / TICKS_PER_INCH;

/** A length in a sentence; half a tick is not seen in it. */
export const text = (length: number): string => shortLength(ticks(Math.round(length)));
