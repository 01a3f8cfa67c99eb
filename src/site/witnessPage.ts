/** What the pages of a witness hand their islands; read at build time. */
import type { Library } from '../schema/library.ts';
import { taskMapOf } from '../schema/task.ts';
import type { WitnessTask } from './witness.ts';

/** Tasks of the register's map with their critical points, and how many measures each asks for. */
export function witnessTasksOf(library: Library): readonly WitnessTask[] {
  return taskMapOf(library).tasks.map((task) => {
    const { critical = null, evidence = [] } = library.tasks.get(task.id) ?? {};
    const measured = evidence.find(({ kind }) => kind === 'M');
    return { ...task, critical, measures: measured?.kind === 'M' ? measured.n : 0 };
  });
}

/** Groups of words that every such page speaks, beside those of sheets and tasks. */
export const witnessWords = [
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
