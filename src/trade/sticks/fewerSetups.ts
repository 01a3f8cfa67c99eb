/** Fewer ways of cutting: bars are cut otherwise, two at a time, wherever no earlier aim is worse for it. */
import type { Job } from './job.ts';
import { type Cut, compareRanks, type Pattern, type Plan, rankOf, sizeOf, tidy } from './plan.ts';

/** Pairs of bars looked at, at most. */
const MOST_TRIED = 5000;

export function fewerSetups(job: Job, start: Plan, stop: () => boolean): Plan {
  let plan = tidy(start);
  let tried = 0;
  for (let again = true; again; ) {
    again = false;
    const times = timesOf(plan);
    search: for (let i = 0; i < plan.length; i++) {
      for (let j = i; j < plan.length; j++) {
        for (const pair of otherwise(job, plan, i, j)) {
          if (++tried > MOST_TRIED || (tried % 64 === 0 && stop())) return plan;
          if (!fewer(times, [plan[i] as Cut, plan[j] as Cut], pair)) continue;
          const next = tidy([...without(plan, i, j, pair.times), ...pair.cuts]);
          if (compareRanks(rankOf(next, job), rankOf(plan, job)) >= 0) continue;
          plan = next;
          again = true;
          break search;
        }
      }
    }
  }
  return plan;
}

/** How many bars are cut by each pattern. */
function timesOf(plan: Plan): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const cut of plan) times.set(cut.pattern.join(), cut.times + (times.get(cut.pattern.join()) ?? 0));
  return times;
}

/** Whether set-ups become fewer, or as many with fewer stop settings, when a pair of bars is cut otherwise. */
function fewer(
  times: ReadonlyMap<string, number>,
  before: readonly Cut[],
  { times: n, cuts }: Pair,
): boolean {
  const change = new Map<string, { by: number; stops: number }>();
  const add = ({ pattern }: Cut, by: number): void => {
    const name = pattern.join();
    change.set(name, { by: by + (change.get(name)?.by ?? 0), stops: pattern.length / 2 });
  };
  for (const cut of before) add(cut, -n);
  for (const cut of cuts) add(cut, n);
  let [setups, stops] = [0, 0];
  for (const [name, { by, stops: own }] of change) {
    const was = times.get(name) ?? 0;
    const more = (was + by > 0 ? 1 : 0) - (was > 0 ? 1 : 0);
    setups += more;
    stops += more * own;
  }
  return setups < 0 || (setups === 0 && stops < 0);
}

interface Pair {
  /** How often both cuts are replaced. */
  readonly times: number;
  readonly cuts: readonly Cut[];
}

/** Other ways to cut the pieces of two bars: by a pattern that is used already and what is left, or twice alike. */
function* otherwise(job: Job, plan: Plan, i: number, j: number): Generator<Pair> {
  const [a, b] = [plan[i] as Cut, plan[j] as Cut];
  const times = i === j ? Math.floor(a.times / 2) : Math.min(a.times, b.times);
  if (times === 0) return;
  const both = together(a.pattern, b.pattern);
  const half = halved(both);
  if (half !== undefined && holds(job, a.bar, half) && holds(job, b.bar, half))
    yield { times, cuts: [a.bar, b.bar].map((bar) => ({ bar, pattern: half, times })) };
  for (const { pattern } of plan) {
    const rest = less(both, pattern);
    if (rest === undefined) continue;
    for (const [one, other] of [
      [a.bar, b.bar],
      [b.bar, a.bar],
    ] as const) {
      if (!holds(job, one, pattern) || (rest.length > 0 && !holds(job, other, rest))) continue;
      const cuts = [
        { bar: one, pattern, times },
        ...(rest.length > 0 ? [{ bar: other, pattern: rest, times }] : []),
      ];
      yield { times, cuts };
      // One pair alone may be cut otherwise too: only the odd bar changes then.
      if (times > 1) yield { times: 1, cuts: cuts.map((c) => ({ ...c, times: 1 })) };
    }
  }
}

function holds(job: Job, bar: number, pattern: Pattern): boolean {
  return sizeOf(pattern, job) <= (job.bars[bar]?.room ?? 0);
}

function without(plan: Plan, i: number, j: number, times: number): Plan {
  return plan.map((cut, k) => ({ ...cut, times: cut.times - (k === i ? times : 0) - (k === j ? times : 0) }));
}

function counted(pattern: Pattern): Map<number, number> {
  const counts = new Map<number, number>();
  for (let k = 0; k < pattern.length; k += 2) counts.set(pattern[k] as number, pattern[k + 1] as number);
  return counts;
}

function listed(counts: ReadonlyMap<number, number>): Pattern {
  return [...counts]
    .filter(([, n]) => n > 0)
    .sort(([a], [b]) => a - b)
    .flat();
}

function together(a: Pattern, b: Pattern): Pattern {
  const counts = counted(a);
  for (const [kind, n] of counted(b)) counts.set(kind, n + (counts.get(kind) ?? 0));
  return listed(counts);
}

function less(both: Pattern, pattern: Pattern): Pattern | undefined {
  const counts = counted(both);
  for (const [kind, n] of counted(pattern)) {
    const left = (counts.get(kind) ?? 0) - n;
    if (left < 0) return undefined;
    counts.set(kind, left);
  }
  return listed(counts);
}

function halved(both: Pattern): Pattern | undefined {
  return both.every((n, i) => i % 2 === 0 || n % 2 === 0)
    ? both.map((n, i) => (i % 2 === 0 ? n : n / 2))
    : undefined;
}

/** Set-ups that every plan of so much stock has at least: one, or two where the bars cannot all be cut alike. */
export function leastSetups(job: Job, plan: Plan): number {
  const bars = plan.reduce((n, cut) => n + cut.times, 0);
  const fixed = job.bars.length === 1;
  return fixed && job.kinds.some((k) => k.count % bars !== 0) ? 2 : 1;
}
