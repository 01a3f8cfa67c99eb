import { z } from 'zod';
import type { FillTable, FillTables, SinglesRule } from '../../trade/fillTables.ts';
import { above0 } from '../fields.ts';
import { citedShape } from '../source.ts';
import { type Cite, cited, rising, risingRows, ruled } from './kind.ts';

const bottom = z.enum(['ventilated', 'solid']);

const channelFillShape = z.strictObject({
  ...ruled('channel fill'),
  bottom,
  table: cited,
  source: citedShape,
  /** Inside width; the greatest area of one cable alone; the greatest sum of areas of several. */
  rows: risingRows(
    z.strictObject({ widthIn: above0, oneIn2: above0, severalIn2: above0 }),
    (r) => r.widthIn,
    'widths',
  ).refine((rows) => rows.every((r) => r.severalIn2 <= r.oneIn2), {
    error: 'several cables are allowed more than one alone',
    params: { todo: 'look whether the two columns are exchanged' },
  }),
});

export const channelFill = {
  shape: channelFillShape,
  read: ({ table, rows, source }: z.infer<typeof channelFillShape>, cite: Cite): FillTable => ({
    table,
    rows,
    sources: cite.each(source),
  }),
};

const channelSinglesShape = z.strictObject({
  ...ruled('channel singles'),
  /** The one kind of bottom that may hold single conductors. */
  bottom,
  table: cited,
  /** Inside widths that the rule names. */
  widthsIn: z
    .array(above0)
    .min(1)
    .refine(
      rising((w: number) => w),
      { error: 'widths must rise', params: { todo: 'put them in order' } },
    ),
  source: citedShape,
  /** Where the condition on who services the place stands. */
  qualified: citedShape,
  /** Where the adding of shares of both makes stands. */
  together: citedShape,
});

export const channelSingles = {
  shape: channelSinglesShape,
  read: (
    rule: z.infer<typeof channelSinglesShape>,
    cite: Cite,
  ): { readonly singles: SinglesRule } & Pick<FillTables, 'together'> => ({
    singles: {
      table: rule.table,
      bottom: rule.bottom,
      widthsIn: rule.widthsIn,
      sources: cite.each(rule.source),
      qualified: cite.each(rule.qualified),
    },
    together: cite.each(rule.together),
  }),
};
