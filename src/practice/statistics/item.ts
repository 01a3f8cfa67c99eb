/**
 * Whether those who hold one item hold more of the rest: the point-biserial correlation, (M1 − M0)/σ · √(p·q) with σ of
 * the population (Crocker and Algina, Introduction to Classical and Modern Test Theory, 1986).
 */
import { type Figure, mean, none, variance } from './figure.ts';

/** People by row, items by column: whether it holds. */
export type Matrix = readonly (readonly boolean[])[];

/** How many of its items each person holds. */
export const totalsOf = (matrix: Matrix): readonly number[] =>
  matrix.map((row) => row.filter(Boolean).length);

/** @param item  index of the column */
export function pointBiserial(matrix: Matrix, item: number): Figure {
  return correlation(
    matrix.map((row) => row[item] === true),
    totalsOf(matrix),
  );
}

/** The same without the item in the total: an item always agrees with itself. */
export function pointBiserialWithout(matrix: Matrix, item: number): Figure {
  const held = matrix.map((row) => row[item] === true);
  return correlation(
    held,
    totalsOf(matrix).map((total, i) => total - (held[i] ? 1 : 0)),
  );
}

function correlation(held: readonly boolean[], totals: readonly number[]): Figure {
  if (held.length < 2) return none('too few');
  const those = totals.filter((_, i) => held[i]);
  const others = totals.filter((_, i) => !held[i]);
  if (those.length === 0 || others.length === 0) return none('one class only');
  const spread = variance(totals);
  if (spread === 0) return none('no spread');
  const share = those.length / held.length;
  return { value: ((mean(those) - mean(others)) / Math.sqrt(spread)) * Math.sqrt(share * (1 - share)) };
}
