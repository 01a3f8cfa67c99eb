/** A run as JSON that reads back to the same run: lengths as numbers of inches, fields that are not given left out. */
import { inches, type Ticks } from '../trade/length.ts';
import type { Run } from './types.ts';

/** Names of fields that hold a length, or lengths, wherever in a run they stand. */
const LENGTHS: ReadonlySet<string> = new Set([
  'stock',
  'kerf',
  'length',
  'open',
  'at',
  'gap',
  'insertions',
  'maxSpan',
]);

/**
 * @returns plain JSON values. A number of inches is as near to its ticks as a number can be, far nearer than half a
 *          tick, so that reading it gives the very same ticks.
 */
export function runJson(run: Run): unknown {
  return plain(run);
}

function plain(value: unknown, isLength = false): unknown {
  if (typeof value === 'number') return isLength ? inches(value as Ticks) : value;
  if (Array.isArray(value)) return value.map((one: unknown) => plain(one, isLength));
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).filter(([, one]) => one !== undefined);
  return Object.fromEntries(fields.map(([name, one]) => [name, plain(one, LENGTHS.has(name))]));
}
