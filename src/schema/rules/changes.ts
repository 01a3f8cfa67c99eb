import { z } from 'zod';
import { CHANGE_TOPICS, type Change, EDITIONS } from '../../trade/editions.ts';
import { plainId } from '../ids.ts';
import { citedOnceShape } from '../source.ts';
import { type Cite, cited, ruled } from './kind.ts';

const shape = z.strictObject({
  ...ruled('edition changes'),
  changes: z
    .array(
      z.strictObject({
        topic: z.enum(CHANGE_TOPICS),
        /** The edition that brought it: not the first known here. */
        edition: z.literal(EDITIONS.slice(1)),
        /** Where it stood before; left out where it is new. */
        was: cited.optional(),
        now: cited,
        /** Key of the sentence in group `changed` of content/words; it may name {edition}, {was} and {now}. */
        what: plainId,
        source: citedOnceShape,
      }),
    )
    .min(1),
});

export const editionChanges = {
  shape,
  read: ({ changes }: z.infer<typeof shape>, cite: Cite): readonly Change[] =>
    changes.map(({ topic, edition, was = null, now, what, source }) => ({
      topic,
      edition,
      was,
      now,
      what: { say: `changed.${what}`, values: { edition, was: was ?? '', now } },
      source: cite.one(source),
    })),
};
