/**
 * The best filling of one bar by branch and bound, for bars of so many units that a table over every room is slow.
 * Pieces are tried from the dearest by size; a branch is left when filling the rest of the bar at the next price cannot
 * beat the best so far.
 */
import type { Pattern } from './plan.ts';

export interface Filling {
  readonly value: number;
  readonly pattern: Pattern;
  /** Whether `value` is the greatest there is; false when the search was ended before. */
  readonly exact: boolean;
}

/** @param least  a filling is looked for only if it is worth more than this */
export function bestFilling(
  sizes: ArrayLike<number>,
  counts: ArrayLike<number>,
  values: ArrayLike<number>,
  room: number,
  least: number,
  mostNodes: number,
): Filling {
  const order = Array.from({ length: sizes.length }, (_, i) => i)
    .filter((i) => (values[i] as number) > 0 && (sizes[i] as number) <= room && (counts[i] as number) > 0)
    .sort(
      (a, b) => (values[b] as number) / (sizes[b] as number) - (values[a] as number) / (sizes[a] as number),
    );
  const n = order.length;
  const size = Float64Array.from(order, (i) => sizes[i] as number);
  const value = Float64Array.from(order, (i) => values[i] as number);
  const price = Float64Array.from(order, (_, k) => (value[k] as number) / (size[k] as number));
  // Smallest size from a place on: below it nothing more fits.
  const smallest = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  for (let k = n - 1; k >= 0; k--) smallest[k] = Math.min(smallest[k + 1] as number, size[k] as number);
  const taken = new Int32Array(n);
  let best = least;
  let found: Int32Array | undefined;
  let nodes = 0;
  const visit = (from: number, left: number, worth: number): void => {
    if (worth > best) {
      best = worth;
      found = taken.slice();
    }
    if (left < (smallest[from] as number)) return;
    for (let k = from; k < n; k++) {
      const fits = size[k] as number;
      if (fits > left) continue;
      if (worth + left * (price[k] as number) <= best + SLACK || nodes > mostNodes) return;
      const most = Math.min(counts[order[k] as number] as number, Math.floor(left / fits));
      for (let t = most; t > 0; t--) {
        nodes++;
        taken[k] = t;
        visit(k + 1, left - t * fits, worth + t * (value[k] as number));
      }
      taken[k] = 0;
    }
  };
  visit(0, room, 0);
  const pairs = order.map((kind, k) => [kind, found?.[k] ?? 0] as const).filter(([, times]) => times > 0);
  return {
    value: found === undefined ? 0 : best,
    pattern: pairs.sort(([a], [b]) => a - b).flat(),
    exact: nodes <= mostNodes,
  };
}
const SLACK = 1e-12;
