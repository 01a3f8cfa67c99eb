import { z } from 'zod';
import type { AmpacityTable } from '../../trade/ampacity.ts';
import { above0, count, eachEdition, perEdition } from '../fields.ts';
import { citedShape } from '../source.ts';
import { type Cite, cited, ruled } from './kind.ts';

const percent = z.number().gt(0).lte(100);

const shape = z.strictObject({
  ...ruled('ampacity'),
  /** As each edition numbers the table. */
  table: z.union([cited, perEdition(cited)]),
  source: citedShape,
  /** Conductors up to and with `to`, and the percentage; the last row has no end. */
  rows: z
    .array(z.strictObject({ to: count.nullable(), percent }))
    .min(1)
    .refine(
      (rows) =>
        rows.at(-1)?.to === null &&
        rows.slice(0, -1).every((r, i) => r.to !== null && r.to > (rows[i - 1]?.to ?? 0)),
      {
        error: 'conductors must rise, and the last row have no end',
        params: { todo: 'put the rows in order, and write to: null in the last' },
      },
    ),
  cover: z.strictObject({ section: cited, source: citedShape, aboveFt: above0, percent }),
});

export const ampacityTable = {
  shape,
  read: ({ table, rows, source, cover }: z.infer<typeof shape>, cite: Cite): AmpacityTable => ({
    table: eachEdition(table),
    rows,
    sources: cite.each(source),
    cover: { section: cover.section, aboveFt: cover.aboveFt, percent: cover.percent },
    coverSources: cite.each(cover.source),
  }),
};
