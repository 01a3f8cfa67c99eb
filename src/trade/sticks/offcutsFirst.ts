/** The second aim: as much as can be from off-cuts, while new stock stays as little as it is. */
import { dive } from './dive.ts';
import { byHand, type Open, openJob, repeats, take } from './firstFit.ts';
import type { Job } from './job.ts';
import { choicesBelow, type Least } from './leastStock.ts';
import { type Cut, type Plan, piecesOf, rankOf } from './plan.ts';
import { longestStock, Relaxation } from './relaxation.ts';

/** Worth of a tick from an off-cut: all of them together stay far below one bar. */
function worthOf(job: Job): number {
  const all = job.kinds.reduce((sum, k) => sum + k.count * k.ticks, 1);
  return 0.05 / Math.max(all, longestStock(job));
}

/** A length in ticks that no plan with as little new stock cuts more than from off-cuts. */
export function mostFromOffcuts(
  job: Job,
  { pool, pricer, bound }: Least,
  plan: Plan,
  stop: () => boolean,
): number {
  const offcuts = job.bars.filter((b) => b.offcut);
  const all = job.kinds.reduce((sum, k) => sum + k.count * k.ticks, 0);
  if (pricer.table === undefined) return all;
  const { best } = pricer.table.fill(
    job.kinds.map((k) => k.size),
    job.kinds.map((k) => k.count),
    job.kinds.map((k) => k.ticks),
  );
  const filled = offcuts.reduce((sum, b) => sum + b.count * (best[b.room] as number), 0);
  const most = Math.min(all, filled);
  if (-rankOf(plan, job)[1] >= most || bound.ticks === 0) return most;
  const stock = rankOf(plan, job)[0];
  const choices = choicesBelow(job, stock + 1);
  if (choices === undefined) return most;
  // A tick is worth so little here only to keep the numbers near 1.
  const fromOffcuts = 1 / longestStock(job);
  const mixture = Relaxation.of(job, openJob(job), pool, pricer, {
    free: true,
    exactly: true,
    choices,
    fromOffcuts,
  });
  const finished = mixture.solve({ stop });
  const { cost } = mixture;
  if (!finished || cost === Number.POSITIVE_INFINITY) return most;
  return Math.min(most, Math.floor(-cost / fromOffcuts / job.grain + 1e-4) * job.grain);
}

/** Plans that take more from off-cuts: filled to the most one after another, or as the linear programme has it. */
export function fromOffcutsFirst(
  job: Job,
  first: Least,
  plan: Plan,
  stop: () => boolean,
  better: (plan: Plan) => void,
): void {
  const stock = rankOf(plan, job)[0];
  for (const order of orders(job)) {
    const open = openJob(job);
    const cuts = fillInOrder(job, first, open, order);
    if (finish(job, first, open, cuts, stock, stop, better)) return;
  }
  const fromOffcuts = worthOf(job);
  const own = Relaxation.of(job, openJob(job), first.pool, first.pricer, { fromOffcuts });
  dive({ job, stop, goal: () => stock, found: better, nodes: 40 }, own);
}

function orders(job: Job): readonly (readonly number[])[] {
  const offcuts = job.bars.map((_, i) => i).filter((i) => job.bars[i]?.offcut);
  return offcuts.length > 1 ? [offcuts, [...offcuts].reverse()] : [offcuts];
}

/** Every off-cut filled with the most length of what is left. */
function fillInOrder(job: Job, { pricer }: Least, open: Open, order: readonly number[]): Cut[] {
  const cuts: Cut[] = [];
  for (const bar of order) {
    while ((open.bars[bar] as number) > 0 && pricer.table !== undefined) {
      const room = job.bars[bar]?.room ?? 0;
      const { filling } = pricer.table.fill(
        job.kinds.map((k) => k.size),
        open.wanted,
        job.kinds.map((k) => k.ticks),
        room,
      );
      const pattern = filling(room);
      if (pattern.length === 0 || piecesOf(pattern, job) === 0) break;
      const times = Math.min(open.bars[bar] as number, repeats(pattern, open.wanted));
      const cut = { bar, pattern, times };
      take(open, cut);
      cuts.push(cut);
    }
  }
  return cuts;
}

function finish(
  job: Job,
  first: Least,
  open: Open,
  cuts: readonly Cut[],
  stock: number,
  stop: () => boolean,
  better: (plan: Plan) => void,
): boolean {
  const bars = open.bars.map((n, i) => (job.bars[i]?.offcut ? 0 : n));
  const rest = { bars, wanted: open.wanted };
  const hand = open.wanted.every((n) => n === 0) ? [] : byHand(job, rest);
  const whole = hand === null ? null : [...cuts, ...hand];
  if (whole !== null && rankOf(whole, job)[0] <= stock) {
    better(whole);
    return true;
  }
  const own = Relaxation.of(job, rest, first.pool, first.pricer);
  return dive({ job, stop, goal: () => stock, found: better, nodes: 15 }, own, cuts);
}
