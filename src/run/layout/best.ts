/** The lay-outs of one channel's lines as a search goes on: the best so far, those it may choose from, and the bound. */
import { cheapest, type Prepared, prepare } from './cheapest.ts';
import type { LineLayout, LineProblem } from './line.ts';
import { type Fit, fitOf, isBetter, type Stock } from './pack.ts';
import { costOf, type Price } from './price.ts';

export interface SearchLine {
  readonly problem: LineProblem;
  /** With the fewest supports. */
  readonly layout: LineLayout;
}

const MOST_TRIED = 500_000;

export class Search {
  readonly stock: Stock;
  readonly lines: readonly SearchLine[];
  /** By line; null where the line can be cut in no other way. */
  readonly ready: readonly (Prepared | null)[];
  readonly loose: readonly number[];
  /** Pieces of the other lines. */
  readonly settled: readonly number[];
  chosen: readonly LineLayout[];
  fit: Fit;
  bound = 1;
  /** Pairs of neighbouring supports gone through at a price: of one price by one step for all lines, and of all so far. */
  readonly step: number;
  work = 0;
  /** Pieces of all exchanges tried. */
  tried = 0;
  readonly #pools: LineLayout[][];

  constructor(lines: readonly SearchLine[], stock: Stock) {
    this.stock = stock;
    this.lines = lines;
    // No splice stands in an end span: with three supports or fewer a line is one piece.
    this.ready = lines.map(({ problem, layout: { supports } }) =>
      supports.length < 4 ? null : prepare(problem, supports.length),
    );
    this.loose = lines.flatMap((_, i) => (this.ready[i] ? [i] : []));
    this.settled = lines.flatMap(({ layout }, i) => (this.ready[i] ? [] : layout.cuts));
    this.chosen = lines.map(({ layout }) => layout);
    this.fit = fitOf(this.chosen, stock);
    this.step = this.ready.reduce((sum, one) => sum + (one?.work ?? 0), 0);
    this.#pools = lines.map(({ layout }) => [layout]);
  }

  get done(): boolean {
    return this.fit.used <= this.bound;
  }

  atLeast(bound: number): void {
    this.bound = Math.max(this.bound, bound);
  }

  /** Lays every line out as cheaply as can be, keeps what is new, and tries it. @returns the cost of all */
  lay(price: Price): number {
    this.work += this.step * price.steps.length;
    const found = this.ready.map((one) => (one === null ? null : cheapest(one, price)));
    this.add(found.map((one, i) => one?.layout ?? (this.chosen[i] as LineLayout)));
    return this.lines.reduce(
      (sum, { layout }, i) =>
        sum + (found[i]?.cost ?? layout.cuts.reduce((all, cut) => all + costOf(price, cut), 0)),
      0,
    );
  }

  /** Lay-outs of all lines: tried together, each alone, and each with one of another line. */
  add(layouts: readonly LineLayout[]): void {
    const fresh = layouts.map((layout, i) => this.#isNew(layout, i));
    this.#take(layouts);
    this.#exchange();
    for (const [i, isNew] of fresh.entries()) {
      const layout = layouts[i] as LineLayout;
      if (isNew) this.#exchangeWith(i, layout);
    }
  }

  /** Lay-outs of the loose lines that are known to fit. */
  settle(layouts: readonly LineLayout[], used: number): void {
    const next = [...this.chosen];
    for (const [n, i] of this.loose.entries()) next[i] = layouts[n] as LineLayout;
    this.chosen = next;
    this.fit = { ...fitOf(next, this.stock), used };
  }

  #isNew(layout: LineLayout, i: number): boolean {
    const pool = this.#pools[i] as LineLayout[];
    if (
      pool.some(
        ({ cuts }) => cuts.length === layout.cuts.length && cuts.every((c, k) => c === layout.cuts[k]),
      )
    )
      return false;
    pool.push(layout);
    return true;
  }

  #take(layouts: readonly LineLayout[]): boolean {
    this.tried += layouts.reduce((sum, { cuts }) => sum + cuts.length, 0);
    const fit = fitOf(layouts, this.stock);
    if (!isBetter(fit, this.fit)) return false;
    this.chosen = layouts;
    this.fit = fit;
    return true;
  }

  #with(i: number, layout: LineLayout): LineLayout[] {
    const layouts = [...this.chosen];
    layouts[i] = layout;
    return layouts;
  }

  #exchange(): void {
    for (let again = true; again && !this.done && this.tried < MOST_TRIED; ) {
      again = false;
      for (const [i, pool] of this.#pools.entries()) {
        for (const layout of pool) if (this.#take(this.#with(i, layout))) again = true;
      }
    }
  }

  #exchangeWith(i: number, layout: LineLayout): void {
    for (const [k, pool] of this.#pools.entries()) {
      if (k === i || this.done || this.tried >= MOST_TRIED) continue;
      for (const other of pool) {
        const layouts = this.#with(i, layout);
        layouts[k] = other;
        this.#take(layouts);
      }
    }
  }
}
