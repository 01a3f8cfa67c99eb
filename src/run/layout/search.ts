/** The search for lay-outs that take few stock lengths, for the lines of one channel. */
import { type Cheapest, cheapest, type Prepared, prepare } from './cheapest.ts';
import { fill, type Room } from './fill.ts';
import type { LineLayout, LineProblem } from './line.ts';
import { firstFit, type Stock } from './pack.ts';
import { type Bounding, byParts, byPiece, type Price } from './price.ts';

export interface SearchLine {
  readonly problem: LineProblem;
  /** With the fewest supports. */
  readonly layout: LineLayout;
}

export interface Searched {
  /** One a line. */
  readonly layouts: readonly LineLayout[];
  readonly used: number;
  /** Stock lengths that every lay-out takes. */
  readonly bound: number;
  /** No line can be cut otherwise than it is. */
  readonly rigid: boolean;
}

/** Pairs of neighbouring supports that are gone through in all, before the best so far is given. */
const MOST_WORK = 4_000_000;
/** A label of fill.ts has so many ways on, about. */
const FILL_WAYS = 40;

export function stockSearch(lines: readonly SearchLine[], stock: Stock): Searched {
  const ready = lines.map(({ problem, layout }): Prepared | null =>
    // No splice stands in an end span: with three supports or fewer a line is one piece.
    layout.supports.length < 4 ? null : prepare(problem, layout.supports.length),
  );
  const pools = lines.map(({ layout }) => [layout]);
  let chosen = lines.map(({ layout }) => layout);
  let score = scoreOf(chosen, stock);
  let bound = 0;
  let work = 0;
  const all = ready.reduce((sum, one) => sum + (one?.work ?? 0), 0);

  const cheapestAll = (price: Price): number => {
    let cost = 0;
    work += all * price.steps.length;
    lines.forEach(({ layout }, i) => {
      const one = ready[i];
      const found: Cheapest | null = one ? cheapest(one, price) : null;
      cost += found?.cost ?? cheapestOf(layout, price);
      if (found !== null) pools[i]?.push(found.layout);
    });
    return cost;
  };
  const byBound = ({ price, most }: Bounding) => {
    bound = Math.max(bound, Math.ceil(cheapestAll(price) / most));
  };
  const take = (layouts: LineLayout[]) => {
    const its = scoreOf(layouts, stock);
    if (!isBetter(its, score)) return false;
    chosen = layouts;
    score = its;
    return true;
  };
  const exchange = () => {
    let again = true;
    while (again && score.used > bound) {
      again = false;
      pools.forEach((pool, i) => {
        for (const layout of pool) {
          if (layout !== chosen[i] && take(chosen.map((c, k) => (k === i ? layout : c)))) again = true;
        }
      });
    }
  };
  const done = () => score.used <= bound;

  bound = areaBound(lines, ready, cheapestAll, stock);
  take(pools.map((pool) => pool.at(-1) as LineLayout));
  exchange();
  for (let parts = 2; parts <= 6 && !done(); parts++) {
    if (work + all * parts > MOST_WORK) break;
    byBound(byParts(parts, stock));
    take(pools.map((pool) => pool.at(-1) as LineLayout));
    exchange();
  }
  const loose = lines.flatMap((_, i) => (ready[i] ? [i] : []));
  for (let turn = 0; turn < 2 * loose.length && !done(); turn++) {
    work += all * FILL_WAYS;
    if (work > MOST_WORK) break;
    const from = turn % loose.length;
    const order = [...loose.slice(from), ...loose.slice(0, from)];
    const refilled = refill(turn < loose.length ? order : order.toReversed(), chosen, ready, stock);
    if (refilled === null) continue;
    take(refilled);
    for (const [i, layout] of refilled.entries()) pools[i]?.push(layout);
    exchange();
  }
  return { layouts: chosen, used: score.used, bound, rigid: loose.length === 0 };
}

const cheapestOf = ({ cuts }: LineLayout, { steps }: Price): number =>
  cuts.reduce((sum, cut) => sum + (steps.find(({ upTo }) => cut <= upTo)?.cost ?? 0), 0);

/** All channel with its cuts; a splice more takes its opening away and adds a cut. */
function areaBound(
  lines: readonly SearchLine[],
  ready: readonly (Prepared | null)[],
  cheapestAll: (price: Price) => number,
  stock: Stock,
): number {
  let area = 0;
  let each = 0;
  const pieces = cheapestAll(byPiece(stock));
  lines.forEach(({ problem: { channel, splice } }) => {
    area += channel[1] - channel[0] + splice.before + splice.behind;
    each = stock.kerf - splice.before - splice.behind;
  });
  const most = each < 0 ? -cheapestAll(byPiece(stock, -1)) : pieces;
  void ready;
  return Math.ceil((area + most * each) / (stock.length + stock.kerf));
}

interface Score {
  readonly used: number;
  readonly longest: number;
}

function scoreOf(layouts: readonly LineLayout[], stock: Stock): Score {
  const rooms = firstFit(
    layouts.flatMap(({ cuts }) => cuts),
    stock,
  );
  return { used: rooms.length, longest: Math.max(...rooms) };
}

const isBetter = (a: Score, b: Score): boolean =>
  a.used < b.used || (a.used === b.used && a.longest > b.longest);

const ROOMS = 5;

/** Lays the lines of `order` anew, one after another, into what the others and those before leave. */
function refill(
  order: readonly number[],
  chosen: readonly LineLayout[],
  ready: readonly (Prepared | null)[],
  stock: Stock,
): LineLayout[] | null {
  const layouts = [...chosen];
  const others = chosen.filter((_, i) => !order.includes(i)).flatMap(({ cuts }) => cuts);
  const bins = [...firstFit(others, stock)];
  for (const i of order) {
    const one = ready[i];
    if (!one) return null;
    const rooms = roomsOf(bins, chosen[i] as LineLayout, one, stock);
    const filled = fill(one, rooms);
    if (filled === null) return null;
    layouts[i] = filled.layout;
    filled.taken.forEach((r, k) => {
      const need = (filled.layout.cuts[k] as number) + stock.kerf;
      if (r === 0) bins.push(stock.length + stock.kerf - need);
      else {
        const at = bins.indexOf((rooms[r] as Room).length + stock.kerf);
        bins[at] = (bins[at] as number) - need;
      }
    });
  }
  return layouts;
}

function roomsOf(bins: readonly number[], layout: LineLayout, { problem }: Prepared, stock: Stock): Room[] {
  const byLength = Map.groupBy(
    bins.filter((room) => room - stock.kerf >= problem.splice.length),
    (room) => room,
  );
  const used = [...byLength].sort(([a], [b]) => b - a).slice(0, ROOMS);
  return [
    { length: stock.length, count: layout.cuts.length },
    ...used.map(([room, all]) => ({ length: room - stock.kerf, count: Math.min(all.length, 3) })),
  ];
}
