/**
 * A plan in whole bars from the fractions of the linear programme: whole parts are kept, then the pattern that is
 * nearest to whole, and what is left is relaxed again. Where the first choice leads nowhere the next is tried, a few
 * times near the top (limited discrepancy search).
 */
import { byHand, type Open, repeats, take } from './firstFit.ts';
import type { Job } from './job.ts';
import type { Cut, Plan } from './plan.ts';
import type { Pricer } from './pricing.ts';
import { type Filled, longestStock, type Pool, type Relaxed, relax } from './relax.ts';

export interface Diving {
  readonly job: Job;
  readonly pool: Pool;
  readonly pricer: Pricer;
  readonly stop: () => boolean;
  /** Told every whole plan that meets the goal. */
  readonly found: (plan: Plan) => void;
  /** New stock in ticks that a plan may take at most to be worth finding. */
  readonly goal: () => number;
  readonly chance?: (() => number) | undefined;
  /** What a tick of pieces cut from an off-cut is worth, the longest stock being 1. */
  readonly fromOffcuts?: number | undefined;
  /** Linear programmes that may still be solved. */
  nodes: number;
}

/**
 * @param kept  cuts that are made already; `open` is what is left after them
 * @param forbidden  patterns that have been tried from here on
 * @returns whether a plan that meets the goal was found
 */
export function dive(
  diving: Diving,
  open: Open,
  kept: Plan = [],
  forbidden: ReadonlySet<string> = new Set(),
  known?: readonly Filled[],
  relaxed?: Relaxed,
): boolean {
  const { job, pool, pricer, stop, chance, fromOffcuts } = diving;
  const tried = new Set(forbidden);
  const own: Open = { bars: [...open.bars], wanted: [...open.wanted] };
  const cuts: Cut[] = [...kept];
  let solved = relaxed;
  let near = known;
  for (;;) {
    if (--diving.nodes < 0) return false;
    solved ??= relax(
      job,
      own,
      pool,
      pricer,
      { stop, forbidden: tried, chance, fromOffcuts, rough: true },
      near,
    );
    near = solved.near;
    if (stop() || !within(diving, cuts, solved)) return false;
    const whole = keepWhole(own, cuts, solved);
    if (whole && finish(diving, own, cuts)) return true;
    const next = choose(diving, own, solved, tried);
    if (next === undefined) {
      // All that was in use is cut as often as it can be: relax what is left, if anything was.
      if (!whole || own.wanted.every((n) => n === 0)) return false;
      solved = undefined;
      continue;
    }
    const cut: Cut = { bar: next.bar, pattern: next.pattern, times: 1 };
    const branch: Open = { bars: [...own.bars], wanted: [...own.wanted] };
    take(branch, cut);
    if (finish(diving, branch, [...cuts, cut]) || dive(diving, branch, [...cuts, cut], tried, near))
      return true;
    tried.add(next.name);
    solved = undefined;
  }
}

function stockOf(job: Job, cuts: readonly Cut[]): number {
  return cuts.reduce(
    (sum, { bar, times }) => sum + (job.bars[bar]?.offcut ? 0 : times * (job.bars[bar]?.ticks ?? 0)),
    0,
  );
}

/** Whether what is kept and what is left at least may still meet the goal. */
function within({ job, goal }: Diving, cuts: readonly Cut[], { cost }: Relaxed): boolean {
  const longest = longestStock(job);
  return stockOf(job, cuts) + cost * longest <= goal() + longest * 1e-3;
}

/** Keeps the whole part of every pattern in use. @returns whether there was any */
function keepWhole(open: Open, cuts: Cut[], { used }: Relaxed): boolean {
  let kept = false;
  for (const { bar, pattern, amount } of used) {
    const times = Math.min(
      Math.floor(amount + 1e-6),
      repeats(pattern, open.wanted),
      open.bars[bar] as number,
    );
    if (times <= 0) continue;
    const cut = { bar, pattern, times };
    take(open, cut);
    cuts.push(cut);
    kept = true;
  }
  return kept;
}

/** The pattern whose fraction is nearest to a whole, or with chance one of those near it. */
function choose(
  { chance }: Diving,
  open: Open,
  { used }: Relaxed,
  forbidden: ReadonlySet<string>,
): Filled | undefined {
  let best = -1;
  let chosen: Filled | undefined;
  for (const one of used) {
    if (
      forbidden.has(one.name) ||
      repeats(one.pattern, open.wanted) < 1 ||
      (open.bars[one.bar] as number) < 1
    )
      continue;
    const part = one.amount - Math.floor(one.amount + 1e-6);
    const worth = part + (chance === undefined ? 0 : 0.3 * chance());
    if (part > 1e-6 && worth > best) {
      best = worth;
      chosen = one;
    }
  }
  return chosen;
}

/** Fills the rest by hand and hands the plan on. @returns whether it meets the goal */
function finish({ job, found, goal }: Diving, open: Open, cuts: readonly Cut[]): boolean {
  const rest = open.wanted.every((n) => n === 0) ? [] : byHand(job, open);
  if (rest === null) return false;
  const plan = [...cuts, ...rest];
  if (stockOf(job, plan) > goal()) return false;
  found(plan);
  return true;
}
