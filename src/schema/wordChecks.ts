/** Faults of the words: keys that stand twice, are missing in a language, or do not have the same places in each. */
import { placesOf } from '../trade/say.ts';
import { demands } from './demands.ts';
import type { FileFault } from './shelf.ts';
import type { Entries, Lost } from './shelves.ts';
import { FIRST_LANGUAGE as first } from './words.ts';

interface Text {
  readonly file: string;
  readonly text: string;
}

/** Which words are missing is not known while a file of them cannot be read, and is not guessed. */
export function wordFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const whole = lost.words.size === 0;
  const languages = new Map<string, Map<string, Text>>([[first, new Map()]]);
  const faults: FileFault[] = [];
  for (const { file, lang = '', data } of entries.words) {
    const texts = languages.get(lang) ?? new Map<string, Text>();
    languages.set(lang, texts);
    for (const [group, keys] of Object.entries(data)) {
      for (const [key, text] of Object.entries(keys)) {
        const field = `${group}.${key}`;
        const other = texts.get(field);
        if (other !== undefined) {
          faults.push({
            file,
            field,
            value: text,
            message: `stands in ${other.file} too`,
            todo: 'keep it in one file',
          });
        } else texts.set(field, { file, text });
      }
    }
  }
  const wanted = languages.get(first) ?? new Map<string, Text>();
  for (const [lang, texts] of languages) {
    const file = `content/words/${lang}`;
    for (const { key, by } of demands(entries)) {
      if (whole && !texts.has(key))
        faults.push({
          file,
          field: key,
          message: `no words, and ${by} says it`,
          todo: 'write the text in a file of this folder',
        });
    }
    for (const [key, { text }] of wanted) {
      const own = texts.get(key);
      if (own === undefined) {
        if (whole && !faults.some((f) => f.file === file && f.field === key)) {
          faults.push({
            file,
            field: key,
            message: `no words in this language`,
            todo: `write it: in ${first} it is "${text}"`,
          });
        }
      } else if (placesOf(own.text).join() !== placesOf(text).join()) {
        faults.push({
          file: own.file,
          field: key,
          value: own.text,
          message: `its places are not those of ${first}: {${placesOf(text).join('} {')}}`,
          todo: 'name the same places in both',
        });
      }
    }
    for (const [key, { file: at }] of texts) {
      if (whole && !wanted.has(key))
        faults.push({
          file: at,
          field: key,
          message: `no such words in ${first}`,
          todo: `write them there too, or take them out`,
        });
    }
  }
  return faults;
}
