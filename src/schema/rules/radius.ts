import { z } from 'zod';
import { RADIUS_CABLES, type RadiusCable, type RadiusRule, type RadiusTable } from '../../trade/radius.ts';
import { above0, eachEdition, perEdition } from '../fields.ts';
import { citedShape } from '../source.ts';
import { type Cite, cited, ruled } from './kind.ts';

/** Multiples of the diameter, by diameters rising; the last row has no end. */
const plain = z
  .array(z.strictObject({ upToIn: above0.nullable(), multiple: above0 }))
  .min(1)
  .refine(
    (rows) =>
      rows.at(-1)?.upToIn === null &&
      rows.slice(0, -1).every((r, i) => r.upToIn !== null && r.upToIn > (rows[i - 1]?.upToIn ?? 0)),
    {
      error: 'diameters must rise, and the last row have no end',
      params: { todo: 'put the rows in order, and write upToIn: null in the last' },
    },
  );

const one = z
  .strictObject({
    /** As each edition numbers the section; left out where none speaks of it. */
    section: z.union([cited, perEdition(cited)]).optional(),
    source: citedShape.optional(),
    plain: plain.optional(),
    shielded: above0.optional(),
    conductors: z.strictObject({ ofConductor: above0, ofCable: above0 }).optional(),
  })
  .refine((c) => (c.source === undefined) === (c.section === undefined), {
    error: 'a section and its source stand together',
    params: { todo: 'give both or neither' },
  });

const shape = z.strictObject({
  ...ruled('bend radius'),
  cables: z.record(z.enum(RADIUS_CABLES), one),
});

export const bendRadius = {
  shape,
  read: ({ cables }: z.infer<typeof shape>, cite: Cite): RadiusTable => {
    const rules = RADIUS_CABLES.map((cable): readonly [RadiusCable, RadiusRule] => {
      const { section, source, plain = null, shielded = null, conductors = null } = cables[cable];
      return [
        cable,
        {
          section: section === undefined ? null : eachEdition(section),
          sources: source === undefined ? null : cite.each(source),
          plain,
          shielded,
          conductors,
        },
      ];
    });
    return Object.fromEntries(rules) as Record<RadiusCable, RadiusRule>;
  },
};
