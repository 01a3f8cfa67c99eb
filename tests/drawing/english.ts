import { readFileSync } from 'node:fs';
import { speaker } from '../../src/schema/words.ts';
import type { Speak } from '../../src/trade/say.ts';

const folder = new URL('../../content/words/en/', import.meta.url);
const groups = Object.assign(
  {},
  ...['drawing.json', 'rundrawing.json', 'details.json', 'tap.json'].map((name) =>
    JSON.parse(readFileSync(new URL(name, folder), 'utf8')),
  ),
) as Record<string, Record<string, string>>;

/** The words of drawings in English, by `group.key`. */
export const english = new Map(
  Object.entries(groups).flatMap(([group, keys]) =>
    Object.entries(keys).map(([key, text]) => [`${group}.${key}`, text] as const),
  ),
);

export const speak: Speak = speaker(english);
