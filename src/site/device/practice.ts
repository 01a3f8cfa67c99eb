/** What sheets are set, answered and graded with, fetched once a page: the content as JSON, and the models. */
import type { Practice } from '../../practice/sheet.ts';
import type { Language } from '../../practice/words.ts';
import { fileAt } from '../paths.ts';
import { readPracticeData } from '../practiceData.ts';
import { speaker } from '../speak.ts';

/** Practice, and the words in which anything of it is graded and worked. */
export interface LoadedPractice extends Practice {
  readonly languageOf: (lang: string) => Language;
}

let loading: Promise<LoadedPractice> | undefined;

/** One and the same for all who ask; asked for again after a failure. */
export function loadPractice(): Promise<LoadedPractice> {
  loading ??= fetchPractice().catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}

async function fetchPractice(): Promise<LoadedPractice> {
  const [answer, { models }] = await Promise.all([
    fetch(fileAt('practice.json')),
    import('../../practice/models/index.ts'),
  ]);
  if (!answer.ok) throw new Error(`practice.json: ${answer.status}`);
  const { families, sheets, world, words } = readPracticeData(await answer.text());
  return {
    families: new Map(families.map((family) => [family.id, family])),
    sheets: new Map(sheets.map((sheet) => [sheet.id, sheet])),
    world: { ...world, models },
    languageOf: (lang) => ({ lang, speak: speaker(words[lang] ?? {}) }),
  };
}
