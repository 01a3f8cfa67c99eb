/** The groups of words that several pages hand to their islands. */
import type { Library } from '../schema/library.ts';

/** Groups that a draw needs to be shown, answered and graded. */
export const sheetWords = [
  'asks',
  // What figures of offsets say.
  'offsets',
  'tap',
  'rundrawing',
  'practicePage',
  'practice',
  'entry',
  'unit',
  'drawing',
  'run',
  'cut',
  'fill',
] as const;

/** Groups of the tasks' own words, one a task. */
export const taskGroups = (library: Library): readonly string[] => [...library.tasks.keys()].sort();
