/**
 * Whether two trainers who saw the same work say the same of it, beyond what chance would give: Cohen's kappa
 * (Educational and Psychological Measurement 20, 1960), (p_o − p_e)/(1 − p_e).
 */
import { type Figure, none } from './figure.ts';

export interface Agreement {
  /** Pieces of work that both saw. */
  readonly n: number;
  /** Those of which both said the same. */
  readonly agreed: number;
  /** Share that would agree if each said as often what he said, and blindly; `null` without any. */
  readonly byChance: number | null;
  readonly kappa: Figure;
}

/**
 * @param table  how often the one said the row and the other the column; square, whole counts from 0
 * @throws {RangeError} a table that is not square
 */
export function kappa(table: readonly (readonly number[])[]): Agreement {
  if (table.some((row) => row.length !== table.length)) throw new RangeError('a table that is not square');
  const rows = table.map((row) => row.reduce((sum, count) => sum + count, 0));
  const columns = table.map((_, j) => table.reduce((sum, row) => sum + (row[j] ?? 0), 0));
  const n = rows.reduce((sum, count) => sum + count, 0);
  const agreed = table.reduce((sum, row, i) => sum + (row[i] ?? 0), 0);
  if (n === 0) return { n, agreed, byChance: null, kappa: none('too few') };
  // In whole numbers, so that "certain to agree" is found exactly.
  const chance = rows.reduce((sum, row, i) => sum + row * (columns[i] ?? 0), 0);
  const byChance = chance / (n * n);
  if (chance === n * n) return { n, agreed, byChance, kappa: none('one class only') };
  return { n, agreed, byChance, kappa: { value: (agreed * n - chance) / (n * n - chance) } };
}
