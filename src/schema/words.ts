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

/** Says a sentence in one language. */
export type Speak = (say: Say) => string;

const place = /\{([A-Za-z][A-Za-z0-9]*)\}/g;

/** Names of the places of a text, each once, in order of the alphabet. */
export function placesOf(text: string): readonly string[] {
  return [...new Set([...text.matchAll(place)].map((m) => m[1] ?? ''))].sort();
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
    return text.replaceAll(place, (_, name: string) => {
      const value = values[name];
      if (value === undefined) throw new Error(`${say} has no value for {${name}}`);
      return String(value);
    });
  };
}
