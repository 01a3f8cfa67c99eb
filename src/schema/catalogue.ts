import { z } from 'zod';
import type { Catalogue, Item } from '../run/catalogue.ts';
import type { Fault } from '../trade/given.ts';
import { plainId as id } from './ids.ts';
import { lengthAbove0 as above0 } from './length.ts';

const origin = z.enum(['training value', 'common practice', 'adopted by the site']);

/** Fields that every item has. */
const entry = {
  id,
  /** Where the item's values come from; left out: as the file says. */
  origin: origin.optional(),
  /** Single values that come from elsewhere, by the name of their field. */
  origins: z.record(z.string(), origin).optional(),
};
/** Fields of whatever belongs to a width of channel. */
const part = {
  ...entry,
  metal: z.enum(['aluminium', 'steel', 'stainless']),
  /** Nominal inside width of the channel. */
  width: above0,
};
const joining = {
  ...part,
  /** May be relied on as part of the ground path without a jumper. */
  grounding: z.boolean(),
};
const fastened = z.strictObject({
  /** Item of kind `fastening`. */
  fastening: id,
  /** In all, for one splice. */
  count: z.int().min(1),
});

const tray = z.strictObject({
  kind: z.literal('tray'),
  ...part,
  bottom: z.enum(['ventilated', 'solid']),
  outsideWidth: above0,
  thickness: above0,
  depth: above0,
  /** One length as it comes. */
  length: above0,
  weightLbPerFt: z.number().positive(),
  /** Uniform load on a simple span, the channel's weight included; spans rising. */
  loadTable: z
    .array(z.strictObject({ spanFt: z.number().positive(), lbPerFt: z.number().positive() }))
    .min(1)
    .refine((rows) => rows.every((r, i) => i === 0 || r.spanFt > (rows[i - 1]?.spanFt ?? 0)), {
      error: 'spans must rise from row to row',
    }),
  /** Centres of the plate holes, from each end. */
  plateHoles: z.array(above0),
  /** Small holes on the centre line of the floor: width, first centre from the end, pitch. */
  webHoles: z.strictObject({ width: above0, first: above0, pitch: above0 }),
  /** What a joint is made with when it names no item. */
  own: z.strictObject({ socketed: id, butt: id, expansion: id, hinged: id }),
});

const sleeve = z
  .strictObject({
    kind: z.literal('sleeve'),
    ...joining,
    length: above0,
    /** How far each channel goes in. */
    insertion: above0,
    fastened,
    /** Centre of the fastener in each leg, from each end of the sleeve. */
    fastenerFromEnd: above0,
  })
  .refine((s) => 2 * s.insertion <= s.length, {
    error: 'two insertions are more than the sleeve',
    path: ['insertion'],
  });

const plate = z.strictObject({
  kind: z.literal('plate'),
  ...joining,
  length: above0,
  /** Across the channel; it lies under the floor, on the centre line. */
  across: above0,
  thickness: above0,
  fastened,
});

const expansion = z.strictObject({ kind: z.literal('expansion'), ...joining, length: above0, fastened });
const hinge = z.strictObject({ kind: z.literal('hinge'), ...joining, takeOut: above0, insertion: above0 });
const elbow = z.strictObject({
  kind: z.literal('elbow'),
  ...joining,
  turn: z.enum(['flat', 'inside', 'outside']),
  angleDeg: z.number().gt(0).lt(180),
  /** Working point to face. */
  takeOut: above0,
  insertion: above0,
  insideRadius: above0,
});
const branch = { ...joining, takeOut: above0, insertion: above0 };
const tee = z.strictObject({ kind: z.literal('tee'), ...branch });
const cross = z.strictObject({ kind: z.literal('cross'), ...branch });
const reducer = z
  .strictObject({
    kind: z.literal('reducer'),
    ...joining,
    /** Inside width of the narrow end; `width` is the wide one. */
    narrow: above0,
    /** Which wall runs straight, seen from the wide end. */
    hand: z.enum(['left', 'right', 'straight']),
    faceToFace: above0,
    takeOut: above0,
    insertion: above0,
  })
  .refine((r) => r.narrow < r.width, { error: 'the narrow end is not narrower', path: ['narrow'] });

/** Hole, bolt and washer are named together, because each is chosen for the other two. */
const fastening = z
  .strictObject({
    kind: z.literal('fastening'),
    ...entry,
    hole: z.strictObject({ name: z.enum(['small', 'plate', 'slot']), width: above0 }),
    bolt: z.strictObject({ head: z.enum(['round', 'hex']), diameter: above0, length: above0 }),
    washer: z.strictObject({ inside: above0, outside: above0 }),
  })
  .refine((f) => f.bolt.diameter < f.hole.width, {
    error: 'the bolt does not go through the hole',
    path: ['bolt', 'diameter'],
  })
  .refine((f) => f.washer.outside > f.hole.width, {
    error: 'the washer falls through the hole',
    path: ['washer', 'outside'],
  });

const item = z.discriminatedUnion('kind', [
  tray,
  sleeve,
  plate,
  expansion,
  hinge,
  elbow,
  tee,
  cross,
  reducer,
  fastening,
]);

/**
 * A file of items: content/catalogue/ID.yaml. Every value has an origin: the file's, unless the item or the single
 * value says otherwise.
 */
export const catalogueShape = z
  .strictObject({ id, origin, items: z.array(item).min(1) })
  .superRefine(({ items }, context) => {
    items.forEach(({ origins = {}, ...fields }, i) => {
      for (const field of Object.keys(origins)) {
        if (!(field in fields) || field === 'id' || field === 'kind') {
          context.addIssue({
            code: 'custom',
            message: 'the item has no such value',
            path: ['items', i, 'origins', field],
            params: { todo: 'name a field of this item' },
          });
        }
      }
    });
  })
  .transform((file) => ({
    ...file,
    items: file.items.map((i): Item => ({ ...i, origin: i.origin ?? file.origin })),
  }));
export type CatalogueFile = z.output<typeof catalogueShape>;

/**
 * All files as one catalogue, and what does not fit together: an id twice, a tray's own item or a fastening that is
 * not there.
 */
export function catalogueOf(files: readonly CatalogueFile[]): {
  catalogue: Catalogue;
  faults: readonly (Fault & { readonly catalogue: string })[];
} {
  const faults: (Fault & { readonly catalogue: string })[] = [];
  const catalogue = new Map<string, Item>();
  const rows = files.flatMap((file) => file.items.map((value, i) => ({ file, value, i })));
  for (const { file, value, i } of rows) {
    if (catalogue.has(value.id)) {
      faults.push({
        catalogue: file.id,
        field: `items[${i}].id`,
        value: value.id,
        message: 'an item of this id is there already',
        todo: 'give it another id, or take one out',
      });
    }
    catalogue.set(value.id, value);
  }
  for (const { file, value, i } of rows) {
    for (const [field, name, kind] of wantedBy(value)) {
      if (catalogue.get(name)?.kind === kind) continue;
      faults.push({
        catalogue: file.id,
        field: `items[${i}].${field}`,
        value: name,
        message: `the catalogue has no ${kind} of this id`,
        todo: `name one of ${[...catalogue.values()].flatMap((c) => (c.kind === kind ? [c.id] : [])).join(' ')}`,
      });
    }
  }
  return { catalogue, faults };
}

/** Names that an item gives of others: field, id, kind wanted. */
function wantedBy(of: Item): readonly (readonly [string, string, Item['kind']])[] {
  if (of.kind === 'tray') {
    return [
      ['own.socketed', of.own.socketed, 'sleeve'],
      ['own.butt', of.own.butt, 'plate'],
      ['own.expansion', of.own.expansion, 'expansion'],
      ['own.hinged', of.own.hinged, 'hinge'],
    ];
  }
  return 'fastened' in of ? [['fastened.fastening', of.fastened.fastening, 'fastening']] : [];
}
