/** What a plan is, and which of two is better. */
import type { Job } from './job.ts';

/** How often each kind is on one bar: kind, times, kind, times …, kinds ascending. Its text is its name. */
export type Pattern = readonly number[];

/** So many bars of one entry of `job.bars`, each cut by the same pattern. */
export interface Cut {
  readonly bar: number;
  readonly pattern: Pattern;
  readonly times: number;
}

export type Plan = readonly Cut[];

/**
 * The five aims as numbers of which less is better, the first that differs decides: new stock, pieces from off-cuts
 * (negative), longest reusable remainder (negative), set-ups, stop settings. Lengths in ticks.
 */
export type Rank = readonly [number, number, number, number, number];

/** A pattern from the count of every kind. */
export function patternOf(counts: ArrayLike<number>): Pattern {
  const pattern: number[] = [];
  for (let i = 0; i < counts.length; i++) {
    const n = counts[i] as number;
    if (n > 0) pattern.push(i, n);
  }
  return pattern;
}

/** Sum over a pattern of times × value of the kind. */
function sumOver(pattern: Pattern, value: (kind: number) => number): number {
  let sum = 0;
  for (let k = 0; k < pattern.length; k += 2) sum += (pattern[k + 1] as number) * value(pattern[k] as number);
  return sum;
}

export function sizeOf(pattern: Pattern, job: Job): number {
  return sumOver(pattern, (kind) => job.kinds[kind]?.size ?? 0);
}

/** Length of the pieces alone, in ticks. */
export function piecesOf(pattern: Pattern, job: Job): number {
  return sumOver(pattern, (kind) => job.kinds[kind]?.ticks ?? 0);
}

/** What a cut leaves of its bar, in ticks: a kerf for each piece, but never below 0. */
export function leftOf({ bar, pattern }: Pick<Cut, 'bar' | 'pattern'>, job: Job): number {
  const given = job.bars[bar]?.ticks ?? 0;
  return Math.max(0, given - sumOver(pattern, (kind) => (job.kinds[kind]?.ticks ?? 0) + job.kerfTicks));
}

export function rankOf(plan: Plan, job: Job): Rank {
  let [stock, used, longest, stops] = [0, 0, 0, 0];
  const setups = new Set<string>();
  for (const cut of plan) {
    const bar = job.bars[cut.bar];
    if (bar === undefined) continue;
    if (bar.offcut) used += cut.times * piecesOf(cut.pattern, job);
    else stock += cut.times * bar.ticks;
    const left = leftOf(cut, job);
    if (left >= job.reusableTicks && left > longest) longest = left;
    const name = cut.pattern.join();
    if (!setups.has(name)) stops += cut.pattern.length / 2;
    setups.add(name);
  }
  return [stock, 0 - used, 0 - longest, setups.size, stops];
}

/** Below 0 when `a` is the better one. */
export function compareRanks(a: Rank, b: Rank): number {
  for (let i = 0; i < a.length; i++) {
    const d = (a[i] as number) - (b[i] as number);
    if (d !== 0) return d;
  }
  return 0;
}

/** Cuts alike as one, off-cuts first, then new stock, the busiest pattern first. */
export function tidy(plan: Plan): Plan {
  const merged = new Map<string, Cut>();
  for (const cut of plan) {
    if (cut.times === 0) continue;
    const name = `${cut.bar}:${cut.pattern.join()}`;
    merged.set(name, { ...cut, times: cut.times + (merged.get(name)?.times ?? 0) });
  }
  return [...merged.values()].sort(
    (a, b) => a.bar - b.bar || b.times - a.times || compareLists(a.pattern, b.pattern),
  );
}

function compareLists(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    const d = (a[i] as number) - (b[i] as number);
    if (d !== 0) return d;
  }
  return b.length - a.length;
}
