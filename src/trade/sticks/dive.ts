/**
 * A plan in whole bars from the fractions of the linear programme: whole parts are kept, then the pattern that is
 * nearest to whole, and what is left is relaxed again. Where the first choice leads nowhere the next is tried, a few
 * times near the top (limited discrepancy search).
 */
import { byHand, type Open, repeats } from './firstFit.ts';
import type { Job } from './job.ts';
import type { Cut, Plan } from './plan.ts';
import type { Filled } from './pool.ts';
import { longestStock, type Relaxation } from './relaxation.ts';

export interface Diving {
  readonly job: Job;
  readonly stop: () => boolean;
  /** Told every whole plan that meets the goal. */
  readonly found: (plan: Plan) => void;
  /** New stock in ticks that a plan may take at most to be worth finding. */
  readonly goal: () => number;
  readonly chance?: (() => number) | undefined;
  /** Linear programmes that may still be solved. */
  nodes: number;
}

/**
 * @param own  what is open after `kept`; it is changed
 * @param kept  cuts that are made already
 * @returns whether a plan that meets the goal was found
 */
export function dive(diving: Diving, own: Relaxation, kept: Plan = []): boolean {
  const { stop } = diving;
  const cuts: Cut[] = [...kept];
  for (;;) {
    if (--diving.nodes < 0) return false;
    own.solve({ stop, rough: true });
    if (stop() || !within(diving, cuts, own.cost)) return false;
    const used = own.used();
    const whole = keepWhole(own, cuts, used);
    if (whole && finish(diving, own.open, cuts)) return true;
    const next = choose(diving, own, used);
    if (next === undefined) {
      // All that was in use is cut as often as it can be: relax what is left, if anything was.
      if (!whole || own.open.wanted.every((n) => n === 0)) return false;
      continue;
    }
    const cut: Cut = { bar: next.bar, pattern: next.pattern, times: 1 };
    const branch = own.clone();
    branch.take(cut);
    if (finish(diving, branch.open, [...cuts, cut]) || dive(diving, branch, [...cuts, cut])) return true;
    own.forbid(next);
  }
}

function stockOf(job: Job, cuts: readonly Cut[]): number {
  return cuts.reduce(
    (sum, { bar, times }) => sum + (job.bars[bar]?.offcut ? 0 : times * (job.bars[bar]?.ticks ?? 0)),
    0,
  );
}

/** Whether what is kept and what is left at least may still meet the goal. */
function within({ job, goal }: Diving, cuts: readonly Cut[], cost: number): boolean {
  const longest = longestStock(job);
  return stockOf(job, cuts) + cost * longest <= goal() + longest * 1e-3;
}

type Used = ReturnType<Relaxation['used']>;

/** Keeps the whole part of every pattern in use. @returns whether there was any */
function keepWhole(own: Relaxation, cuts: Cut[], used: Used): boolean {
  let kept = false;
  for (const { bar, pattern, amount } of used) {
    const most = Math.min(repeats(pattern, own.open.wanted), own.open.bars[bar] as number);
    const times = Math.min(Math.floor(amount + 1e-6), most);
    if (times <= 0) continue;
    const cut = { bar, pattern, times };
    own.take(cut);
    cuts.push(cut);
    kept = true;
  }
  return kept;
}

/** The pattern whose fraction is nearest to a whole, or with chance one of those near it. */
function choose({ chance }: Diving, { open }: Relaxation, used: Used): Filled | undefined {
  let best = -1;
  let chosen: Filled | undefined;
  for (const one of used) {
    if (one.bar < 0 || repeats(one.pattern, open.wanted) < 1 || (open.bars[one.bar] as number) < 1) continue;
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
