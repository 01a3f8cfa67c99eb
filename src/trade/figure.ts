/** A number as a step shows it: few decimals, no trailing zeros, a point and no grouping. Results stay unrounded. */
export function figure(n: number, decimals = 4): string {
  return String(Number(n.toFixed(decimals)));
}

/** Two numbers that are held against each other: with more decimals where four would make them look the same. */
export function figures(a: number, b: number): readonly [string, string] {
  return figure(a) === figure(b) ? [figure(a, 9), figure(b, 9)] : [figure(a), figure(b)];
}

/** A number that may be far below 1, by its first digits. */
export function digits(n: number, count = 4): string {
  return String(Number(n.toPrecision(count)));
}
