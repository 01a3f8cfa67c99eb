import { z } from 'zod';
import { type Speak, speakerOver } from '../trade/say.ts';

/**
 * A file of words: two levels, `{"group": {"key": "text with {place}"}}`. Which file of a language holds a group is
 * for the reader's convenience only; a group may be spread over files, a key may not stand twice.
 */
export const wordsShape = z.record(
  z
    .string()
    .regex(/^[A-Za-z][A-Za-z0-9-]*$/, { error: 'the name of a group is letters, digits and hyphens' }),
  z.record(
    z.string().regex(/^[A-Za-z0-9][A-Za-z0-9-]*$/, { error: 'a key is letters, digits and hyphens' }),
    z.string().min(1, { error: 'an empty text' }),
  ),
);
export type WordsFile = z.infer<typeof wordsShape>;

/** The language that every text has; the others are held against it, and it is taken when none is named. */
export const FIRST_LANGUAGE = 'en';

/** All texts of one language by `group.key`. */
export type Words = ReadonlyMap<string, string>;

/** All files of words as one table a language. */
export function wordTables(
  files: readonly { lang: string | undefined; data: WordsFile }[],
): ReadonlyMap<string, Words> {
  const tables = new Map<string, Map<string, string>>();
  for (const { lang = '', data } of files) {
    const table = tables.get(lang) ?? new Map<string, string>();
    tables.set(lang, table);
    for (const [group, keys] of Object.entries(data)) {
      for (const [key, text] of Object.entries(keys)) table.set(`${group}.${key}`, text);
    }
  }
  return tables;
}

/** A speaker for one language; see `speakerOver` for what it throws. */
export const speaker = (words: Words): Speak => speakerOver((key) => words.get(key));
