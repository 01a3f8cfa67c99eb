/** A number as a step shows it: at most four decimals, no trailing zeros, a point and no grouping. Results stay unrounded. */
export function figure(n: number): string {
  return String(Number(n.toFixed(4)));
}
