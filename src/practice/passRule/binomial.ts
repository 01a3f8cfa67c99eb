/** Chances of counts, exact but for rounding: sums of binomial terms, each from its logarithm. Source: any textbook; checked in tests/practice/passRule.test.ts. */

/** From here on the series is exact to the last place; below it, the product is. */
const SERIES_FROM = 32;
const HALF_LOG_2PI = Math.log(2 * Math.PI) / 2;

/** ln n!, n whole from 0. Stirling's series (Abramowitz and Stegun 6.1.41). */
function logFactorial(n: number): number {
  if (n < SERIES_FROM) {
    let product = 1;
    for (let k = 2; k <= n; k++) product *= k;
    return Math.log(product);
  }
  const inverse = 1 / n;
  const square = inverse * inverse;
  const rest = inverse * (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square / 1680)));
  return (n + 0.5) * Math.log(n) - n + HALF_LOG_2PI + rest;
}

/** Chance of exactly `k` of `n` where each has the chance `p`. */
export function exactly(k: number, n: number, p: number): number {
  if (k < 0 || k > n) return 0;
  if (p <= 0) return k === 0 ? 1 : 0;
  if (p >= 1) return k === n ? 1 : 0;
  const ways = logFactorial(n) - logFactorial(k) - logFactorial(n - k);
  return Math.exp(ways + k * Math.log(p) + (n - k) * Math.log1p(-p));
}

/** Chance of `k` or more of `n`. */
export function atLeast(k: number, n: number, p: number): number {
  let sum = 0;
  for (let i = n; i >= Math.max(k, 0); i--) sum += exactly(i, n, p);
  return Math.min(sum, 1);
}

/** Chance of `k` or fewer of `n`. */
export const atMost = (k: number, n: number, p: number): number => atLeast(n - k, n, 1 - p);
