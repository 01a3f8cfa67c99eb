/** Intervals for a share of which `held` of `n` was seen. Confidence is two-sided, between 0 and 1. */
import { atLeast, atMost } from './binomial.ts';

export interface Interval {
  readonly low: number;
  readonly high: number;
  /** Two-sided: what lies outside is shared equally between the ends. */
  readonly confidence: number;
}

/** Where nothing else is stated. */
export const USUAL_CONFIDENCE = 0.95;

/** Between 0 and 1, where a function that rises there reaches `value`. Halved until no number lies between. */
export function whereRises(rising: (p: number) => number, value: number): number {
  let low = 0;
  let high = 1;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    if (rising(middle) < value) low = middle;
    else high = middle;
  }
}

/**
 * The exact interval of Clopper and Pearson (Biometrika 26, 1934): outside it, what was seen or worse has less than
 * half of the rest.
 * @param held  whole, from 0 to `n`; with `n` 0 nothing is known: 0 to 1
 */
export function clopperPearson(held: number, n: number, confidence = USUAL_CONFIDENCE): Interval {
  const tail = (1 - confidence) / 2;
  return {
    low: held === 0 ? 0 : whereRises((p) => atLeast(held, n, p), tail),
    high: held === n ? 1 : whereRises((p) => 1 - atMost(held, n, p), 1 - tail),
    confidence,
  };
}

/** The interval of Wilson (J. Am. Stat. Assoc. 22, 1927): near its confidence on average, and narrower than the exact one. */
export function wilson(held: number, n: number, confidence = USUAL_CONFIDENCE): Interval {
  if (n === 0) return { low: 0, high: 1, confidence };
  const z2 = normalQuantile((1 + confidence) / 2) ** 2;
  const share = held / n;
  const middle = (share + z2 / (2 * n)) / (1 + z2 / n);
  const half = Math.sqrt(z2 * ((share * (1 - share)) / n + z2 / (4 * n * n))) / (1 + z2 / n);
  // At the ends the two are equal but for rounding.
  return {
    low: held === 0 ? 0 : Math.max(0, middle - half),
    high: held === n ? 1 : Math.min(1, middle + half),
    confidence,
  };
}

/** How many in a row, none missed, make one sure to `confidence` (one-sided) of at least `share`: ln(1 − C) / ln R, up. */
export function successRun(confidence: number, share: number): number {
  const n = Math.log1p(-confidence) / Math.log(share);
  return Math.max(1, Math.ceil(n - 1e-9));
}

/** Standard normal chance below `x`, from 0 to 8: a series whose terms are all above 0 (Abramowitz and Stegun 26.2.11). */
function normalBelow(x: number): number {
  let term = x;
  let sum = x;
  for (let k = 3; term > sum * 1e-17; k += 2) {
    term *= (x * x) / k;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
}

/** @param share  from 0.5, below 1 */
export function normalQuantile(share: number): number {
  return 8 * whereRises((x) => normalBelow(8 * x), share);
}
