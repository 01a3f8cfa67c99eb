/** A document that figures are taken from: content/sources/ID.yaml. */
import { z } from 'zod';
import type { Source } from '../trade/answer.ts';
import { plainId } from './ids.ts';

const text = z.string().min(1);

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
        /** `page`: read on a page; `memory`: remembered; `common practice`: no document; `training value`: invented. */
        seen: z.enum(['page', 'memory', 'common practice', 'training value']),
        /** What a reader should know about how it was seen. */
        note: text.optional(),
      }),
    )
    .min(1),
  /** What was taken: where it stands, as cited, and in our words what it says. */
  took: z.array(z.strictObject({ where: text, what: text })).min(1),
});
/** One file of content/sources. */
export type SourceEntry = z.infer<typeof sourceShape>;

/** How a rule names its source: the entry and a place that the entry lists under `took`. */
export const citedShape = z.strictObject({ id: plainId, where: text });
export type Cited = z.infer<typeof citedShape>;

/** The source as an answer carries it, or what is missing: the entry, the place in it, or the edition. */
export function cite(
  { id, where }: Cited,
  edition: string | undefined,
  entries: ReadonlyMap<string, SourceEntry>,
): Source | 'entry' | 'where' | 'edition' {
  const entry = entries.get(id);
  if (entry === undefined) return 'entry';
  if (!entry.took.some((t) => t.where === where)) return 'where';
  const known =
    edition === undefined ? entry.editions.at(-1) : entry.editions.find((e) => e.edition === edition);
  if (known === undefined) return 'edition';
  return { id, document: entry.document, edition: known.edition, where, seen: known.seen };
}
