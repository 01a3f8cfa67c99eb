/**
 * Least stock when patterns may be cut in fractions (Gilmore and Gomory, Operations Research 9, 1961, and 11, 1963): a
 * linear programme over the patterns known so far, and for its prices the filling that is worth most, until none is
 * worth more than its bar. Cuts can be taken out of it, and patterns forbidden; it then goes on from where it was.
 */
import { Basis } from './basis.ts';
import { greedyPattern, type Open, repeats } from './firstFit.ts';
import type { Job } from './job.ts';
import { type Cut, type Pattern, piecesOf } from './plan.ts';
import { type Filled, nameOf, type Pool } from './pool.ts';
import type { Priced, Pricer } from './pricing.ts';
import { repair } from './repair.ts';
import { Simplex } from './simplex.ts';

export interface RelaxOptions {
  /** Bars cost nothing. */
  readonly free?: boolean | undefined;
  /** Cost of a want left open; left out, dearer than any bar. */
  readonly open?: number | undefined;
  /** Every want is met exactly: nothing is cut that is not wanted. */
  readonly exactly?: boolean | undefined;
  /** Counts of every bar, one list for each choice of new stock: the bars used are then a mixture of these, and the off-cuts. */
  readonly choices?: readonly (readonly number[])[] | undefined;
  /** What a tick of pieces cut from an off-cut is worth, the longest stock being 1. */
  readonly fromOffcuts?: number | undefined;
  /** Makes patterns that cost the same differ by a hair, so that another of many best mixtures comes out. */
  readonly chance?: (() => number) | undefined;
}

/** How far to go. */
export interface SolveOptions {
  readonly stop: () => boolean;
  /** Good enough for a plan, not for a bound. */
  readonly rough?: boolean | undefined;
  /** Ends as soon as the cost is known to be above a whole number of longest bars, or not. */
  readonly roundsUp?: boolean | undefined;
}

/** A filling is taken up when it is worth more than its bar by this. */
const WORTH = 1e-7;
const HAIR = 2e-6;
const NEAR = 0.1;
/** Wide enough that whole weights made of the prices still prove the same. */
const SURELY = 1e-5;

/** Where the longest stock costs 1. */
export function costOf(job: Job, bar: number): number {
  const { offcut, ticks } = job.bars[bar] as Job['bars'][number];
  return offcut ? 0 : ticks / longestStock(job);
}

export function longestStock(job: Job): number {
  return Math.max(...job.bars.filter((b) => !b.offcut).map((b) => b.ticks), 0) || 1;
}

/** What does not change: the rows of kinds and bars, and every pattern that was ever a column. */
interface Frame {
  readonly job: Job;
  readonly pool: Pool;
  readonly pricer: Pricer;
  readonly options: RelaxOptions;
  readonly kinds: readonly number[];
  readonly rowOfKind: ReadonlyMap<number, number>;
  /** Rows of the bars that there is only so many of. */
  readonly rowOfBar: ReadonlyMap<number, number>;
  readonly sizes: Float64Array;
  /** By column. */
  readonly filled: Filled[];
  readonly columnOf: Map<string, number>;
}

export class Relaxation {
  readonly #frame: Frame;
  readonly #basis: Basis;
  /** What is still open. */
  readonly open: Open;

  private constructor(frame: Frame, basis: Basis, open: Open) {
    this.#frame = frame;
    this.#basis = basis;
    this.open = open;
  }

  /** @param known  patterns to begin with; more are found and put into `pool` */
  static of(
    job: Job,
    open: Open,
    pool: Pool,
    pricer: Pricer,
    options: RelaxOptions = {},
    known: Iterable<Filled> = pool.all(),
  ): Relaxation {
    const { choices } = options;
    const kinds = job.kinds.map((_, i) => i).filter((i) => (open.wanted[i] as number) > 0);
    const bars = job.bars.map((_, i) => i).filter((i) => (open.bars[i] as number) > 0);
    const limited = bars.filter(
      (b) => choices !== undefined || (open.bars[b] as number) < Number.POSITIVE_INFINITY,
    );
    const limits = limited.map((bar) =>
      choices !== undefined && job.bars[bar]?.offcut === false ? 0 : (open.bars[bar] as number),
    );
    if (choices !== undefined) limits.push(1);
    const frame: Frame = {
      job,
      pool,
      pricer,
      options,
      kinds,
      rowOfKind: new Map(kinds.map((kind, i) => [kind, i])),
      rowOfBar: new Map(limited.map((bar, i) => [bar, kinds.length + i])),
      sizes: Float64Array.from(kinds, (i) => job.kinds[i]?.size ?? 0),
      filled: [],
      columnOf: new Map(),
    };
    const wants = kinds.map((i) => open.wanted[i] as number);
    const basis = new Basis({ wants, limits, open: options.open, exactly: options.exactly });
    const made = new Relaxation(frame, basis, { bars: [...open.bars], wanted: [...open.wanted] });
    made.#begin(bars, limits.length, known);
    return made;
  }

  #begin(bars: readonly number[], limits: number, known: Iterable<Filled>): void {
    const { job, kinds, rowOfBar, filled, options } = this.#frame;
    for (const counts of options.choices ?? []) {
      const entries = [kinds.length + limits - 1, 1];
      for (const [bar, row] of rowOfBar)
        if ((counts[bar] as number) > 0) entries.push(row, 0 - (counts[bar] as number));
      this.#basis.columns.add(0, entries);
      filled.push({ bar: -1, pattern: [], name: '' });
    }
    for (const { bar, pattern } of known)
      if ((this.open.bars[bar] as number) > 0 && repeats(pattern, this.open.wanted) > 0)
        this.#add(bar, pattern);
    for (const bar of bars) {
      for (const kind of kinds) {
        const wanted = this.open.wanted.map((n, i) => (i === kind ? n : 0));
        const one = greedyPattern(job, wanted, job.bars[bar]?.room ?? 0);
        if (one.length > 0) this.#add(bar, one);
      }
    }
  }

  /** Another one of the same, to be changed by itself. */
  clone(): Relaxation {
    const { bars, wanted } = this.open;
    return new Relaxation(this.#frame, new Basis(this.#basis), { bars: [...bars], wanted: [...wanted] });
  }

  /** @returns whether the pattern is new here */
  #add(bar: number, pattern: Pattern): boolean {
    const { job, pool, options, rowOfKind, rowOfBar, filled, columnOf } = this.#frame;
    const name = nameOf(bar, pattern);
    if (columnOf.has(name)) return false;
    const entries: number[] = [];
    for (let k = 0; k < pattern.length; k += 2)
      entries.push(rowOfKind.get(pattern[k] as number) ?? 0, pattern[k + 1] as number);
    const row = rowOfBar.get(bar);
    if (row !== undefined) entries.push(row, 1);
    const cost = options.free ? 0 : costOf(job, bar) + HAIR * (options.chance?.() ?? 0);
    const saved = job.bars[bar]?.offcut ? (options.fromOffcuts ?? 0) * piecesOf(pattern, job) : 0;
    columnOf.set(name, this.#basis.columns.add(cost - saved, entries));
    filled.push({ bar, pattern, name });
    pool.add(bar, pattern);
    return true;
  }

  /** Takes a cut of a pattern that is a column here out of what is open. */
  take({ bar, pattern, times }: Cut): void {
    const column = this.#frame.columnOf.get(nameOf(bar, pattern));
    if (column === undefined) throw new Error('no such pattern here');
    this.open.bars[bar] = (this.open.bars[bar] as number) - times;
    for (let k = 0; k < pattern.length; k += 2) {
      const kind = pattern[k] as number;
      this.open.wanted[kind] = (this.open.wanted[kind] as number) - times * (pattern[k + 1] as number);
    }
    this.#basis.take(column, times);
    this.#basis.banExcess();
  }

  forbid({ name }: Filled): void {
    const column = this.#frame.columnOf.get(name);
    if (column !== undefined) this.#basis.ban(column);
  }

  /** @returns whether no better pattern is left; false when it was stopped, or a forbidden one would be better */
  solve(how: SolveOptions): boolean {
    const basis = this.#basis;
    const before = basis.work;
    const finished = this.#generate(new Simplex(basis), how);
    this.#frame.pricer.simplexWork += basis.work - before;
    return finished;
  }

  #generate(simplex: Simplex, how: SolveOptions): boolean {
    const basis = this.#basis;
    const { kinds } = this.#frame;
    if (!repair(basis)) basis.reset();
    for (;;) {
      if (!simplex.optimise() || how.stop()) return false;
      const priced = this.#price(how);
      let added = 0;
      for (const { bar, fillings } of priced)
        for (const { pattern } of fillings)
          if (
            this.#add(
              bar,
              pattern.map((n, i) => (i % 2 === 0 ? (kinds[n] as number) : n)),
            )
          )
            added++;
      if (added === 0) return priced.every(({ fillings }) => fillings.length === 0);
      // On bars of one length the cost over the dearest filling is a bound already (Farley, Operations Research 38, 1990).
      const [only] = priced;
      if (how.roundsUp && priced.length === 1 && only?.exact && this.#frame.rowOfBar.size === 0) {
        const least = basis.cost / Math.max(1, only.fillings[0]?.value ?? 1);
        if (Math.ceil(least - SURELY) >= Math.ceil(basis.cost - SURELY)) return true;
      }
    }
  }

  /** The fillings of every bar that are worth more than the bar costs. */
  #price({ rough }: SolveOptions): readonly PricedBar[] {
    const { job, kinds, sizes, pricer, rowOfBar, options } = this.#frame;
    const { prices } = this.#basis;
    const wanted = Float64Array.from(kinds, (kind) => this.open.wanted[kind] as number);
    const price = (bars: readonly number[], values: Float64Array): readonly PricedBar[] => {
      if (bars.length === 0) return [];
      const least = bars.map((bar) => {
        const row = rowOfBar.get(bar);
        const limit = row === undefined ? 0 : (prices[row] as number);
        return (options.free ? 0 : costOf(job, bar)) - limit + WORTH;
      });
      const rooms = bars.map((bar) => job.bars[bar]?.room ?? 0);
      const { fillings, exact } = pricer.price(sizes, wanted, values, rooms, least, rough);
      return bars.map((bar, i) => ({ bar, fillings: fillings[i] ?? [], exact }));
    };
    const bars = job.bars.map((_, i) => i).filter((i) => (this.open.bars[i] as number) > 0);
    const { fromOffcuts = 0 } = options;
    if (fromOffcuts === 0) return price(bars, prices);
    const isOffcut = (bar: number): boolean => job.bars[bar]?.offcut === true;
    const saving = Float64Array.from(
      kinds,
      (kind, i) => (prices[i] as number) + fromOffcuts * (job.kinds[kind]?.ticks ?? 0),
    );
    return [
      ...price(bars.filter(isOffcut), saving),
      ...price(
        bars.filter((b) => !isOffcut(b)),
        prices,
      ),
    ];
  }

  /** Least cost, the longest stock being 1; Infinity when even fractions of the bars do not hold the pieces. */
  get cost(): number {
    const short = this.#frame.options.open === undefined && this.#basis.left > 1e-6;
    return short ? Number.POSITIVE_INFINITY : this.#basis.cost;
  }

  /** Patterns in use and how often. */
  used(): readonly (Filled & { readonly amount: number })[] {
    return this.#basis
      .used()
      .map(([column, amount]) => ({ ...(this.#frame.filled[column] as Filled), amount }));
  }

  /** Patterns that are in use or nearly worth it: another relaxation of the same is best begun with these. */
  near(): readonly Filled[] {
    const { columns, prices } = this.#basis;
    return this.#frame.filled.filter(
      ({ bar }, column) => bar >= 0 && columns.reducedCost(column, prices) < NEAR,
    );
  }

  /** What one piece of each kind is worth. */
  get prices(): readonly number[] {
    const prices = new Array<number>(this.#frame.job.kinds.length).fill(0);
    this.#frame.kinds.forEach((kind, i) => {
      prices[kind] = Math.max(0, this.#basis.prices[i] as number);
    });
    return prices;
  }
}

interface PricedBar {
  readonly bar: number;
  readonly fillings: readonly Priced[];
  readonly exact: boolean;
}
