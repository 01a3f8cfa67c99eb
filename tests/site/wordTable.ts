import { readdirSync, readFileSync } from 'node:fs';
import type { WordTable } from '../../src/site/speak.ts';

/** All interface words of a language, as the pages put them together. */
export function table(lang: string): WordTable {
  const folder = new URL(`../../content/words/${lang}/`, import.meta.url);
  const all: Record<string, Record<string, string>> = {};
  for (const name of readdirSync(folder)) {
    const groups = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Record<
      string,
      Record<string, string>
    >;
    for (const [group, keys] of Object.entries(groups)) all[group] = { ...all[group], ...keys };
  }
  return all;
}
