/**
 * Fewest supports of one line, exactly.
 *
 * Places are gone through in order. What has been laid up to a support is summed up by two numbers: how many supports,
 * and where the last piece of channel begins. Fewer and farther is never worse, because all that is asked of a piece
 * later is that it be not too long; so only those labels are kept that no other beats in both. The first support has
 * its own label, since no splice may stand in the span behind it; the last span takes none either. The work grows with
 * the number of places times those within one span of each.
 */
import { cutsOf, type LineLayout, type LineProblem, leavesOut } from './line.ts';
import { lastSplice, NOWHERE } from './spliceAt.ts';

/** Labels of all places, in columns. */
interface Labels {
  readonly count: number[];
  /** Where the last piece begins. */
  readonly begin: number[];
  readonly place: number[];
  /** Label of the support before, -1 at the first. */
  readonly before: number[];
  /** Splice in the span before, or `NOWHERE`. */
  readonly splice: number[];
}

interface Finish {
  readonly count: number;
  readonly place: number;
  /** Label of the last support but one; -1: one support bears the line. */
  readonly before: number;
}

export interface Fewest {
  readonly layout: LineLayout;
  /** For each place the fewest supports up to and with one there, if anything can be laid behind it; else Infinity. */
  readonly least: Float64Array;
}

/** A lay-out with the fewest supports, or null when there is none. */
export const fewestSupports = (problem: LineProblem): LineLayout | null => fewest(problem)?.layout ?? null;

/** The same, with what is known of every place on the way. */
export function fewest(problem: LineProblem): Fewest | null {
  const { places, firstBy, lastFrom, channel, splice, stock } = problem;
  const [first, last] = channel;
  // One splice a span: a longer span would hold a piece longer than the stock.
  const span = Math.min(problem.maxSpan, 2 * stock + splice.length);
  const reach = stock + splice.before;
  const half = splice.length / 2;

  const labels: Labels = { count: [], begin: [], place: [], before: [], splice: [] };
  const add = (count: number, begin: number, place: number, before: number, at: number) => {
    labels.count.push(count);
    labels.begin.push(begin);
    labels.place.push(place);
    labels.before.push(before);
    labels.splice.push(at);
  };
  /** Labels of a place are `starts[i]` up to `starts[i + 1]`. */
  const starts = new Int32Array(places.length + 1);
  const least = new Float64Array(places.length).fill(Number.POSITIVE_INFINITY);
  let finish: Finish | null = null;

  // The best found so far for the place at hand, by number of supports.
  const bestBegin: number[] = [];
  const bestBefore: number[] = [];
  const bestSplice: number[] = [];
  let low = 0;

  for (let i = 0; i < places.length; i++) {
    const x = places[i] as number;
    starts[i] = labels.count.length;
    const ends = x >= lastFrom;
    if (x <= firstBy) {
      add(1, first, i, -1, NOWHERE);
      least[i] = 1;
      if (ends && last - first <= stock) finish = better(finish, { count: 1, place: i, before: -1 });
    }
    while ((places[low] as number) < x - span) low++;
    let from = Number.POSITIVE_INFINITY;
    let to = 0;
    for (let k = starts[low] as number; k < (starts[i] as number); k++) {
      const before = places[labels.place[k] as number] as number;
      if (leavesOut(problem, before, x)) continue;
      const count = (labels.count[k] as number) + 1;
      const begin = labels.begin[k] as number;
      if (ends && last - begin <= stock) finish = better(finish, { count, place: i, before: k });
      const known = bestBegin[count] ?? NOWHERE;
      // No splice in this span could bring the next piece farther on.
      if (known >= begin && known >= Math.min(begin + reach, x - half) + splice.behind) continue;
      const at = count > 2 ? lastSplice(splice, before, x, begin + reach) : NOWHERE;
      const next = at === NOWHERE ? begin : at + splice.behind;
      from = Math.min(from, count);
      to = Math.max(to, count);
      if (next > known) {
        bestBegin[count] = next;
        bestBefore[count] = k;
        bestSplice[count] = at;
      }
    }
    let farthest = NOWHERE;
    for (let count = from; count <= to; count++) {
      const begin = bestBegin[count] ?? NOWHERE;
      bestBegin[count] = NOWHERE;
      if (begin <= farthest) continue;
      farthest = begin;
      // Neither may this piece end at the line's end, nor can a splice still be reached.
      if (last - begin > stock && begin + reach < x + half) continue;
      least[i] = Math.min(least[i] as number, count);
      add(count, begin, i, bestBefore[count] as number, bestSplice[count] as number);
    }
    starts[i + 1] = labels.count.length;
  }
  return finish === null ? null : { layout: trace(problem, labels, finish), least };
}

const better = (a: Finish | null, b: Finish): Finish => (a === null || b.count < a.count ? b : a);

function trace(problem: LineProblem, labels: Labels, finish: Finish): LineLayout {
  const supports = [problem.places[finish.place] as number];
  const splices: number[] = [];
  for (let k = finish.before; k >= 0; k = labels.before[k] as number) {
    supports.push(problem.places[labels.place[k] as number] as number);
    const at = labels.splice[k] as number;
    if (at !== NOWHERE) splices.push(at);
  }
  supports.reverse();
  splices.reverse();
  return { supports, splices, cuts: cutsOf(problem, splices) };
}
