/**
 * Plans that a person would make by hand: bar after bar, the longest piece that still fits first. On bars of one
 * length that is first-fit decreasing.
 */
import type { Job } from './job.ts';
import { type Cut, compareRanks, type Pattern, type Plan, patternOf, rankOf, sizeOf } from './plan.ts';

/** Bars of a plan in the making: how many of each are left, and what is still wanted of each kind. */
export interface Open {
  readonly bars: number[];
  readonly wanted: number[];
}

export function openJob(job: Job): Open {
  return { bars: job.bars.map((b) => b.count), wanted: job.kinds.map((k) => k.count) };
}

/** The longest that fits first, as often as it fits. */
export function greedyPattern(job: Job, wanted: readonly number[], room: number): Pattern {
  const counts = new Array<number>(job.kinds.length).fill(0);
  let left = room;
  job.kinds.forEach(({ size }, kind) => {
    const n = Math.min(wanted[kind] as number, Math.floor(left / size));
    counts[kind] = n;
    left -= n * size;
  });
  return patternOf(counts);
}

/** How often a pattern can be cut from what is wanted. */
export function repeats(pattern: Pattern, wanted: readonly number[]): number {
  let n = Number.POSITIVE_INFINITY;
  for (let k = 0; k < pattern.length; k += 2)
    n = Math.min(n, Math.floor((wanted[pattern[k] as number] as number) / (pattern[k + 1] as number)));
  return n;
}

/** Takes a cut out of what is open. */
export function take(open: Open, { bar, pattern, times }: Cut): void {
  open.bars[bar] = (open.bars[bar] as number) - times;
  for (let k = 0; k < pattern.length; k += 2) {
    const kind = pattern[k] as number;
    open.wanted[kind] = (open.wanted[kind] as number) - times * (pattern[k + 1] as number);
  }
}

/**
 * Fills bars in the order of `order` (places in `job.bars`), each entry to its last bar before the next.
 * @returns null when the bars run out before the pieces do
 */
export function firstFit(job: Job, from: Open, order: readonly number[]): Plan | null {
  const open: Open = { bars: [...from.bars], wanted: [...from.wanted] };
  const plan: Cut[] = [];
  for (const bar of order) {
    while ((open.bars[bar] as number) > 0) {
      const pattern = greedyPattern(job, open.wanted, job.bars[bar]?.room ?? 0);
      if (pattern.length === 0) break;
      const times = Math.min(open.bars[bar] as number, repeats(pattern, open.wanted));
      const cut = { bar, pattern, times };
      take(open, cut);
      plan.push(cut);
    }
  }
  return open.wanted.every((n) => n === 0) ? plan : null;
}

/** Off-cuts first, short before long, and then the stock in every order that begins with another length; the best of them. */
export function byHand(job: Job, from: Open = openJob(job)): Plan | null {
  const places = job.bars.map((_, i) => i);
  const offcuts = places.filter((i) => job.bars[i]?.offcut);
  const stock = places.filter((i) => !job.bars[i]?.offcut).reverse();
  const longFirst = [...offcuts].reverse();
  let best: Plan | null = null;
  for (const first of stock.length === 0 ? [-1] : stock) {
    const rest = stock.filter((i) => i !== first);
    for (const front of offcuts.length > 1 ? [offcuts, longFirst] : [offcuts]) {
      const plan = firstFit(job, from, [...front, ...(first < 0 ? [] : [first]), ...rest]);
      if (plan === null) continue;
      const shorter = shrink(job, from, plan);
      if (best === null || compareRanks(rankOf(shorter, job), rankOf(best, job)) < 0) best = shorter;
    }
  }
  return best;
}

/** Every bar of new stock exchanged for the shortest one that still holds its pieces. */
export function shrink(job: Job, from: Open, plan: Plan): Plan {
  if (job.bars.length < 2) return plan;
  const left = [...from.bars];
  for (const { bar, times } of plan) left[bar] = (left[bar] as number) - times;
  const shorter: Cut[] = [];
  for (const cut of plan) {
    let todo = cut.times;
    const size = sizeOf(cut.pattern, job);
    for (let bar = 0; bar < cut.bar && todo > 0 && job.bars[cut.bar]?.offcut === false; bar++) {
      const times = Math.min(todo, left[bar] as number);
      if (times <= 0 || size > (job.bars[bar]?.room ?? 0)) continue;
      left[bar] = (left[bar] as number) - times;
      left[cut.bar] = (left[cut.bar] as number) + times;
      shorter.push({ ...cut, bar, times });
      todo -= times;
    }
    if (todo > 0) shorter.push({ ...cut, times: todo });
  }
  return shorter;
}
