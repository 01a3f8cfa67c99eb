/** Practice families of the works, and the numbers of their sheets. */
import type { Family } from '../practice/family.ts';
import type { Library } from '../schema/library.ts';

/** In the order of the tasks they exercise. */
export const familiesOf = (library: Library): readonly Family[] =>
  [...library.scenarios.values()].sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : 1));
const orderOf = ({ tasks, id }: Family): string => `${tasks[0] ?? ''} ${id}`;

/**
 * `TH-P05` after the first task; further families of the same task are `TH-P05b` to `TH-P05z`, `TH-P05aa` … Where a task has
 * parts (T08, T08a …) a letter names the part, so its further families are counted: `TH-P08a`, `TH-P08a-2`. A ticket keeps its
 * letter: `TH-PW3`.
 */
export function practiceNumber(library: Library, id: string): string {
  const all = familiesOf(library);
  const task = all.find((one) => one.id === id)?.tasks[0] ?? '';
  const place = all.filter((one) => one.tasks[0] === task).findIndex((one) => one.id === id);
  const base = `TH-P${task.replace(/^T/, '')}`;
  if (place <= 0) return base;
  const lettered = /[a-z]$/.test(task) || (library.tasks.get(task)?.parts ?? []).length > 0;
  return lettered ? `${base}-${place + 1}` : base + letters(place + 1);
}

/** 1 is a, 26 is z, 27 is aa. */
function letters(number: number): string {
  const last = (number - 1) % 26;
  const before = (number - 1 - last) / 26;
  return (before === 0 ? '' : letters(before)) + String.fromCharCode(97 + last);
}
