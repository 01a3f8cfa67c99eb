/**
 * The cheapest lay-out of one line with a given number of supports, exactly, for any price that rises by steps with the
 * length of a piece.
 *
 * As in fewest.ts, with a layer for each number of supports; a label holds the cost of the pieces that are finished and
 * where the next one begins. Within one step of the price the farthest splice is never worse, so each step offers one
 * place a span.
 */
import { fewest } from './fewest.ts';
import { cutsOf, type LineLayout, type LineProblem, leavesOut, mirrored } from './line.ts';
import { costOf, type Price } from './price.ts';
import { lastSplice, NOWHERE } from './spliceAt.ts';

export interface Cheapest {
  readonly cost: number;
  readonly layout: LineLayout;
}

/** Finished lay-outs up to a support, in columns; layer after layer, place after place. */
interface Labels {
  readonly cost: number[];
  readonly begin: number[];
  readonly place: number[];
  readonly before: number[];
  readonly splice: number[];
}

/** The labels of one place: the dearer, the farther; kept in that order. */
class Front {
  readonly cost: number[] = [];
  readonly begin: number[] = [];
  readonly before: number[] = [];
  readonly splice: number[] = [];

  offer(cost: number, begin: number, before: number, splice: number): void {
    const n = this.cost.length;
    let i = n;
    while (i > 0 && (this.cost[i - 1] as number) > cost) i--;
    // All before i cost no more; the last of them reaches farthest.
    if (i > 0 && (this.begin[i - 1] as number) >= begin) return;
    let from = i;
    while (from > 0 && (this.cost[from - 1] as number) === cost) from--;
    let to = i;
    while (to < n && (this.begin[to] as number) <= begin) to++;
    const gone = to - from;
    this.cost.splice(from, gone, cost);
    this.begin.splice(from, gone, begin);
    this.before.splice(from, gone, before);
    this.splice.splice(from, gone, splice);
  }

  clear(): void {
    for (const column of [this.cost, this.begin, this.before, this.splice]) column.length = 0;
  }
}

/** @returns null when no lay-out has exactly so many supports */
export function cheapest({ problem, count, windows }: Prepared, price: Price): Cheapest | null {
  const { places, firstBy, lastFrom, channel, splice, stock } = problem;
  const [first, last] = channel;
  const span = Math.min(problem.maxSpan, 2 * stock + splice.length);
  const half = splice.length / 2;
  const reach = stock + splice.before;
  const labels: Labels = { cost: [], begin: [], place: [], before: [], splice: [] };
  const front = new Front();

  /** Labels of place `from + k` of a layer are `starts[k]` up to `starts[k + 1]`. */
  interface Layer {
    readonly from: number;
    readonly starts: number[];
  }
  const keep = (place: number) => {
    for (let k = 0; k < front.cost.length; k++) {
      labels.cost.push(front.cost[k] as number);
      labels.begin.push(front.begin[k] as number);
      labels.place.push(place);
      labels.before.push(front.before[k] as number);
      labels.splice.push(front.splice[k] as number);
    }
    front.clear();
  };

  let layer: Layer = { from: 0, starts: [] };
  for (let j = 1; j <= count; j++) {
    const [from, to] = windows[j] as readonly [number, number];
    const starts: number[] = [];
    let low = layer.from;
    for (let i = from; i <= to; i++) {
      const x = places[i] as number;
      starts.push(labels.cost.length);
      if (j === 1) {
        if (x <= firstBy && (count > 1 || (x >= lastFrom && last - first <= stock))) {
          front.offer(count > 1 ? 0 : costOf(price, last - first), first, -1, NOWHERE);
        }
        keep(i);
        continue;
      }
      while (low < layer.from + layer.starts.length - 1 && (places[low] as number) < x - span) low++;
      const begin = layer.starts[low - layer.from] ?? 0;
      const end = layer.starts[Math.min(i - layer.from, layer.starts.length - 1)] ?? 0;
      for (let k = begin; k < end; k++) {
        const before = places[labels.place[k] as number] as number;
        if (leavesOut(problem, before, x)) continue;
        const cost = labels.cost[k] as number;
        const at = labels.begin[k] as number;
        if (j === count) {
          if (x >= lastFrom && last - at <= stock) {
            front.offer(cost + costOf(price, last - at), at, k, NOWHERE);
          }
          continue;
        }
        if (last - at <= stock || at + reach >= x + half) front.offer(cost, at, k, NOWHERE);
        if (j === 2) continue;
        let done = NOWHERE;
        for (const { upTo } of price.steps) {
          const s = lastSplice(splice, before, x, at + upTo + splice.before);
          if (s === done || s === NOWHERE) continue;
          done = s;
          front.offer(cost + costOf(price, s - splice.before - at), s + splice.behind, k, s);
        }
      }
      keep(i);
    }
    starts.push(labels.cost.length);
    layer = { from, starts };
  }
  return best(problem, labels, layer.starts[0] ?? 0);
}

function best(problem: LineProblem, labels: Labels, from: number): Cheapest | null {
  let found = -1;
  for (let k = from; k < labels.cost.length; k++) {
    if (found < 0 || (labels.cost[k] as number) < (labels.cost[found] as number)) found = k;
  }
  if (found < 0) return null;
  const supports: number[] = [];
  const splices: number[] = [];
  for (let k = found; k >= 0; k = labels.before[k] as number) {
    supports.push(problem.places[labels.place[k] as number] as number);
    const at = labels.splice[k] as number;
    if (at !== NOWHERE) splices.push(at);
  }
  supports.reverse();
  splices.reverse();
  return {
    cost: labels.cost[found] as number,
    layout: { supports, splices, cuts: cutsOf(problem, splices) },
  };
}

/** A line, ready to be laid out at many prices. */
export interface Prepared {
  readonly problem: LineProblem;
  /** Supports that every lay-out is to have. */
  readonly count: number;
  /** First and last place that the j-th support can have, j from 1. */
  readonly windows: readonly (readonly [number, number])[];
  /** Pairs of neighbouring supports that a search goes through, about. */
  readonly work: number;
}

/**
 * @param count  of supports, no fewer than fewest.ts finds
 * @returns      null when the line cannot be laid out at all
 */
export function prepare(problem: LineProblem, count: number): Prepared | null {
  const least = fewest(problem)?.least;
  const back = fewest(mirrored(problem))?.least.toReversed();
  if (least === undefined || back === undefined) return null;
  const windows: [number, number][] = [[0, -1]];
  for (let j = 1; j <= count; j++) windows.push([Number.POSITIVE_INFINITY, -1]);
  least.forEach((before, i) => {
    // So many up to here, so many from here on; this support is in both.
    for (let j = before; j <= count - (back[i] as number) + 1; j++) {
      const window = windows[j] as [number, number];
      window[0] = Math.min(window[0], i);
      window[1] = i;
    }
  });
  const { places, maxSpan } = problem;
  const near = Math.max(
    1,
    (places.length * maxSpan) / ((places.at(-1) as number) - (places[0] as number) + 1),
  );
  const work = windows.reduce(
    (sum, [from, to]) => sum + Math.max(0, to - from + 1) * Math.min(near, to - from + 1),
    0,
  );
  return { problem, count, windows, work };
}
