/** What the pages of a witness hand their islands; read at build time. */
import type { Library } from '../schema/library.ts';
import { taskMapOf } from '../schema/task.ts';
import { pageAt } from './paths.ts';
import type { WitnessTask } from './witness.ts';
import { sheetWords, taskGroups } from './wordGroups.ts';
import { type Lang, wordsOf } from './words.ts';

/** Tasks of the register's map with their critical points, and how many measures each asks for. */
export function witnessTasksOf(library: Library): readonly WitnessTask[] {
  return taskMapOf(library).tasks.map((task) => {
    const { critical = null, evidence = [] } = library.tasks.get(task.id) ?? {};
    const measured = evidence.find(({ kind }) => kind === 'M');
    return { ...task, critical, measures: measured?.kind === 'M' ? measured.n : 0 };
  });
}

/** Groups of words that every such page speaks, beside those of sheets and tasks. */
const witnessWords = [
  'witness',
  'look',
  'register',
  'guard',
  'file',
  'state',
  'registerWhy',
  'variant',
  'date',
] as const;

/**
 * What every page of a witness hands its island.
 * @param own  the group of words that is the page's own
 */
export function witnessProps(library: Library, lang: Lang, own: string) {
  return {
    lang,
    words: wordsOf(lang, [...witnessWords, own, 'passRule', ...sheetWords, ...taskGroups(library)]),
    tasks: witnessTasksOf(library),
    answerPage: pageAt(lang, 'answer'),
    registerPage: pageAt(lang, 'register'),
  };
}
