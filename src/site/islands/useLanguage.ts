import { useMemo } from 'react';
import type { Language } from '../../practice/words.ts';
import type { LoadedPractice } from '../device/practice.ts';
import { speaker, type WordTable } from '../speak.ts';

/** The words of the page, and beside them what came with the exercises: a figure or a working may say either. */
export function useLanguage(lang: string, words: WordTable, practice: LoadedPractice | null): Language {
  return useMemo(() => {
    const own = speaker(words);
    const others = practice?.languageOf(lang).speak ?? own;
    const isOwn = (key: string) => {
      const dot = key.indexOf('.');
      return words[key.slice(0, dot)]?.[key.slice(dot + 1)] !== undefined;
    };
    return { lang, speak: (say) => (isOwn(say.say) ? own(say) : others(say)) };
  }, [lang, words, practice]);
}
