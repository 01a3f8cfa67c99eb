/**
 * What every kind of rule is made of. A kind is one file here and one line in ../rules.ts: its `shape`, how its file is
 * written, and `read`, what the core gets of it.
 */
import { z } from 'zod';
import type { Source } from '../../trade/answer.ts';
import type { ByEdition } from '../../trade/editions.ts';
import { plainId } from '../ids.ts';
import type { Cited, CitedOnce } from '../source.ts';

/** Fields of every rule: its name, and its kind. */
export const ruled = <K extends string>(kind: K) => ({ id: plainId, kind: z.literal(kind) });

/** Number of a table or section as it is cited in results. */
export const cited = z.string().min(1);

/** Looks sources up: of the code in each edition, or the one edition that the rule names. */
export interface Cite {
  readonly each: (cited: Cited) => ByEdition;
  readonly one: (cited: CitedOnce) => Source;
}

/** Whether a number rises from row to row. */
export function rising<Row>(of: (row: Row) => number) {
  return (rows: readonly Row[]) => rows.every((row, i) => i === 0 || of(row) > of(rows[i - 1] as Row));
}

/** Rows of a table, at least one, with a number that rises. */
export const risingRows = <Row extends z.ZodType>(
  row: Row,
  of: (row: z.output<Row>) => number,
  what: string,
) =>
  z
    .array(row)
    .min(1)
    .refine(rising(of), {
      error: `${what} must rise from row to row`,
      params: { todo: 'put the rows in order' },
    });
