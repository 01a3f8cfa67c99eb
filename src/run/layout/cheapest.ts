/**
 * The cheapest lay-out of one line with a given number of supports, exactly, for any price that rises by steps with the
 * length of a piece.
 *
 * As in fewest.ts, with a layer for each number of supports; a label holds the cost of the pieces that are finished and
 * where the next one begins. Within one step of the price the farthest splice is never worse, so each step offers one
 * place a span.
 */
import { cutsOf, type LineLayout, type LineProblem } from './line.ts';
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

/**
 * @param count  number of supports; there is a lay-out with so many (fewest.ts)
 * @returns null when no lay-out has exactly so many
 */
export function cheapest(problem: LineProblem, count: number, price: Price): Cheapest | null {
  const { places, firstBy, lastFrom, channel, splice, stock } = problem;
  const [first, last] = channel;
  const span = Math.min(problem.maxSpan, 2 * stock + splice.length);
  const half = splice.length / 2;
  const reach = stock + splice.before;
  const window = windows(problem, count, span);
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
    const [from, to] = window[j] as readonly [number, number];
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
        const before = places[labels.place[k] as number] as number;
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

/** First and last place that the j-th of `count` supports can have, as far as spans and faces go; j from 1. */
function windows(
  { places, firstBy, lastFrom }: LineProblem,
  count: number,
  span: number,
): readonly (readonly [number, number])[] {
  const least = new Array<number>(places.length).fill(Number.POSITIVE_INFINITY);
  for (let i = 0, low = 0; i < places.length; i++) {
    const x = places[i] as number;
    while ((places[low] as number) < x - span) low++;
    if (x <= firstBy) least[i] = 1;
    else if (low < i) least[i] = 1 + (least[low] as number);
  }
  const left = new Array<number>(places.length).fill(Number.POSITIVE_INFINITY);
  for (let i = places.length - 1, high = i; i >= 0; i--) {
    const x = places[i] as number;
    while ((places[high] as number) > x + span) high--;
    if (x >= lastFrom) left[i] = 1;
    else if (high > i) left[i] = 1 + (left[high] as number);
  }
  // Both rise along the line, `left` backwards: what one support may reach, the next may too.
  const found: (readonly [number, number])[] = [[0, -1]];
  let from = 0;
  let to = -1;
  for (let j = 1; j <= count; j++) {
    while (from < places.length && (left[from] as number) > count - j + 1) from++;
    while (to + 1 < places.length && (least[to + 1] as number) <= j) to++;
    found.push([from, to]);
  }
  return found;
}
