/**
 * The third aim: the longest single remainder. A bar that leaves r holds pieces of room less r at most; where weights
 * leave that bar too little, no plan of so much stock leaves r. A plan that leaves r is looked for with one more piece of
 * length r, which is thrown away after.
 */
import { dive } from './dive.ts';
import { openJob } from './firstFit.ts';
import type { Job, Kind } from './job.ts';
import { type Least, scaled } from './leastStock.ts';
import { leftOf, type Plan, rankOf } from './plan.ts';
import { Pool } from './pool.ts';
import { Relaxation } from './relaxation.ts';

/** Relaxations to come down to a remainder that weights do not rule out. */
const MOST_ROUNDS = 5;

/**
 * @returns a length in ticks that no remainder of a plan with as little stock is above
 */
export function longestRemainder(
  job: Job,
  first: Least,
  plan: Plan,
  stop: () => boolean,
  better: (plan: Plan) => void,
): number {
  const stock = rankOf(plan, job)[0];
  let bound = longestBound(job, first, plan);
  for (let round = 0; round < MOST_ROUNDS && !stop(); round++) {
    const has = longestOf(job, plan);
    if (bound <= has || bound < job.reusableTicks) return bound;
    const more = withPiece(job, bound);
    const pool = new Pool();
    for (const { bar, pattern } of first.pool.all()) pool.add(bar, pattern);
    const relaxed = Relaxation.of(more, openJob(more), pool, first.pricer);
    relaxed.solve({ stop });
    const next = Math.min(
      bound,
      ...[...scaled(relaxed.prices)]
        .slice(-3)
        .map((w) => boundBy(job, w.slice(0, job.kinds.length), first, stock)),
    );
    if (next < bound) {
      bound = next;
      continue;
    }
    const found = (next: Plan): void => better(withoutPiece(next, job));
    dive({ job: more, stop, goal: () => stock, found, nodes: 30 }, relaxed);
    return bound;
  }
  return bound;
}

function longestOf(job: Job, plan: Plan): number {
  return Math.max(0, ...plan.map((cut) => leftOf(cut, job)));
}

/** By the sizes themselves and by the weights of the first aim. */
function longestBound(job: Job, first: Least, plan: Plan): number {
  const stock = rankOf(plan, job)[0];
  const sizes = job.kinds.map((k) => k.size);
  return Math.min(
    boundBy(job, sizes, first, stock),
    ...(first.bound.weights.length > 0 ? [boundBy(job, first.bound.weights, first, stock)] : []),
  );
}

/** The longest remainder that weights do not rule out, in ticks; 0 when they rule out all that are worth keeping. */
function boundBy(job: Job, weights: readonly number[], { pricer }: Least, stock: number): number {
  const table = pricer.table;
  if (table === undefined) return longestPossible(job);
  const { best } = table.fill(
    job.kinds.map((k) => k.size),
    job.kinds.map((k) => k.count),
    weights,
  );
  const most = job.bars.map((b) => best[b.room] as number);
  const weight = job.kinds.reduce((sum, k, i) => sum + k.count * (weights[i] as number), 0);
  const held =
    heaviestStock(job, most, stock) +
    job.bars.reduce((s, b, i) => s + (b.offcut ? b.count * (most[i] as number) : 0), 0);
  const shortest = Math.min(...job.kinds.map((k) => k.size));
  let longest = 0;
  job.bars.forEach(({ room, ticks }, i) => {
    if (!job.bars[i]?.offcut && ticks > stock) return;
    // All other bars at their heaviest, this one still has to hold so much.
    const needed = weight - held + (most[i] as number);
    let size = shortest;
    while (size <= room && (best[size] as number) < needed) size++;
    if (size > room) return;
    const left = (room - job.kerf - size) * job.grain;
    if (left >= job.reusableTicks) longest = Math.max(longest, left);
  });
  return longest;
}

function longestPossible(job: Job): number {
  return Math.max(...job.bars.map((b) => b.ticks));
}

/** The greatest weight that new stock of no more than a length can hold. */
function heaviestStock(job: Job, most: readonly number[], stock: number): number {
  const bars = job.bars.map((b, i) => ({ ...b, U: most[i] as number })).filter((b) => !b.offcut && b.U > 0);
  bars.sort((a, b) => b.U * a.ticks - a.U * b.ticks);
  let heaviest = 0;
  let looked = 0;
  const visit = (index: number, left: number, held: number): void => {
    heaviest = Math.max(heaviest, held);
    const bar = bars[index];
    if (bar === undefined || held + (left / bar.ticks) * bar.U <= heaviest) return;
    if (++looked > 5000) {
      heaviest = Math.max(heaviest, held + (left / bar.ticks) * bar.U);
      return;
    }
    for (let n = Math.min(bar.count, Math.floor(left / bar.ticks)); n >= 0; n--)
      visit(index + 1, left - n * bar.ticks, held + n * bar.U);
  };
  visit(0, stock, 0);
  return heaviest;
}

/** The job with one more piece, last of its kinds. */
function withPiece(job: Job, ticks: number): Job {
  const piece: Kind = { size: Math.ceil(ticks / job.grain) + job.kerf, count: 1, ticks, pieces: [] };
  return { ...job, kinds: [...job.kinds, piece] };
}

function withoutPiece(plan: Plan, job: Job): Plan {
  const last = job.kinds.length;
  return plan
    .map((cut) => {
      const at = cut.pattern.findIndex((kind, i) => i % 2 === 0 && kind === last);
      return at < 0 ? cut : { ...cut, pattern: cut.pattern.slice(0, at) };
    })
    .filter((cut) => cut.pattern.length > 0);
}
