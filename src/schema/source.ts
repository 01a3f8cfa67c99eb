/** A document that figures are taken from: content/sources/ID.yaml. */
import { z } from 'zod';
import type { Source } from '../trade/answer.ts';
import { EDITIONS } from '../trade/editions.ts';
import { perEdition } from './fields.ts';
import { plainId } from './ids.ts';

const text = z.string().min(1);
/** `page`: read on a page; `memory`: remembered; `common practice`: no document; `training value`: invented. */
const seen = z.enum(['page', 'memory', 'common practice', 'training value']);

export const sourceShape = z.strictObject({
  id: plainId,
  /** Title as it is cited in answers. */
  document: text,
  /** Every edition that is cited, and how its figures came here. */
  editions: z
    .array(
      z.strictObject({
        /** As cited: a year, or `no edition`. */
        edition: text,
        seen,
        /** What a reader should know about how it was seen. */
        note: text.optional(),
      }),
    )
    .min(1),
  /** What was taken: where it stands, as cited, and in our words what it says. */
  took: z
    .array(
      z.strictObject({
        where: text,
        what: text,
        /** How this place was seen, where otherwise than its edition: in all of them, or edition by edition. */
        seen: z.union([seen, z.record(text, seen)]).optional(),
      }),
    )
    .min(1),
});
/** One file of content/sources. */
export type SourceEntry = z.infer<typeof sourceShape>;

/**
 * How a rule of the code names its source: the entry, and a place that the entry lists under `took`, the same in every
 * edition or one for each.
 */
export const citedShape = z.strictObject({ id: plainId, where: z.union([text, perEdition(text)]) });
export type Cited = z.infer<typeof citedShape>;

/** How a rule names a source that has nothing to do with editions of the code: with the edition that was seen. */
export const citedOnceShape = z.strictObject({ id: plainId, edition: text, where: text });
export type CitedOnce = z.infer<typeof citedOnceShape>;

/** What a citation may lack: the entry, the place in it, or the edition. */
export type Lacking = 'entry' | 'where' | 'edition';

/** The source as an answer carries it, or what is missing. */
export function cite(
  { id, where }: { readonly id: string; readonly where: string },
  edition: string,
  entries: ReadonlyMap<string, SourceEntry>,
): Source | Lacking {
  const entry = entries.get(id);
  if (entry === undefined) return 'entry';
  const took = entry.took.find((t) => t.where === where);
  if (took === undefined) return 'where';
  const known = entry.editions.find((e) => e.edition === edition);
  if (known === undefined) return 'edition';
  const own = typeof took.seen === 'string' ? took.seen : took.seen?.[edition];
  return { id, document: entry.document, edition: known.edition, where, seen: own ?? known.seen };
}

/** Every place that a citation names, with the edition it is looked up in. */
export function placesCited(
  cited: Cited | CitedOnce,
): readonly { readonly where: string; readonly edition: string }[] {
  if ('edition' in cited) return [cited];
  const { where } = cited;
  return EDITIONS.map((e) => ({ where: typeof where === 'string' ? where : where[e], edition: String(e) }));
}
