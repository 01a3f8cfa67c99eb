/** What the register's verbs need of the content: the task map, the sentences, and grading again. */
import type { Regrade } from '../register/checks.ts';
import type { TaskMap } from '../register/taskMap.ts';
import { readLibrary } from '../schema/library.ts';
import { practiceOf } from '../schema/practice.ts';
import { regradeWith } from '../schema/regrade.ts';
import { taskMapOf } from '../schema/task.ts';
import { type Speak, speaker } from '../schema/words.ts';
import { contentFiles } from './contentFiles.ts';

const libraryOf = (needed: RegExp) => readLibrary(contentFiles().filter((f) => needed.test(f.path))).library;

/** The site's own task map. */
export const siteMap = (): TaskMap => taskMapOf(libraryOf(/^content\/tasks\//));

export const registerSpeak = (): Speak =>
  speaker(libraryOf(/^content\/words\/en\/register\.json$/).words.get('en') ?? new Map());

/** The whole library is read only when there is evidence to grade. */
export const siteRegrade: Regrade = regradeWith(() => {
  const { library } = readLibrary(contentFiles().filter((f) => !f.path.startsWith('content/demo/')));
  const speak = speaker(library.words.get('en') ?? new Map());
  return { practice: practiceOf(library), language: { lang: 'en', speak } };
});
