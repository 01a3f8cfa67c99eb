import { z } from 'zod';
import type { GroundpathTable } from '../../trade/groundpath.ts';
import { above0, eachEdition, perEdition } from '../fields.ts';
import { citedShape } from '../source.ts';
import { type Cite, cited, risingRows, ruled } from './kind.ts';

const shape = z.strictObject({
  ...ruled('ground path'),
  /** As each edition numbers the table. */
  table: z.union([cited, perEdition(cited)]),
  source: citedShape,
  /** Where the condition on who services the place stands. */
  qualified: citedShape,
  /** Largest device, and the area of metal; null: this metal is not permitted so high. */
  rows: risingRows(
    z.strictObject({ deviceA: above0, steel: above0.nullable(), aluminium: above0.nullable() }),
    (r) => r.deviceA,
    'devices',
  ),
});

export const groundPath = {
  shape,
  read: ({ table, rows, source, qualified }: z.infer<typeof shape>, cite: Cite): GroundpathTable => ({
    table: eachEdition(table),
    rows,
    sources: cite.each(source),
    qualified: cite.each(qualified),
  }),
};
