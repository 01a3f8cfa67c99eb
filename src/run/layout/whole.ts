/** A line that one piece of stock spans: no splice is needed, and the supports are spread evenly. */
import type { LineLayout, LineProblem } from './line.ts';

/**
 * Fewest supports of a line of one piece: each as far on as the span lets it stand. They are then drawn apart evenly,
 * the ends overhanging by somewhat more than a third of a span, so that the channel bends least.
 *
 * @param problem  its channel no longer than the stock
 * @returns        null where a face is out of reach, or places lie too far apart
 */
export function wholeLine(problem: LineProblem): LineLayout | null {
  const far = farthest(problem);
  return far === null ? null : { supports: spread(problem, far), splices: [], cuts: [length(problem)] };
}

const length = ({ channel }: LineProblem): number => channel[1] - channel[0];

function farthest({ places, firstBy, lastFrom, maxSpan }: LineProblem): readonly number[] | null {
  let at = places.findLast((x) => x <= firstBy);
  if (at === undefined) return null;
  const supports = [at];
  for (let i = 0; at < lastFrom; ) {
    while (i < places.length && (places[i] as number) <= at + maxSpan) i++;
    const next = places[i - 1] as number;
    if (next === at) return null;
    supports.push(next);
    at = next;
  }
  return supports;
}

const OVERHANG = 0.35;

/** @param far  the places the supports may reach at most */
function spread(problem: LineProblem, far: readonly number[]): readonly number[] {
  const { places, firstBy, lastFrom, maxSpan } = problem;
  const [from, to] = [places[0] as number, places.at(-1) as number];
  const spans = far.length - 1;
  const even = Math.min((to - from) / (spans + 2 * OVERHANG), maxSpan);
  const overhang = (to - from - even * spans) / 2;
  /** How near each must come at least, so that those behind it still reach. */
  const near = [lastFrom];
  for (let j = spans; j > 0; j--) {
    const next = places.find((x) => x >= (near[0] as number)) ?? to;
    near.unshift(next - maxSpan);
  }
  const supports: number[] = [];
  for (let j = 0; j <= spans; j++) {
    const before = supports.at(-1) ?? Number.NEGATIVE_INFINITY;
    const most = Math.min(far[j] as number, j === 0 ? firstBy : before + maxSpan);
    const wanted = from + (spans === 0 ? (to - from) / 2 : overhang + j * even);
    const may = places.filter((x) => x > before && x >= (near[j] as number) && x <= most);
    if (may.length === 0) return far;
    supports.push(may.reduce((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a)));
  }
  return supports;
}
