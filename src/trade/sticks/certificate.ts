/**
 * Whole weights that prove a bound. Each kind of piece weighs u; no bar holds more than its U, found exactly by a
 * table over whole numbers. The bars of a plan must then have U enough for the weight of all pieces, and the cheapest
 * bars that have it are the bound. Weights, U and bars are whole numbers, checked without tolerance; only the search for
 * the cheapest bars reckons ahead in floating numbers, a hair too low: the bound may come out lower, never too high.
 */

import { TICKS_PER_INCH } from '../length.ts';
import type { Job } from './job.ts';
import { divisor } from './job.ts';
import type { Pricer } from './pricing.ts';
import type { Certificate, Weight } from './types.ts';

export interface Bound {
  /** Least new stock in ticks; Infinity when the bars there are cannot hold the pieces at all. */
  readonly ticks: number;
  /** By kind. */
  readonly weights: readonly number[];
  /** By bar. */
  readonly most: readonly number[];
}

export const NOTHING: Bound = { ticks: 0, weights: [], most: [] };

/** The bound that whole weights prove. */
export function boundOf(job: Job, weights: readonly number[], pricer: Pricer): Bound {
  const most = pricer.heaviest(
    job.kinds.map((k) => k.size),
    job.kinds.map((k) => k.count),
    weights,
    job.bars.map((b) => b.room),
  );
  return most === undefined ? NOTHING : { ticks: coverOf(job, weights, most), weights, most };
}

function coverOf(job: Job, weights: readonly number[], most: readonly number[]): number {
  let weight = job.kinds.reduce((sum, { count }, i) => sum + count * (weights[i] as number), 0);
  const stock: Cover[] = [];
  job.bars.forEach(({ offcut, count, ticks }, i) => {
    const U = most[i] as number;
    if (U === 0) return;
    if (offcut) weight -= count * U;
    else stock.push({ U, ticks, count });
  });
  return leastCover(stock, weight);
}

interface Cover {
  readonly U: number;
  readonly ticks: number;
  readonly count: number;
}

/** The least length of bars whose U add up to the weight; Infinity when all together do not. */
function leastCover(bars: readonly Cover[], weight: number): number {
  if (weight <= 0) return 0;
  const cheapFirst = [...bars].sort((a, b) => a.ticks * b.U - b.ticks * a.U || b.ticks - a.ticks);
  const step = cheapFirst.reduce((g, b) => divisor(g, b.ticks), 0);
  let least = Number.POSITIVE_INFINITY;
  let looked = 0;
  const visit = (index: number, left: number, cost: number): void => {
    if (left <= 0) {
      least = Math.min(least, cost);
      return;
    }
    const bar = cheapFirst[index];
    if (bar === undefined) return;
    // Never cheaper than at this bar's price for its U: those after it give less for their length.
    const atLeast = cost + step * Math.ceil((left / bar.U) * (bar.ticks / step) - TOO_LOW);
    if (atLeast >= least || looked > MOST_LOOKED) {
      if (looked > MOST_LOOKED) least = Math.min(least, atLeast);
      return;
    }
    looked++;
    for (let n = Math.min(bar.count, Math.ceil(left / bar.U)); n >= 0; n--)
      visit(index + 1, left - n * bar.U, cost + n * bar.ticks);
  };
  visit(0, weight, 0);
  return least;
}
const MOST_LOOKED = 20_000;
/** Far above what a quotient of floating numbers loses, far below one bar's grain. */
const TOO_LOW = 1e-6;

/** The certificate as it is handed out. */
export function certificateOf(job: Job, { ticks, weights, most }: Bound): Certificate {
  const grid = job.grain / TICKS_PER_INCH;
  const listed: Weight[] = job.kinds.map(({ size }, i) => ({
    length: size - job.kerf,
    u: weights[i] as number,
  }));
  if (!job.several)
    return { grid, weights: listed, U: most[0] as number, bound: ticks / (job.bars[0]?.ticks ?? 1) };
  const perStock = new Map(job.bars.map(({ length }, i) => [length, most[i] as number]));
  return {
    grid,
    weights: listed,
    perStock: [...perStock].map(([length, U]) => ({ length, U })),
    bound: ticks / TICKS_PER_INCH,
  };
}
