import { readFileSync } from 'node:fs';
import { speaker } from '../../src/schema/words.ts';
import type { Speak } from '../../src/trade/say.ts';

const file = new URL('../../content/words/en/drawing.json', import.meta.url);
const groups = JSON.parse(readFileSync(file, 'utf8')) as Record<string, Record<string, string>>;

/** The words of drawings in English, by `group.key`. */
export const english = new Map(
  Object.entries(groups).flatMap(([group, keys]) =>
    Object.entries(keys).map(([key, text]) => [`${group}.${key}`, text] as const),
  ),
);

export const speak: Speak = speaker(english);
