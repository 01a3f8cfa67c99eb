/** The sentences of a language, read straight from its files of words: what is wrong with them is for content check. */
import type { ContentFile } from '../schema/library.ts';
import { FIRST_LANGUAGE, speaker, type WordsFile, wordTables } from '../schema/words.ts';
import type { Speak } from '../trade/say.ts';

export function speechOf(files: readonly ContentFile[], lang: string = FIRST_LANGUAGE): Speak {
  const own = new RegExp(`^content/words/${lang}/[a-z]+\\.json$`);
  const words = files.filter(({ path }) => own.test(path)).map(({ text }) => ({ lang, data: parsed(text) }));
  return speaker(wordTables(words).get(lang) ?? new Map());
}

/** A file that is no JSON says nothing. */
function parsed(text: string): WordsFile {
  try {
    return JSON.parse(text) as WordsFile;
  } catch {
    return {};
  }
}
