/**
 * The aims after the first, for jobs too large to look through: better plans are looked for aim by aim, and an aim is
 * called proven only where a bound shows that it cannot be met better while those before it are kept.
 */

import { fewerSetups, leastSetups } from './fewerSetups.ts';
import type { Job } from './job.ts';
import type { Least } from './leastStock.ts';
import { longestRemainder } from './longestRemainder.ts';
import { fromOffcutsFirst, mostFromOffcuts } from './offcutsFirst.ts';
import { compareRanks, type Plan, rankOf } from './plan.ts';

export interface Later {
  readonly plan: Plan;
  /** Aims proven one after the other, the first among them. */
  readonly levels: number;
}

/** Numbers gone through at most for each of the second and the third aim. */
const MOST_WORK = 1e7;

export function laterAims(job: Job, first: Least, start: Plan, asked: () => boolean): Later {
  let plan = start;
  const better = (next: Plan | undefined): void => {
    if (next !== undefined && compareRanks(rankOf(next, job), rankOf(plan, job)) < 0) plan = next;
  };
  const proven = rankOf(start, job)[0] === first.bound.ticks;
  const { pricer } = first;
  const limited = (): (() => boolean) => {
    const most = pricer.work + MOST_WORK;
    return () => asked() || pricer.work > most;
  };
  let levels = 1;

  const offcuts = job.bars.some((b) => b.offcut);
  if (offcuts && proven && !job.rounded) {
    const most = mostFromOffcuts(job, first, plan, limited());
    if (-rankOf(plan, job)[1] < most) fromOffcutsFirst(job, first, plan, limited(), better);
    if (-rankOf(plan, job)[1] >= most) levels = 2;
  } else if (!offcuts) levels = 2;

  const settled = levels === 2 && proven && !job.rounded;
  if (proven && !job.rounded) {
    const longest = longestRemainder(job, first, plan, limited(), better);
    if (settled && -rankOf(plan, job)[2] >= longest) levels = 3;
  }
  better(fewerSetups(job, plan, asked));
  const [, , , setups, stops] = rankOf(plan, job);
  if (levels === 3 && setups <= leastSetups(job, plan)) {
    levels = 4;
    if (stops <= job.kinds.length) levels = 5;
  }
  return { plan, levels };
}
