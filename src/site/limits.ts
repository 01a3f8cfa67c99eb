/** The rows of a fill table among what is known of a draw, taken together into one table. Pure. */
import type { ShownGiven } from '../practice/show.ts';

export interface LimitRow {
  readonly id: string;
  readonly bottom: string;
  readonly width: string;
  /** Greatest area of one cable alone, and of more than one together, as written. */
  readonly one: string;
  readonly several: string;
}

export interface Sorted {
  readonly others: readonly ShownGiven[];
  /** Name of each table with its bottom, once. */
  readonly tables: readonly string[];
  readonly limits: readonly LimitRow[];
}

const ofTable = /^(?:ventilated|solid)-\d+$/;

/**
 * Givens whose id begins with a bottom are rows of its table. They come as text ("Table, bottom, width", two numbers);
 * where one does not read so, all stay as they came, and nothing is lost.
 */
export function sortLimits(givens: readonly ShownGiven[]): Sorted {
  const read = givens.filter(({ id }) => ofTable.test(id)).map(readRow);
  const rows = read.filter((row) => row !== undefined);
  if (rows.length < read.length) return { others: givens, tables: [], limits: [] };
  return {
    others: givens.filter(({ id }) => !ofTable.test(id)),
    tables: [...new Set(rows.map(({ table }) => table))],
    limits: rows.map(({ row }) => row),
  };
}

function readRow({ id, label, text, value }: ShownGiven) {
  const [table, bottom, across, ...more] = label.split(', ');
  const width = across?.match(/\d+(?:\.\d+)?/)?.[0];
  const [one, several, ...rest] = text.match(/\d+(?:\.\d+)?/g) ?? [];
  if (table === undefined || bottom === undefined || width === undefined || more.length > 0) return undefined;
  if (one === undefined || several === undefined || rest.length > 0 || Number(several) !== value)
    return undefined;
  return { table: `${table}, ${bottom}`, row: { id, bottom, width, one, several } };
}
