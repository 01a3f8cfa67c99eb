/** A figure, or why there is none. */
export type Why = 'no spread' | 'one class only' | 'too few';
export type Figure = { readonly value: number } | { readonly none: Why };

export const none = (why: Why): Figure => ({ none: why });

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Of the population: divided by the number of values. */
export function variance(values: readonly number[]): number {
  const middle = mean(values);
  return mean(values.map((value) => (value - middle) ** 2));
}
