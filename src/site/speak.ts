/** Turns a `Say` into a sentence with a table of words. Pure; used by pages and islands alike. */
import type asks from '../../content/words/en/asks.json';
import type calculators from '../../content/words/en/calculators.json';
import type drills from '../../content/words/en/drills.json';
import type handing from '../../content/words/en/handing.json';
import type making from '../../content/words/en/making.json';
import type register from '../../content/words/en/pages-register.json';
import type person from '../../content/words/en/person.json';
import type practising from '../../content/words/en/practising.json';
import type rates from '../../content/words/en/rates.json';
import type site from '../../content/words/en/site.json';
import type sticks from '../../content/words/en/sticks.json';
import type units from '../../content/words/en/unit.json';
import type witnessing from '../../content/words/en/witnessing.json';
import type yourRun from '../../content/words/en/yourrun.json';
import { type Speak, speakerOver } from '../trade/say.ts';

export type { Speak } from '../trade/say.ts';

/** Group, key, text. Islands are handed the groups they speak, so a page carries its own language only. */
export type WordTable = Readonly<Record<string, Readonly<Record<string, string>>>>;

type Site = typeof site &
  typeof asks &
  typeof rates &
  typeof register &
  typeof drills &
  typeof person &
  typeof making &
  typeof calculators &
  typeof yourRun &
  typeof sticks &
  typeof units &
  typeof handing &
  typeof practising &
  typeof witnessing;
/** `group.key` of the interface words: a key that is in none of these files does not compile. */
export type SiteKey = { [G in keyof Site & string]: `${G}.${keyof Site[G] & string}` }[keyof Site & string];
export type Values = Readonly<Record<string, string | number>>;

/** For the page's own words: `tell('cut.title')`, `tell('sheet.rev', { revision: 2 })`. */
export type Tell = (key: SiteKey, values?: Values) => string;

/** A speaker over the groups of a page; see `speakerOver` for what it throws. */
export function speaker(words: WordTable): Speak {
  return speakerOver((key) => {
    const dot = key.indexOf('.');
    return words[key.slice(0, dot)]?.[key.slice(dot + 1)];
  });
}

/** A word of this edition, or what was signed as it stands: an entry may be older or newer than the pages. */
export function saidOr(speak: Speak, say: string, or: string): string {
  try {
    return speak({ say });
  } catch {
    return or;
  }
}

/** Keeps a mixed number together at the end of a line: the space inside `7 1/2` does not break. */
export const unbroken = (text: string): string => text.replace(/(\d) (?=\d+\/\d)/g, '$1\u00a0');

export function teller(words: WordTable): Tell {
  const speak = speaker(words);
  return (key, values) => unbroken(speak(values === undefined ? { say: key } : { say: key, values }));
}
