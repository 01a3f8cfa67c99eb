/**
 * Least stock when patterns may be cut in fractions (Gilmore and Gomory, Operations Research 9, 1961, and 11, 1963): a
 * linear programme over the patterns known so far, and for its prices the filling that is worth most, until none is
 * worth more than its bar.
 */
import { greedyPattern, type Open, repeats } from './firstFit.ts';
import type { Job } from './job.ts';
import { type Pattern, piecesOf } from './plan.ts';
import type { Priced, Pricer } from './pricing.ts';
import { Simplex } from './simplex.ts';

/** A pattern on a bar. */
export interface Filled {
  readonly bar: number;
  readonly pattern: Pattern;
  readonly name: string;
}

/** Patterns found so far, each once. */
export class Pool {
  readonly #found = new Map<string, Filled>();

  /** Keeps a pattern. @returns false when it was there */
  add(bar: number, pattern: Pattern): boolean {
    const name = nameOf(bar, pattern);
    if (this.#found.has(name)) return false;
    this.#found.set(name, { bar, pattern, name });
    return true;
  }

  all(): IterableIterator<Filled> {
    return this.#found.values();
  }

  get size(): number {
    return this.#found.size;
  }
}

export function nameOf(bar: number, pattern: Pattern): string {
  return `${bar}:${pattern.join()}`;
}

export interface Relaxed {
  /** Least cost, the longest stock being 1; Infinity when even fractions of the bars do not hold the pieces. */
  readonly cost: number;
  /** Patterns in use and how often. */
  readonly used: readonly (Filled & { readonly amount: number })[];
  /** Patterns that are in use or nearly worth it: what is left after a cut is best relaxed with these. */
  readonly near: readonly Filled[];
  /** What one piece of each kind is worth. */
  readonly prices: readonly number[];
  /** Whether no better pattern is left; false when the search was stopped, or a forbidden pattern would be better. */
  readonly finished: boolean;
}

export interface RelaxOptions {
  readonly stop: () => boolean;
  /** Patterns not to be used. */
  readonly forbidden?: ReadonlySet<string> | undefined;
  /** Bars cost nothing. */
  readonly free?: boolean;
  /** Cost of a want left open; left out, dearer than any bar. */
  readonly open?: number;
  /** Every want is met exactly: nothing is cut that is not wanted. */
  readonly exactly?: boolean;
  /** Counts of every bar, one list for each choice of new stock: the bars used are then a mixture of these, and the off-cuts. */
  readonly choices?: readonly (readonly number[])[] | undefined;
  /** What a tick of pieces cut from an off-cut is worth, the longest stock being 1. */
  readonly fromOffcuts?: number | undefined;
  /** Good enough for a plan, not for a bound. */
  readonly rough?: boolean;
  /** Makes patterns that cost the same differ by a hair, so that another of many best mixtures comes out. */
  readonly chance?: (() => number) | undefined;
  /** Ends as soon as the cost is known to be above this whole number of longest bars, or not. */
  readonly roundsUp?: boolean;
}

const WORTH = 1e-7;
const HAIR = 2e-6;
const NEAR = 0.1;
/** Wide enough that whole weights made of the prices still prove the same. */
const SURELY = 1e-5;

export function costOf(job: Job, bar: number): number {
  const { offcut, ticks } = job.bars[bar] as Job['bars'][number];
  return offcut ? 0 : ticks / longestStock(job);
}

export function longestStock(job: Job): number {
  return Math.max(...job.bars.filter((b) => !b.offcut).map((b) => b.ticks), 0) || 1;
}

/** The part of the job that is still open, by its own short lists. */
interface Part {
  readonly kinds: readonly number[];
  readonly place: ReadonlyMap<number, number>;
  readonly sizes: Float64Array;
  readonly wanted: Float64Array;
  /** Bars that are left. */
  readonly bars: readonly number[];
  /** Row of a bar that there is only so many of. */
  readonly rows: ReadonlyMap<number, number>;
}

function partOf(job: Job, open: Open, everyBar: boolean): Part {
  const kinds = job.kinds.map((_, i) => i).filter((i) => (open.wanted[i] as number) > 0);
  const bars = job.bars.map((_, i) => i).filter((i) => (open.bars[i] as number) > 0);
  const rows = new Map<number, number>();
  for (const bar of bars)
    if (everyBar || (open.bars[bar] as number) < Number.POSITIVE_INFINITY)
      rows.set(bar, kinds.length + rows.size);
  return {
    kinds,
    place: new Map(kinds.map((kind, i) => [kind, i])),
    sizes: Float64Array.from(kinds, (i) => job.kinds[i]?.size ?? 0),
    wanted: Float64Array.from(kinds, (i) => open.wanted[i] as number),
    bars,
    rows,
  };
}

/** @param known  patterns to begin with; more are found and put into `pool` */
export function relax(
  job: Job,
  open: Open,
  pool: Pool,
  pricer: Pricer,
  options: RelaxOptions,
  known: Iterable<Filled> = pool.all(),
): Relaxed {
  const { choices } = options;
  const part = partOf(job, open, choices !== undefined);
  const limits = [...part.rows.keys()].map((bar) =>
    choices !== undefined && job.bars[bar]?.offcut === false ? 0 : (open.bars[bar] as number),
  );
  if (choices !== undefined) limits.push(1);
  const master = new Simplex([...part.wanted], limits, options);
  const filled: Filled[] = [];
  const names = new Set<string>();
  const add = (bar: number, pattern: Pattern, name = nameOf(bar, pattern)): void => {
    const entries: number[] = [];
    for (let k = 0; k < pattern.length; k += 2)
      entries.push(part.place.get(pattern[k] as number) ?? 0, pattern[k + 1] as number);
    const row = part.rows.get(bar);
    if (row !== undefined) entries.push(row, 1);
    const cost = options.free ? 0 : costOf(job, bar) + HAIR * (options.chance?.() ?? 0);
    const saved = job.bars[bar]?.offcut ? (options.fromOffcuts ?? 0) * piecesOf(pattern, job) : 0;
    master.add(cost - saved, entries);
    names.add(name);
    filled.push({ bar, pattern, name });
  };
  for (const counts of choices ?? []) {
    const entries = [part.kinds.length + limits.length - 1, 1];
    for (const [bar, row] of part.rows)
      if ((counts[bar] as number) > 0) entries.push(row, 0 - (counts[bar] as number));
    master.add(0, entries);
    filled.push({ bar: -1, pattern: [], name: '' });
  }
  for (const { bar, pattern, name } of known)
    if (
      (open.bars[bar] as number) > 0 &&
      repeats(pattern, open.wanted) > 0 &&
      options.forbidden?.has(name) !== true
    )
      add(bar, pattern, name);
  for (const bar of part.bars) {
    for (const kind of part.kinds) {
      const one = greedyPattern(job, only(open.wanted, kind), job.bars[bar]?.room ?? 0);
      if (one.length > 0 && !names.has(nameOf(bar, one))) {
        pool.add(bar, one);
        add(bar, one);
      }
    }
  }
  const finished = generate(job, part, master, pool, pricer, options, add, names);
  pricer.simplexWork += master.work;
  const prices = new Array<number>(job.kinds.length).fill(0);
  part.kinds.forEach((kind, i) => {
    prices[kind] = Math.max(0, master.prices[i] as number);
  });
  return {
    cost: master.left > 1e-6 && options.open === undefined ? Number.POSITIVE_INFINITY : master.cost,
    used: master.used().map(([column, amount]) => ({ ...(filled[column] as Filled), amount })),
    near: filled.filter((_, column) => master.reducedCost(column) < NEAR),
    prices,
    finished,
  };
}

function only(wanted: readonly number[], kind: number): number[] {
  return wanted.map((n, i) => (i === kind ? n : 0));
}

function generate(
  job: Job,
  part: Part,
  master: Simplex,
  pool: Pool,
  pricer: Pricer,
  options: RelaxOptions,
  add: (bar: number, pattern: Pattern) => void,
  names: ReadonlySet<string>,
): boolean {
  const { stop, forbidden, roundsUp } = options;
  if (part.bars.length === 0 || part.kinds.length === 0) return master.optimise();
  for (;;) {
    if (!master.optimise() || stop()) return false;
    const priced = priceBars(job, part, master.prices, pricer, options);
    let [added, barred] = [0, false];
    for (const { bar, fillings } of priced) {
      for (const { pattern } of fillings) {
        const own: Pattern = pattern.map((n, i) => (i % 2 === 0 ? (part.kinds[n] as number) : n));
        const name = nameOf(bar, own);
        if (forbidden?.has(name)) barred = true;
        else if (!names.has(name)) {
          pool.add(bar, own);
          add(bar, own);
          added++;
        }
      }
    }
    if (added === 0) return !barred;
    // On bars of one length the cost over the dearest filling is a bound already (Farley, Operations Research 38, 1990).
    const [only] = priced;
    if (roundsUp && priced.length === 1 && only?.exact && part.rows.size === 0) {
      const least = master.cost / Math.max(1, only.fillings[0]?.value ?? 1);
      if (Math.ceil(least - SURELY) >= Math.ceil(master.cost - SURELY)) return true;
    }
  }
}

interface PricedBar {
  readonly bar: number;
  readonly fillings: readonly Priced[];
  readonly exact: boolean;
}

/** The fillings of every bar that are worth more than the bar costs. */
function priceBars(
  job: Job,
  part: Part,
  prices: Float64Array,
  pricer: Pricer,
  { free, rough, fromOffcuts = 0 }: RelaxOptions,
): readonly PricedBar[] {
  const price = (bars: readonly number[], values: Float64Array): readonly PricedBar[] => {
    if (bars.length === 0) return [];
    const least = bars.map((bar) => {
      const row = part.rows.get(bar);
      return (free ? 0 : costOf(job, bar)) - (row === undefined ? 0 : (prices[row] as number)) + WORTH;
    });
    const rooms = bars.map((bar) => job.bars[bar]?.room ?? 0);
    const { fillings, exact } = pricer.price(part.sizes, part.wanted, values, rooms, least, rough);
    return bars.map((bar, i) => ({ bar, fillings: fillings[i] ?? [], exact }));
  };
  if (fromOffcuts === 0) return price(part.bars, prices);
  const isOffcut = (bar: number): boolean => job.bars[bar]?.offcut === true;
  const saving = Float64Array.from(
    part.kinds,
    (kind, i) => (prices[i] as number) + fromOffcuts * (job.kinds[kind]?.ticks ?? 0),
  );
  return [
    ...price(part.bars.filter(isOffcut), saving),
    ...price(
      part.bars.filter((b) => !isOffcut(b)),
      prices,
    ),
  ];
}
