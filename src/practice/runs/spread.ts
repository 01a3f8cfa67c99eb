/** Supports of one line drawn apart evenly, its splices where they are: as a good hand would set them. */
import type { LineLayout, LineProblem } from '../../run/layout/line.ts';
import { TICKS_PER_INCH } from '../../trade/length.ts';

/** What hangs over bends the channel more than a span of that length: it weighs twice as long. */
const OVERHANG = 2;

/**
 * The same line with as many supports and the least sum of squared spans, exactly: places are gone through with the
 * best way to stand at each with so many supports up to it.
 */
export function spread(
  problem: LineProblem,
  { supports: { length: count }, splices, cuts }: LineLayout,
): LineLayout {
  const { places, firstBy, lastFrom, channel, maxSpan } = problem;
  const square = (length: number) => (length / TICKS_PER_INCH) ** 2;
  /** By number of supports, then by place: least cost, and the place before. */
  const first = splices[0] ?? Number.POSITIVE_INFINITY;
  let costs = places.map((x) =>
    x <= firstBy && x < first ? square(OVERHANG * (x - channel[0])) : Number.POSITIVE_INFINITY,
  );
  const before: number[][] = [[]];
  for (let k = 1; k < count; k++) {
    const next: number[] = [];
    const from: number[] = [];
    let low = 0;
    for (const [i, x] of places.entries()) {
      while ((places[low] as number) < x - maxSpan) low++;
      next[i] = Number.POSITIVE_INFINITY;
      for (let j = low; j < i; j++) {
        const cost = (costs[j] as number) + square(x - (places[j] as number));
        if (cost >= (next[i] as number)) continue;
        const end = k === 1 || k === count - 1;
        if (!mayStand(problem, splices, places[j] as number, x, end)) continue;
        next[i] = cost;
        from[i] = j;
      }
    }
    costs = next;
    before.push(from);
  }
  const last = splices.at(-1) ?? Number.NEGATIVE_INFINITY;
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const [i, x] of places.entries()) {
    const cost = (costs[i] as number) + square(OVERHANG * (channel[1] - x));
    if (x < lastFrom || x <= last || cost >= least) continue;
    best = i;
    least = cost;
  }
  const supports: number[] = [];
  for (let k = count - 1, i = best; k >= 0 && i >= 0; k--) {
    supports.unshift(places[i] as number);
    i = before[k]?.[i] ?? -1;
  }
  return { supports, splices, cuts };
}

/** Whether the splices let two neighbouring supports stand there. */
function mayStand(
  { splice: { length, share } }: LineProblem,
  splices: readonly number[],
  a: number,
  b: number,
  end: boolean,
): boolean {
  let inside = 0;
  for (const at of splices) {
    if (at < a || at > b) continue;
    inside += 1;
    const nearest = Math.min(at - a, b - at);
    if (end || inside > 1 || 2 * nearest < length || nearest > share * (b - a)) return false;
  }
  return true;
}
