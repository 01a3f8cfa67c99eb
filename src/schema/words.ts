import { z } from 'zod';
import type { Say } from '../trade/answer.ts';

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

/** Says a sentence in one language. */
export type Speak = (say: Say) => string;

const place = /\{([A-Za-z][A-Za-z0-9]*)\}/g;

/** Names of the places of a text, each once, in order of the alphabet. */
export function placesOf(text: string): readonly string[] {
  return [...new Set([...text.matchAll(place)].map((m) => m[1] ?? ''))].sort();
}

/**
 * A text with its places filled.
 * @throws {Error} when a place has no value: a sentence is never shown with a hole in it
 */
export function fill(text: string, values: Readonly<Record<string, string | number>>, what = text): string {
  return text.replaceAll(place, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new Error(`${what} has no value for {${name}}`);
    return String(value);
  });
}

/**
 * A speaker for one language.
 * @throws {Error} when the words lack the key, or the saying a value: both are faults of ours, which the check of
 *   content and the tests find, never a person's
 */
export function speaker(words: Words): Speak {
  return ({ say, values = {} }) => {
    const text = words.get(say);
    if (text === undefined) throw new Error(`no words for ${say}`);
    return fill(text, values, say);
  };
}
