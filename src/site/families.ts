/** Practice families of the works, and the numbers of their sheets. */
import type { AuthoredFamily } from '../practice/family.ts';
import type { Library } from '../schema/library.ts';

/** In the order of the tasks they exercise first, then of their numbers. */
export const familiesOf = (library: Library): readonly AuthoredFamily[] =>
  [...library.scenarios.values()].sort((a, b) => {
    const [one = '', other = ''] = [a.tasks[0], b.tasks[0]];
    return one === other ? a.number - b.number : one < other ? -1 : 1;
  });

/**
 * `TH-P05` after the first task for its first family; the further ones are `TH-P05b` to `TH-P05z`, `TH-P05aa` … Where a task
 * has parts (T08, T08a …) a letter names the part, so its further families are counted: `TH-P08a`, `TH-P08a-2`. Safe work
 * keeps its letter: `TH-PW3`. A family keeps its number whatever is added beside it.
 */
export function practiceNumber(library: Library, id: string): string {
  const { tasks = [], number = 1 } = library.scenarios.get(id) ?? {};
  const task = tasks[0] ?? '';
  const base = `TH-P${task.replace(/^T/, '')}`;
  if (number === 1) return base;
  const lettered = /[a-z]$/.test(task) || (library.tasks.get(task)?.parts ?? []).length > 0;
  return lettered ? `${base}-${number}` : base + letters(number);
}

/** 1 is a, 26 is z, 27 is aa. */
function letters(number: number): string {
  const last = (number - 1) % 26;
  const before = (number - 1 - last) / 26;
  return (before === 0 ? '' : letters(before)) + String.fromCharCode(97 + last);
}
