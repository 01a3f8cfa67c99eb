/** Turns a `Say` into a sentence with a table of words. Pure; used by pages and islands alike. */
import type register from '../../content/words/en/pages-register.json';
import type site from '../../content/words/en/site.json';
import type { Say } from '../trade/answer.ts';

/** Group, key, text. Islands are handed the groups they speak, so a page carries its own language only. */
export type WordTable = Readonly<Record<string, Readonly<Record<string, string>>>>;

type Site = typeof site & typeof register;
/** `group.key` of the interface words: a key that is in neither file does not compile. */
export type SiteKey = { [G in keyof Site & string]: `${G}.${keyof Site[G] & string}` }[keyof Site & string];
export type Values = Readonly<Record<string, string | number>>;

export type Speak = (say: Say) => string;
/** For the page's own words: `tell('cut.title')`, `tell('sheet.rev', { revision: 2 })`. */
export type Tell = (key: SiteKey, values?: Values) => string;

const place = /\{(\w+)\}/g;

/** @throws Error when the key is not in the table or a place has no value: a sentence is never shown with a hole in it. */
export function speaker(words: WordTable): Speak {
  return ({ say, values }) => {
    const dot = say.indexOf('.');
    const text = words[say.slice(0, dot)]?.[say.slice(dot + 1)];
    if (text === undefined) throw new Error(`content/words: no text for "${say}"`);
    return text.replace(place, (_, name: string) => {
      const value = values?.[name];
      if (value === undefined) throw new Error(`content/words: "${say}" wants a value for {${name}}`);
      return String(value);
    });
  };
}

/** Keeps a mixed number together at the end of a line: the space inside `7 1/2` does not break. */
export const unbroken = (text: string): string => text.replace(/(\d) (?=\d+\/\d)/g, '$1\u00a0');

export function teller(words: WordTable): Tell {
  const speak = speaker(words);
  return (key, values) => unbroken(speak(values === undefined ? { say: key } : { say: key, values }));
}
