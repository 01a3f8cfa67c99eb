/** Texts with `{places}`, and what speaks them. Every room that fills a place does it here, so that none leaves a hole. */
import type { Say } from './answer.ts';

/** Says a sentence in one language. */
export type Speak = (say: Say) => string;

const PLACE = /\{([A-Za-z][A-Za-z0-9]*)\}/g;

/** Names of the places of a text, each once, in order of the alphabet. */
export function placesOf(text: string): readonly string[] {
  return [...new Set([...text.matchAll(PLACE)].map((m) => m[1] ?? ''))].sort();
}

/**
 * A text with its places filled.
 * @param what  how the text is named when a value is missing
 * @throws {Error} when a place has no value: a sentence is never shown with a hole in it
 */
export function fillPlaces(
  text: string,
  values: Readonly<Record<string, string | number>>,
  what = text,
): string {
  return text.replaceAll(PLACE, (_, place: string) => {
    const value = Object.hasOwn(values, place) ? values[place] : undefined;
    if (value === undefined) throw new Error(`${what} has no value for {${place}}`);
    return String(value);
  });
}

/**
 * A speaker over any table of texts.
 * @param find  the text of a key, `group.key`
 * @throws {Error} (the speaker) when there is no such text, or the saying lacks a value: both are faults of ours,
 *   which the check of content and the tests find, never a person's
 */
export function speakerOver(find: (key: string) => string | undefined): Speak {
  return ({ say, values = {} }) => {
    const text = find(say);
    if (text === undefined) throw new Error(`no words for ${say}`);
    return fillPlaces(text, values, say);
  };
}
