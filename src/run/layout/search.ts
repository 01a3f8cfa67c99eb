/** The search for lay-outs that take few stock lengths, for the lines of one channel. The same run, the same search. */
import { inches, ticks } from '../../trade/length.ts';
import { chanceOf } from '../../trade/sticks/chance.ts';
import { sticks } from '../../trade/sticks/sticks.ts';
import { cheapest, type Prepared, prepare } from './cheapest.ts';
import { fitInto } from './exact.ts';
import type { LineLayout, LineProblem } from './line.ts';
import { type Fit, fitOf, isBetter, packings, type Stock } from './pack.ts';
import { byChance, byParts, byPiece, costOf, type Price } from './price.ts';
import { refill } from './refill.ts';

export interface SearchLine {
  readonly problem: LineProblem;
  /** With the fewest supports. */
  readonly layout: LineLayout;
}

export interface Searched {
  /** One a line. */
  readonly layouts: readonly LineLayout[];
  readonly used: number;
  /** Stock lengths that every lay-out with so few supports takes. */
  readonly bound: number;
}

/** Tries one way after another, until what is found takes no more than the bound, or the work allowed is done. */
export function stockSearch(lines: readonly SearchLine[], stock: Stock): Searched {
  const search = new Search(lines, stock);
  for (const way of WAYS) if (!search.done) way(search);
  return { layouts: search.chosen, used: search.fit.used, bound: search.bound };
}

class Search {
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
  /** Exchanges tried. */
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
    this.tried++;
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

const MOST_TRIED = 20_000;
/** Pairs of neighbouring supports gone through at prices by parts, by chance too, and until lines are laid anew. */
const MOST_WORK = { parts: 1_500_000, chance: 2_200_000, refill: 2_800_000 };

type Way = (search: Search) => void;

/** Pieces that cannot be otherwise must be cut from something. */
const bySettled: Way = (search) => {
  const { settled, stock } = search;
  if (settled.length === 0) return;
  const { lowerBoundIn } = sticks({
    stock: [{ length: ticks(stock.length) }],
    pieces: settled.map((cut) => ({ length: ticks(cut), count: 1 })),
    kerf: ticks(stock.kerf),
  }).result;
  search.atLeast(Math.round((lowerBoundIn ?? 0) / inches(ticks(stock.length))));
};

/** All channel with its cuts; a splice more takes its opening away and adds a cut. */
const byArea: Way = (search) => {
  const { lines, stock } = search;
  const fewest = search.lay(byPiece(stock));
  const { before, behind } = (lines[0] as SearchLine).problem.splice;
  const each = stock.kerf - before - behind;
  const pieces = each < 0 ? -search.lay(byPiece(stock, -1)) : fewest;
  const area = lines.reduce(
    (sum, { problem: { channel } }) => sum + channel[1] - channel[0] + before + behind,
    0,
  );
  search.atLeast(Math.ceil((area + pieces * each) / (stock.length + stock.kerf)));
};

const byWeight: Way = (search) => {
  for (let parts = 2; parts <= 6 && !search.done; parts++) {
    if (search.work + search.step * parts > MOST_WORK.parts) return;
    const { price, most } = byParts(parts, search.stock);
    search.atLeast(Math.ceil(search.lay(price) / most));
  }
};

/** Lay-outs that no thought-out price leads to, and that fit those of other lines. */
const byManyPrices: Way = (search) => {
  const chance = chanceOf(search.lines.length);
  for (let n = 0; n < 60 && search.loose.length > 0 && !search.done; n++) {
    const price = byChance(chance, search.stock);
    if (search.work + search.step * price.steps.length > MOST_WORK.chance) return;
    search.lay(price);
  }
};

/** Ways on from a label, about, when a line is laid into rooms. */
const ROOM_WAYS = 40;

const byRefilling: Way = (search) => {
  const { loose } = search;
  for (let turn = 0; turn < 2 * loose.length && !search.done; turn++) {
    search.work += search.step * ROOM_WAYS;
    if (search.work > MOST_WORK.refill) return;
    const from = turn % loose.length;
    const order = [...loose.slice(from), ...loose.slice(0, from)];
    const layouts = refill(
      turn < loose.length ? order : order.toReversed(),
      search.chosen,
      search.ready,
      search.stock,
    );
    if (layouts !== null) search.add(layouts);
  }
};

/** First one piece a room, then two at most, then as may be: the plainer, the sooner found. Steps allowed. */
const SHARES = [
  { parts: 1, each: 600_000, all: 8_000_000 },
  { parts: 2, each: 1_500_000, all: 6_000_000 },
  { parts: Number.POSITIVE_INFINITY, each: 2_000_000, all: 6_000_000 },
] as const;
/** Beyond so many pieces, sharing out stock lengths one by one leads nowhere in good time. */
const FEW_PIECES = 14;
const MOST_PACKINGS = 300;

const bySharing: Way = (search) => {
  const pieces = search.chosen.reduce((sum, { cuts }) => sum + cuts.length, 0);
  if (pieces > FEW_PIECES || search.loose.length === 0) return;
  while (!search.done && shareOut(search));
};

/** Looks for as many stock lengths as the bound. @returns true where there are none, and the bound has risen */
function shareOut(search: Search): boolean {
  const { stock, settled, bound } = search;
  const loose = search.ready.filter((one) => one !== null);
  const ways = packings(settled, stock, bound, MOST_PACKINGS);
  let open = ways.rooms;
  for (const { parts, each, all } of SHARES) {
    let steps: number = all;
    const left: (readonly number[])[] = [];
    for (const rooms of open) {
      const { layouts, whole, work } = fitInto(loose, rooms, stock.kerf, {
        parts,
        steps: Math.min(each, steps),
      });
      steps -= work;
      if (layouts !== null) {
        search.settle(layouts, bound);
        return false;
      }
      if (!whole || parts !== Number.POSITIVE_INFINITY) left.push(rooms);
    }
    open = left;
  }
  if (open.length > 0 || !ways.all) return false;
  search.atLeast(bound + 1);
  return true;
}

const WAYS: readonly Way[] = [bySettled, byArea, byWeight, byManyPrices, byRefilling, bySharing];
