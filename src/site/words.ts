/**
 * Interface words of a page, by language. Every file of content/words/<lang> is one table of groups; together they are
 * the page's words. A page or an island asks for a key of a group and fills its `{places}`; nothing is typed in place.
 * Build time only: an island is handed its words by the page (`wordsOf`) and speaks them with speak.ts.
 */
import { type Speak, speaker, type Tell, teller, type WordTable } from './speak.ts';

export const languages = ['en'] as const;
export type Lang = (typeof languages)[number];

const files = import.meta.glob<WordTable>('../../content/words/*/*.json', { eager: true, import: 'default' });

function tableOf(lang: Lang): WordTable {
  const table: Record<string, Record<string, string>> = {};
  for (const [path, groups] of Object.entries(files)) {
    if (!path.includes(`/words/${lang}/`)) continue;
    for (const [name, keys] of Object.entries(groups)) table[name] = { ...table[name], ...keys };
  }
  return table;
}

const tables = new Map<Lang, WordTable>(languages.map((lang) => [lang, tableOf(lang)]));

/** All words of a language. @throws Error when it has none: a build without words must not pass. */
export function allWords(lang: Lang): WordTable {
  const table = tables.get(lang);
  if (table === undefined || Object.keys(table).length === 0) {
    throw new Error(`content/words/${lang}: no words found`);
  }
  return table;
}

/** The named groups only, for an island's `words`. @throws Error on a group that is not there. */
export function wordsOf(lang: Lang, groups: readonly string[]): WordTable {
  const table = allWords(lang);
  return Object.fromEntries(
    groups.map((name) => {
      const group = table[name];
      if (group === undefined) throw new Error(`content/words/${lang}: no group "${name}"`);
      return [name, group];
    }),
  );
}

/** Of groups that name things, the names alone: for an island that says no more of them. */
export const namesOnly = (words: WordTable): WordTable =>
  Object.fromEntries(Object.entries(words).map(([group, { name = '' }]) => [group, { name }]));

export const speakerOf = (lang: Lang): Speak => speaker(allWords(lang));
export const tellerOf = (lang: Lang): Tell => teller(allWords(lang));
