/** The first aim: the least new stock, and whole weights that prove it. */
import { type Bound, boundOf, NOTHING } from './certificate.ts';
import { chanceOf } from './chance.ts';
import { type Diving, dive } from './dive.ts';
import { byHand, openJob } from './firstFit.ts';
import { divisor, type Job } from './job.ts';
import { knownWeights } from './martello.ts';
import { compareRanks, type Plan, rankOf } from './plan.ts';
import { Pool } from './pool.ts';
import { Pricer } from './pricing.ts';
import { longestStock, Relaxation } from './relaxation.ts';

export interface Least {
  /** The best plan found; null when the bars ran out in every plan tried. */
  readonly plan: Plan | null;
  readonly bound: Bound;
  /** The rule of thumb alone. */
  readonly hand: Plan | null;
  readonly pool: Pool;
  readonly pricer: Pricer;
}

export interface Search {
  readonly stop: () => boolean;
  readonly found: (plan: Plan, bound: Bound) => void;
}

/** Numbers gone through at most, when nothing else ends the search: about half a second's worth. */
const MOST_WORK = 4e8;

/**
 * @param forEver  looks on until it is stopped; else a fixed number of times
 * @param best  a plan that is known to need least, so that only the proof is looked for
 */
export function leastStock(job: Job, { stop: asked, found }: Search, forEver: boolean, best?: Plan): Least {
  const pricer = new Pricer(Math.max(...job.bars.map((b) => b.room), 1));
  const stop = (): boolean => asked() || (!forEver && pricer.work > MOST_WORK);
  const pool = new Pool();
  let bound: Bound = NOTHING;
  const raise = (weights: readonly number[]): void => {
    const next = boundOf(job, weights, pricer);
    if (next.ticks > bound.ticks || bound.weights.length === 0) bound = next;
  };
  for (const weights of knownWeights(job)) raise(weights);
  const hand = byHand(job);
  let plan = best ?? hand;
  const better = (next: Plan): void => {
    if (plan !== null && compareRanks(rankOf(next, job), rankOf(plan, job)) >= 0) return;
    plan = next;
    found(plan, bound);
  };
  const stock = (): number => (plan === null ? Number.POSITIVE_INFINITY : rankOf(plan, job)[0]);
  const done = (): boolean => stock() <= bound.ticks || bound.ticks === Number.POSITIVE_INFINITY;
  const answer = (): Least => ({ plan, bound, hand, pool, pricer });
  if (plan !== null) found(plan, bound);
  if (done()) return answer();

  for (const { bar, pattern } of plan ?? []) pool.add(bar, pattern);
  const root = Relaxation.of(job, openJob(job), pool, pricer);
  root.solve({ stop, roundsUp: true });
  if (root.cost === Number.POSITIVE_INFINITY) {
    const short = Relaxation.of(job, openJob(job), pool, pricer, SHORTAGE);
    short.solve({ stop });
    for (const weights of scaled(short.prices)) raise(weights);
    return answer();
  }
  for (const weights of scaled(root.prices)) {
    raise(weights);
    if (bound.ticks >= root.cost * longestStock(job) - 1e-6) break;
  }
  if (plan !== null) found(plan, bound);
  const tooLittle = done() ? undefined : choicesBelow(job, stock());
  if (tooLittle !== undefined && (best !== undefined || job.bars.filter((b) => !b.offcut).length > 1)) {
    const short = Relaxation.of(job, openJob(job), pool, pricer, { ...SHORTAGE, choices: tooLittle });
    short.solve({ stop });
    for (const weights of scaled(short.prices)) {
      raise(weights);
      if (done()) break;
    }
  }
  if (best !== undefined) return answer();
  const step = job.bars.filter((b) => !b.offcut).reduce((g, b) => divisor(g, b.ticks), 0);
  const goal = (): number => Math.max(bound.ticks, stock() - step);
  const near = root.near();
  for (let turn = 0; !done() && !stop() && (forEver || turn < MOST_TURNS); turn++) {
    const chance = turn === 0 ? undefined : chanceOf(turn);
    const diving: Diving = { job, stop, found: better, goal, nodes: NODES * turnOf(turn), chance };
    const from = turn === 0 ? root.clone() : Relaxation.of(job, openJob(job), pool, pricer, { chance }, near);
    dive(diving, from);
  }
  return answer();
}

/** Every choice of new stock that is shorter than a plan's and as much as can be, by the count of each bar; undefined when they are many. */
export function choicesBelow(job: Job, stock: number): readonly (readonly number[])[] | undefined {
  const found: number[][] = [];
  const counts = job.bars.map(() => 0);
  const visit = (bar: number, left: number): boolean => {
    const entry = job.bars[bar];
    if (entry === undefined) {
      const more = job.bars.some((b, i) => !b.offcut && b.ticks <= left && (counts[i] as number) < b.count);
      if (!more) found.push([...counts]);
      return found.length <= MOST_CHOICES;
    }
    const most = entry.offcut ? 0 : Math.min(entry.count, Math.floor(left / entry.ticks));
    for (let n = most; n >= 0; n--) {
      counts[bar] = n;
      if (!visit(bar + 1, left - n * entry.ticks)) return false;
    }
    counts[bar] = 0;
    return true;
  };
  return visit(0, stock - 1) ? found : undefined;
}
const MOST_CHOICES = 400;

/** Prices as whole weights, coarse before fine. */
export function* scaled(prices: readonly number[]): Generator<readonly number[]> {
  const dearest = Math.max(...prices, 1e-9);
  for (const scale of [1, 12, 420, 720_720, 1e8]) {
    yield prices.map((price) => Math.floor((price / dearest) * scale + 1e-7));
  }
}

/** Bars for nothing, and a price on what they do not hold: the prices then show that there are too few. */
const SHORTAGE = { free: true, open: 1 };
const NODES = 40;
const MOST_TURNS = 1000;

/** 1, 1, 2, 1, 1, 2, 4, 1 …: most searches short, a few long (Luby, Sinclair, Zuckerman, 1993). */
function turnOf(turn: number): number {
  let n = turn + 1;
  for (;;) {
    const power = 2 ** Math.ceil(Math.log2(n + 1));
    if (n === power - 1) return power / 2;
    n -= power / 2 - 1;
  }
}
