/**
 * The best plan of a small job by looking at all of them: every aim in its order, exactly. What is still to be cut and
 * which bars are left is a state; the longest piece still to be cut must lie on some bar, so a state goes on by each
 * bar and each pattern that holds it. Stock and off-cuts add up over the bars and the longest remainder is the greatest
 * of them, so the first three aims are found state by state; set-ups do not add up, and the last two are found by going
 * through the plans that are best so far.
 */
import type { Job } from './job.ts';
import { type Cut, leftOf, type Pattern, type Plan } from './plan.ts';
import { type Layout, type Listed, layoutOf, patternsOf } from './states.ts';

/** States, patterns and steps that a job may have to be called small. */
export interface Size {
  readonly states: number;
  readonly patterns: number;
  readonly steps: number;
}

export interface Exact {
  readonly plan: Plan;
  /** Whether the last two aims were gone through to the end. */
  readonly whole: boolean;
}

/** @returns undefined when the job is not small; a plan of null when the bars do not hold the pieces */
export function bestOfAll(job: Job, size: Size, stop: () => boolean): Exact | null | undefined {
  const search = Search.of(job, size, stop);
  return search?.run();
}

class TooLong extends Error {}

class Search {
  readonly #job: Job;
  readonly #stop: () => boolean;
  readonly #most: number;
  #steps = 0;
  /** Patterns by their first kind. */
  readonly #patterns: readonly (readonly Listed[])[];
  /** Bars of an entry that are ever used, and their strides in the number of a state; 0 where there is no end of them. */
  readonly #barCounts: readonly number[];
  readonly #barStrides: readonly number[];
  readonly #cost: Float64Array;
  readonly #longest: Float64Array;
  /** Makes new stock outweigh everything that is taken from off-cuts. */
  readonly #weight: number;

  private constructor(
    job: Job,
    stop: () => boolean,
    most: number,
    patterns: readonly (readonly Listed[])[],
    layout: Layout,
  ) {
    this.#job = job;
    this.#stop = stop;
    this.#most = most;
    this.#patterns = patterns;
    this.#barCounts = layout.barCounts;
    this.#barStrides = layout.barStrides;
    this.#cost = new Float64Array(layout.states).fill(Number.NaN);
    this.#longest = new Float64Array(layout.states).fill(Number.NaN);
    this.#weight = 1 + job.kinds.reduce((sum, k) => sum + k.count * k.ticks, 0);
  }

  static of(job: Job, size: Size, stop: () => boolean): Search | undefined {
    const layout = layoutOf(job, size.states);
    if (layout === undefined) return undefined;
    const patterns = patternsOf(job, layout.strides, size.patterns);
    return patterns === undefined ? undefined : new Search(job, stop, size.steps, patterns, layout);
  }

  run(): Exact | null | undefined {
    const all = this.#cost.length - 1;
    const wanted = this.#job.kinds.map((k) => k.count);
    try {
      if (this.#costOf(all, wanted, 0) === Number.POSITIVE_INFINITY) return null;
      this.#longestOf(all, wanted, 0);
    } catch (cause) {
      if (cause instanceof TooLong) return undefined;
      throw cause;
    }
    return this.#fewest(all, wanted);
  }

  #count(): void {
    this.#steps++;
    if (this.#steps > this.#most || (this.#steps % 4096 === 0 && this.#stop())) throw new TooLong();
  }

  /** Bars of an entry that are left in a state. */
  #left(state: number, bar: number): number {
    const stride = this.#barStrides[bar] as number;
    if (stride === 0) return Number.POSITIVE_INFINITY;
    return Math.floor(state / stride) % ((this.#barCounts[bar] as number) + 1);
  }

  /** New stock and, less, what is taken from off-cuts, as one number. */
  #price(bar: number, { pieces }: Listed): number {
    const { offcut, ticks } = this.#job.bars[bar] as Job['bars'][number];
    return offcut ? -pieces : ticks * this.#weight;
  }

  /** Goes through every bar and pattern that the longest piece still wanted may lie on. */
  #each(
    state: number,
    wanted: readonly number[],
    first: number,
    visit: (bar: number, listed: Listed, next: number) => void,
  ): void {
    const bars = this.#job.bars;
    for (const one of this.#patterns[first] as readonly Listed[]) {
      this.#count();
      if (!fits(one.counts, wanted, first)) continue;
      for (let bar = 0; bar < bars.length; bar++) {
        if (one.size > (bars[bar]?.room ?? 0) || this.#left(state, bar) < 1) continue;
        visit(bar, one, state - one.step - (this.#barStrides[bar] as number));
      }
    }
  }

  #costOf(state: number, wanted: number[], from: number): number {
    const known = this.#cost[state] as number;
    if (!Number.isNaN(known)) return known;
    const first = firstOf(wanted, from);
    let least = first < 0 ? 0 : Number.POSITIVE_INFINITY;
    if (first >= 0)
      this.#each(state, wanted, first, (bar, one, next) => {
        change(wanted, one.counts, -1);
        least = Math.min(least, this.#price(bar, one) + this.#costOf(next, wanted, first));
        change(wanted, one.counts, 1);
      });
    this.#cost[state] = least;
    return least;
  }

  /** The longest remainder worth keeping among the plans that are best by the first two aims. */
  #longestOf(state: number, wanted: number[], from: number): number {
    const known = this.#longest[state] as number;
    if (!Number.isNaN(known)) return known;
    const first = firstOf(wanted, from);
    let longest = 0;
    if (first >= 0)
      this.#best(state, wanted, first, (bar, one, next) => {
        longest = Math.max(longest, this.#reusable(bar, one), this.#longestOf(next, wanted, first));
      });
    this.#longest[state] = longest;
    return longest;
  }

  /** As `#each`, but only the ways that keep the first two aims. `wanted` is what is left while it visits. */
  #best(
    state: number,
    wanted: number[],
    first: number,
    visit: (bar: number, listed: Listed, next: number) => void,
  ): void {
    const least = this.#cost[state] as number;
    this.#each(state, wanted, first, (bar, one, next) => {
      const rest = this.#cost[next] as number;
      if (Number.isNaN(rest) || this.#price(bar, one) + rest !== least) return;
      change(wanted, one.counts, -1);
      visit(bar, one, next);
      change(wanted, one.counts, 1);
    });
  }

  #reusable(bar: number, { pattern }: Listed): number {
    const left = leftOf({ bar, pattern }, this.#job);
    return left >= this.#job.reusableTicks ? left : 0;
  }

  /** Of the plans that are best by the first three aims one with fewest set-ups, then fewest stop settings. */
  #fewest(all: number, wanted: number[]): Exact {
    const target = this.#longest[all] as number;
    const used = new Map<number, number>();
    const cuts: Cut[] = [];
    const covered = new Int32Array(wanted.length);
    let best: { plan: Plan; setups: number; stops: number } | undefined;
    this.#steps = 0;
    const visit = (state: number, from: number, last: number, longest: number, stops: number): void => {
      const first = firstOf(wanted, from);
      if (first < 0) {
        const found = { setups: used.size, stops };
        if (longest >= target && (best === undefined || isLess(found, best)))
          best = { ...found, plan: cuts.map((c) => ({ ...c })) };
        return;
      }
      const bare = wanted.reduce((n, left, i) => n + (left > 0 && covered[i] === 0 ? 1 : 0), 0);
      const least = { setups: used.size + (bare > 0 ? 1 : 0), stops: stops + bare };
      if (best !== undefined && !isLess(least, best)) return;
      const ways: { bar: number; one: Listed; next: number; longest: number }[] = [];
      this.#best(state, wanted, first, (bar, one, next) => {
        // Bars with one first piece stand in one order only.
        if (first === from && place(bar, one, this.#job) > last) return;
        const most = Math.max(longest, this.#reusable(bar, one));
        if (Math.max(most, this.#longestOf(next, wanted, first)) >= target)
          ways.push({ bar, one, next, longest: most });
      });
      const isNew = (w: (typeof ways)[number]): number => (used.has(w.one.index) ? 0 : 1);
      ways.sort((a, b) => isNew(a) - isNew(b) || b.one.size - a.one.size || a.bar - b.bar);
      for (const { bar, one, next, longest: most } of ways) {
        const times = used.get(one.index) ?? 0;
        used.set(one.index, times + 1);
        cuts.push({ bar, pattern: one.pattern, times: 1 });
        change(wanted, one.counts, -1);
        if (times === 0) cover(covered, one.pattern, 1);
        visit(
          next,
          first,
          place(bar, one, this.#job),
          most,
          stops + (times === 0 ? one.pattern.length / 2 : 0),
        );
        if (times === 0) cover(covered, one.pattern, -1);
        change(wanted, one.counts, 1);
        cuts.pop();
        if (times === 0) used.delete(one.index);
        else used.set(one.index, times);
      }
    };
    let whole = true;
    try {
      visit(all, 0, Number.POSITIVE_INFINITY, 0, 0);
    } catch (cause) {
      if (!(cause instanceof TooLong)) throw cause;
      whole = false;
    }
    return { plan: best?.plan ?? this.#any(all), whole: whole && best !== undefined };
  }

  /** Some plan that is best by the first three aims. */
  #any(all: number): Plan {
    const cuts: Cut[] = [];
    this.#steps = Number.NEGATIVE_INFINITY;
    const wanted = this.#job.kinds.map((k) => k.count);
    let state = all;
    let target = this.#longest[all] as number;
    for (let first = firstOf(wanted, 0); first >= 0; first = firstOf(wanted, first)) {
      let way: { bar: number; one: Listed; next: number } | undefined;
      let left = target;
      this.#best(state, wanted, first, (bar, one, next) => {
        const own = this.#reusable(bar, one);
        if (way !== undefined || Math.max(own, this.#longestOf(next, wanted, first)) < target) return;
        way = { bar, one, next };
        left = own >= target ? 0 : target;
      });
      if (way === undefined) throw new Error('a best plan is lost');
      cuts.push({ bar: way.bar, pattern: way.one.pattern, times: 1 });
      change(wanted, way.one.counts, -1);
      state = way.next;
      target = left;
    }
    return cuts;
  }
}

interface Settings {
  readonly setups: number;
  readonly stops: number;
}

function isLess(a: Settings, b: Settings): boolean {
  return a.setups < b.setups || (a.setups === b.setups && a.stops < b.stops);
}

function cover(covered: Int32Array, pattern: Pattern, by: 1 | -1): void {
  for (let k = 0; k < pattern.length; k += 2) {
    const kind = pattern[k] as number;
    covered[kind] = (covered[kind] as number) + by;
  }
}

function place(bar: number, { index }: Listed, job: Job): number {
  return index * job.bars.length + bar;
}

function firstOf(wanted: readonly number[], from: number): number {
  for (let i = from; i < wanted.length; i++) if ((wanted[i] as number) > 0) return i;
  return -1;
}

function fits(counts: readonly number[], wanted: readonly number[], from: number): boolean {
  for (let i = from; i < counts.length; i++) if ((counts[i] as number) > (wanted[i] as number)) return false;
  return true;
}

function change(wanted: number[], counts: readonly number[], sign: 1 | -1): void {
  for (let i = 0; i < counts.length; i++) wanted[i] = (wanted[i] as number) + sign * (counts[i] as number);
}
