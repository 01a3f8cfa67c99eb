/** How far a sheet's items agree, and what one sheet leaves open. Only where the items are common to all. */
import { type Figure, mean, none, variance } from './figure.ts';
import { type Matrix, totalsOf } from './item.ts';

/** Kuder and Richardson's formula 20 (Psychometrika 2, 1937): k/(k−1) · (1 − Σp·q/σ²), σ² of the population. */
export function kr20(matrix: Matrix): Figure {
  const items = matrix[0]?.length ?? 0;
  if (matrix.length < 2 || items < 2) return none('too few');
  const spread = variance(totalsOf(matrix));
  if (spread === 0) return none('no spread');
  const shares = Array.from({ length: items }, (_, i) => mean(matrix.map((row) => (row[i] ? 1 : 0))));
  const within = shares.reduce((sum, p) => sum + p * (1 - p), 0);
  return { value: (items / (items - 1)) * (1 - within / spread) };
}

/** Standard error of measurement, s·√(1 − r), in items: how far one person's total strays from one sheet to the next. */
export function errorOfMeasurement(deviation: number, reliability: number): number {
  return deviation * Math.sqrt(Math.max(0, 1 - reliability));
}

/** The same of a sheet, by its KR-20. */
export function errorOf(matrix: Matrix): Figure {
  const reliability = kr20(matrix);
  if ('none' in reliability) return reliability;
  return { value: errorOfMeasurement(Math.sqrt(variance(totalsOf(matrix))), reliability.value) };
}
