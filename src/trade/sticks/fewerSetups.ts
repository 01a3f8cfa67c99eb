/** Fewer ways of cutting: bars are cut otherwise, two at a time, wherever no earlier aim is worse for it. */
import type { Job } from './job.ts';
import { type Cut, compareRanks, type Pattern, type Plan, patternOf, rankOf, sizeOf, tidy } from './plan.ts';

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
  const room = (bar: number): number => job.bars[bar]?.room ?? 0;
  const size = sizeOf(a.pattern, job) + sizeOf(b.pattern, job);
  const both = new Int32Array(job.kinds.length);
  add(both, a.pattern, 1);
  add(both, b.pattern, 1);
  if (both.every((n) => n % 2 === 0) && size / 2 <= Math.min(room(a.bar), room(b.bar))) {
    const half = patternOf(both.map((n) => n / 2));
    yield { times, cuts: [a.bar, b.bar].map((bar) => ({ bar, pattern: half, times })) };
  }
  for (const { pattern } of plan) {
    if (pattern === a.pattern || pattern === b.pattern || !holds(both, pattern)) continue;
    const own = sizeOf(pattern, job);
    const rest = remaining(both, pattern);
    for (const [one, other] of a.bar === b.bar
      ? [[a.bar, b.bar]]
      : [
          [a.bar, b.bar],
          [b.bar, a.bar],
        ]) {
      if (one === undefined || other === undefined || own > room(one) || size - own > room(other)) continue;
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

function without(plan: Plan, i: number, j: number, times: number): Plan {
  return plan.map((cut, k) => ({ ...cut, times: cut.times - (k === i ? times : 0) - (k === j ? times : 0) }));
}

function add(counts: Int32Array, pattern: Pattern, by: 1 | -1): void {
  for (let k = 0; k < pattern.length; k += 2) {
    const kind = pattern[k] as number;
    counts[kind] = (counts[kind] as number) + by * (pattern[k + 1] as number);
  }
}

function holds(counts: Int32Array, pattern: Pattern): boolean {
  for (let k = 0; k < pattern.length; k += 2)
    if ((counts[pattern[k] as number] as number) < (pattern[k + 1] as number)) return false;
  return true;
}

function remaining(both: Int32Array, pattern: Pattern): Pattern {
  const left = both.slice();
  add(left, pattern, -1);
  return patternOf(left);
}

/** Set-ups that every plan of so much stock has at least: one, or two where the bars cannot all be cut alike. */
export function leastSetups(job: Job, plan: Plan): number {
  const bars = plan.reduce((n, cut) => n + cut.times, 0);
  const fixed = job.bars.length === 1;
  return fixed && job.kinds.some((k) => k.count % bars !== 0) ? 2 : 1;
}
