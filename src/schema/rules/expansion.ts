import { z } from 'zod';
import {
  EXPANSION_METALS,
  type ExpansionMetal,
  type ExpansionTable,
  type MetalRate,
} from '../../trade/expansion.ts';
import { above0 } from '../fields.ts';
import { citedOnceShape } from '../source.ts';
import { type Cite, cited, risingRows, ruled } from './kind.ts';

const metal = z.enum(EXPANSION_METALS);

const shape = z.strictObject({
  ...ruled('expansion'),
  table: cited,
  /** What a metal gains for one degree Fahrenheit, in millionths of its length; and where its column was seen. */
  metals: z.record(
    metal,
    z.strictObject({ millionthsPerF: above0, source: citedOnceShape, column: citedOnceShape }),
  ),
  /** Where the setting of the gap stands. */
  gap: citedOnceShape,
  /** Range of temperature, and the spacing in feet for 1 in of movement. */
  rows: risingRows(
    z.strictObject({ rangeF: above0, spacingFt: z.record(metal, above0) }),
    (r) => r.rangeF,
    'ranges',
  ),
});

export const expansionTable = {
  shape,
  read: (rule: z.infer<typeof shape>, cite: Cite): Omit<ExpansionTable, 'movement'> => {
    const rates = EXPANSION_METALS.map((name): readonly [ExpansionMetal, MetalRate] => {
      const { millionthsPerF, source, column } = rule.metals[name];
      return [name, { perF: millionthsPerF / 1e6, source: cite.one(source), column: cite.one(column) }];
    });
    return {
      table: rule.table,
      metals: Object.fromEntries(rates) as Record<ExpansionMetal, MetalRate>,
      rows: rule.rows.map(({ rangeF, spacingFt }) => ({ rangeF, ...spacingFt })),
      gap: cite.one(rule.gap),
    };
  },
};
