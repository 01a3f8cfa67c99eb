/** Sheets of one person as one: more draws tell more. Only with a bound, which asks for no order. */
import type { Fault } from '../../trade/given.ts';
import { type Decision, decide } from '../passRule/decide.ts';
import { clopperPearson, type Interval } from '../passRule/interval.ts';
import { type Bound, ruleFaults } from '../passRule/rule.ts';
import { type Practice, type Sheet, sheetPlaces } from '../sheet.ts';
import { personOf } from './rawTries.ts';
import type { Tried, Tries } from './tries.ts';

export interface Pooled {
  readonly person: string;
  /** Sheets, by number and bench, in that order. */
  readonly sheets: readonly { readonly number: number; readonly bench: number }[];
  /** Whether each of their draws holds. One that was left blank does not, as when its sheet is graded. */
  readonly outcomes: readonly boolean[];
  readonly criticalMissed: boolean;
}

/**
 * What each person answered on sheets with a fixed number of draws, in the order of the alphabet. A sequential sheet
 * stops when it is decided, so its draws are no fair part of a pool.
 */
export function pooledOf(
  { tried, sheets }: Pick<Tries, 'tried' | 'sheets'>,
  families: Practice['families'],
): readonly Pooled[] {
  const own = tried.filter(({ who, on }) => personOf(who) !== undefined && on !== undefined);
  return [...Map.groupBy(own, ({ who }) => personOf(who) ?? '')]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([person, tries]) => {
      const benches = [...Map.groupBy(tries, ({ on }) => JSON.stringify([on?.sheet, on?.bench])).values()]
        .flatMap((of) => {
          const sheet = sheets.get(of[0]?.on?.sheet ?? '');
          return sheet === undefined || 'sequential' in sheet.rule ? [] : [wholeBench(sheet, of, families)];
        })
        .sort((a, b) => a.number - b.number || a.bench - b.bench);
      return {
        person,
        sheets: benches.map(({ number, bench }) => ({ number, bench })),
        outcomes: benches.flatMap(({ outcomes }) => outcomes),
        criticalMissed: benches.some(({ criticalMissed }) => criticalMissed),
      };
    })
    .filter(({ sheets: some }) => some.length > 0);
}

function wholeBench(sheet: Sheet, tries: readonly Tried[], families: Practice['families']) {
  const bench = tries[0]?.on?.bench ?? 0;
  const found = sheetPlaces(sheet, bench).map(({ place, family }) => {
    const one = tries.find(({ on }) => on?.place === place);
    if (one !== undefined) return one;
    return { passed: false, criticalMissed: (families.get(family)?.critical ?? []).length > 0 };
  });
  return {
    number: sheet.number,
    bench,
    outcomes: found.map(({ passed }) => passed),
    criticalMissed: found.some((one) => one.criticalMissed),
  };
}

/** What a pool shows: the bound's decision, or what keeps the bound from deciding (too few draws) with the interval alone. */
export type PoolResult =
  | { readonly decision: Decision }
  | {
      readonly faults: readonly Fault[];
      readonly n: number;
      readonly held: number;
      readonly interval: Interval;
    };

export function decidePooled({ outcomes, criticalMissed }: Pooled, bound: Bound): PoolResult {
  const rule = { kind: 'bound', ...bound } as const;
  const n = outcomes.length;
  const faults = ruleFaults(rule, n);
  if (faults.length === 0) return { decision: decide(rule, outcomes, criticalMissed) };
  const held = outcomes.filter(Boolean).length;
  return { faults, n, held, interval: clopperPearson(held, n) };
}
