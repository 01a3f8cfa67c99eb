import { z } from 'zod';
import { compareSizes, type JumperTable, SIZES } from '../../trade/jumper.ts';
import { above0 } from '../fields.ts';
import { citedShape } from '../source.ts';
import { type Cite, cited, risingRows, ruled } from './kind.ts';

const size = z.enum(SIZES);

const shape = z.strictObject({
  ...ruled('jumper size'),
  table: cited,
  source: citedShape,
  /** Where it stands that one jumper is sized for the largest device. */
  largest: citedShape,
  /** Rating or setting of the device, and the smallest wire of either metal. */
  rows: risingRows(
    z.strictObject({ deviceA: above0, copper: size, aluminium: size }),
    (r) => r.deviceA,
    'devices',
  ).refine((rows) => rows.every((r) => compareSizes(r.copper, r.aluminium) <= 0), {
    error: 'aluminium is thinner than copper',
    params: { todo: 'look whether the two columns are exchanged' },
  }),
});

export const jumperSize = {
  shape,
  read: ({ table, rows, source, largest }: z.infer<typeof shape>, cite: Cite): JumperTable => ({
    table,
    rows,
    sources: cite.each(source),
    largest: cite.each(largest),
  }),
};
