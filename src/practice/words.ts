/** Puts facts and templates of a family into one language. */
import { fillPlaces, type Speak } from '../trade/say.ts';
import { shortLength } from '../trade/shortLength.ts';
import type { Draw } from './draw.ts';
import type { Family, Texts } from './family.ts';
import type { Fact, Facts } from './model.ts';

/** The language a person reads, and the sentences of content/words in it. */
export interface Language {
  readonly lang: string;
  readonly speak: Speak;
}

/**
 * A text in a language with its `{places}` filled.
 * @throws {Error} when it lacks the language or a value: the reader of families finds both before anyone draws
 */
export function textOf(texts: Texts, lang: string, values: Readonly<Record<string, string>>): string {
  const text = texts[lang];
  if (text === undefined) throw new Error(`no ${lang} text beside ${Object.keys(texts).join(' ')}`);
  return fillPlaces(text, values);
}

/** One fact as a person reads it. Words of the family may themselves name facts that are no words. */
export function factText(
  family: Family,
  name: string,
  fact: Fact,
  lang: string,
  values: Readonly<Record<string, string>> = {},
): string {
  if (fact.kind === 'length') return shortLength(fact.ticks);
  if (fact.kind === 'number') return fact.text ?? String(fact.value);
  if (fact.kind === 'rows') return '';
  const texts = family.words[fact.words ?? name]?.[fact.value];
  return texts === undefined ? fact.value : textOf(texts, lang, values);
}

/** Every fact of one row as a text, words last, so that they can name the others. */
export function factTexts(family: Family, facts: Facts, lang: string): Readonly<Record<string, string>> {
  const texts: Record<string, string> = {};
  const all = Object.entries(facts);
  for (const [name, fact] of all) if (fact.kind !== 'word') texts[name] = factText(family, name, fact, lang);
  for (const [name, fact] of all)
    if (fact.kind === 'word') texts[name] = factText(family, name, fact, lang, texts);
  return texts;
}

export function textsOf(draw: Draw, lang: string): Readonly<Record<string, string>> {
  return factTexts(draw.family, draw.facts, lang);
}
