/**
 * What the site has adopted in writing: content/site/ID.yaml, one file a paper. A value of it wins over a training value
 * and is said with who signed it and on what day; what a code states it may only make stricter.
 */
import { z } from 'zod';
import type { Catalogue, Item } from '../run/catalogue.ts';
import { EDITIONS } from '../trade/editions.ts';
import type { Limit } from '../trade/limit.ts';
import { above0, share } from './fields.ts';
import { plainId, taskId } from './ids.ts';
import { lengthAbove0, lengthFrom0 } from './length.ts';

const text = z.string().min(1);

/** Values that a site adopts one of, by the name they have in its paper; what each replaces is said beside it. */
const single = {
  /** Farthest support from a face that needs one (24 in). */
  'support-within': lengthAbove0,
  /** Farthest splice from its nearest support, as a share of the span (1/4). */
  'splice-share': share,
  /** How far an insertion may differ from the catalogue's (1/16 in). */
  'insertion-off': lengthFrom0,
  /** Widest opening of a butt joint (1/8 in). */
  'butt-gap': lengthFrom0,
  /** How far an expansion gap may differ from the wanted one (1/16 in). */
  'expansion-off': lengthFrom0,
  /** What an expansion splice takes up (1 in). */
  movement: lengthAbove0,
  /** Longest open gap (6 ft by the code: not above it). */
  'open-gap': lengthAbove0,
  /** How far channel goes into a splice where none is given (5 in). */
  insertion: lengthAbove0,
  /** How far channel goes into a ladder tray, tray or instrument (1 1/2 in). */
  'socket-insertion': lengthAbove0,
  /** What the saw takes where none is given (1/8 in). */
  kerf: lengthFrom0,
  /** Edition of NFPA 70 in force (the newest known here). */
  edition: z.literal(EDITIONS),
  /** Whether a witness must himself be shown in the task he signs for, whatever the task (no). */
  'own-standing': z.boolean(),
} as const;

/** What a tolerance is of. */
export const TOLERANCES = [
  'worked-length',
  'mark',
  'second-reading',
  'cut-into-sleeve',
  'cut-to-butt',
  'out-of-square',
  'hole',
  'step-at-splice',
] as const;

/** Values of which there are several, each of something. */
const several = {
  /** Tightening, lb-ft, by the thread: `1/4-20`. */
  torque: { of: text, value: above0 },
  /** Acceptance, either way or at most, by what is measured. */
  tolerance: { of: z.enum(TOLERANCES), value: lengthFrom0 },
  /** How long a showing is good for, by task. */
  months: { of: taskId, value: z.int().min(1).max(120) },
  /** Whether a second witness is wanted, by task. */
  second: { of: taskId, value: z.boolean() },
  /** Whether a witness must himself be shown, by task; it goes before `own-standing`. */
  'own-standing-in': { of: taskId, value: z.boolean() },
  /** Values of a catalogue item as the catalogue gives them: all, or the fields named, as `loadTable`. */
  item: { of: plainId, value: z.union([z.literal('all'), z.array(text).min(1)]) },
} as const;

type SingleKey = keyof typeof single;
type SeveralKey = keyof typeof several;
type SingleValue<K extends SingleKey> = z.output<(typeof single)[K]>;
type SeveralValue<K extends SeveralKey> = z.output<(typeof several)[K]['value']>;

const row = <K extends string, V extends z.ZodType>(key: K, value: V) =>
  z.strictObject({ key: z.literal(key), value });
const rowOf = <K extends string, O extends z.ZodType, V extends z.ZodType>(
  key: K,
  { of, value }: { of: O; value: V },
) => z.strictObject({ key: z.literal(key), of, value });

export const siteShape = z.strictObject({
  id: plainId,
  /** Title of the paper, with its number and revision. */
  document: text,
  /** Who signed it for the site: name and office. */
  by: text,
  /** The day it was signed. */
  on: z.iso.date({ error: 'a day, as 2026-01-12' }),
  values: z
    .array(
      z.discriminatedUnion('key', [
        row('support-within', single['support-within']),
        row('splice-share', single['splice-share']),
        row('insertion-off', single['insertion-off']),
        row('butt-gap', single['butt-gap']),
        row('expansion-off', single['expansion-off']),
        row('movement', single.movement),
        row('open-gap', single['open-gap']),
        row('insertion', single.insertion),
        row('socket-insertion', single['socket-insertion']),
        row('kerf', single.kerf),
        row('edition', single.edition),
        row('own-standing', single['own-standing']),
        rowOf('torque', several.torque),
        rowOf('tolerance', several.tolerance),
        rowOf('months', several.months),
        rowOf('second', several.second),
        rowOf('own-standing-in', several['own-standing-in']),
        rowOf('item', several.item),
      ]),
    )
    .min(1),
});
/** One file of content/site. */
export type SitePaper = z.output<typeof siteShape>;
export type SiteValue = SitePaper['values'][number];

/** What has been adopted: values of their own, and tables of those that are each of something. */
export type Adopted = {
  readonly [K in SingleKey]?: Limit<SingleValue<K>>;
} & {
  readonly [K in SeveralKey]: ReadonlyMap<string, Limit<SeveralValue<K>>>;
};

/** What a value is called in the one list that no value stands in twice. */
export const nameOf = (value: SiteValue): string => ('of' in value ? `${value.key} ${value.of}` : value.key);

/** All papers as one: a value that stands twice is a fault of content, and the first is taken. */
export function adoptedOf(papers: Iterable<SitePaper>): Adopted {
  const singles: Record<string, Limit<unknown>> = {};
  const maps: Record<SeveralKey, Map<string, Limit<unknown>>> = {
    torque: new Map(),
    tolerance: new Map(),
    months: new Map(),
    second: new Map(),
    'own-standing-in': new Map(),
    item: new Map(),
  };
  for (const { id, document, by, on, values } of papers) {
    const source = { id, document, edition: on, where: by, seen: 'page' } as const;
    for (const value of values) {
      const limit: Limit<unknown> = { value: value.value, source, rests: 'adopted' };
      if ('of' in value) {
        if (!maps[value.key].has(value.of)) maps[value.key].set(value.of, limit);
      } else singles[value.key] ??= limit;
    }
  }
  return { ...singles, ...maps } as Adopted;
}

/** Nothing adopted. */
export const NOTHING_ADOPTED: Adopted = adoptedOf([]);

/** Fields of an item that are no value of it. */
const ABOUT: ReadonlySet<string> = new Set(['id', 'kind', 'origin', 'origins', 'papers']);

/** Fields of an item that hold its values. */
export const valuesOf = (item: Item): readonly string[] => Object.keys(item).filter((f) => !ABOUT.has(f));

/** The catalogue with the origin of every value that the site has adopted, and the paper it stands in. */
export function withAdopted(catalogue: Catalogue, { item: papers }: Adopted): Catalogue {
  return new Map(
    [...catalogue].map(([id, item]): [string, Item] => {
      const limit = papers.get(id);
      if (limit === undefined) return [id, item];
      const fields = limit.value === 'all' ? valuesOf(item) : limit.value;
      const each = <V>(value: V) => Object.fromEntries(fields.map((field) => [field, value]));
      return [
        id,
        {
          ...item,
          origin: limit.value === 'all' ? 'adopted by the site' : item.origin,
          origins: { ...item.origins, ...each('adopted by the site' as const) },
          papers: each(limit.source),
        },
      ];
    }),
  );
}
