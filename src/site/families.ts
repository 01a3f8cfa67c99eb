/** Practice families of the works, and the numbers of their sheets. */
import type { Family } from '../practice/family.ts';
import type { Library } from '../schema/library.ts';

/** In the order of the tasks they exercise. */
export const familiesOf = (library: Library): readonly Family[] =>
  [...library.scenarios.values()].sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : 1));
const orderOf = ({ tasks, id }: Family): string => `${tasks[0] ?? ''} ${id}`;

/** `TH-P05` after the first task; a second family of the same task is `TH-P05b`. */
export function practiceNumber(library: Library, id: string): string {
  const all = familiesOf(library);
  const task = all.find((one) => one.id === id)?.tasks[0] ?? '';
  const place = all.filter((one) => one.tasks[0] === task).findIndex((one) => one.id === id);
  return `TH-P${task.slice(1)}${place > 0 ? String.fromCharCode(97 + place) : ''}`;
}
