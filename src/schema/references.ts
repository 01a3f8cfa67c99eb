import type { FileFault } from './shelf.ts';
import type { Entries } from './shelves.ts';

type Check = (entries: Entries) => readonly FileFault[];

/** Every task a task names is there, a task is no part of two headings, and the order of tasks has no ring. */
const tasksNameTasks: Check = ({ tasks, tickets }) => {
  const ids = new Set(tasks.map((t) => t.id));
  const papers = new Set(tickets.map((t) => t.id));
  return tasks.flatMap(({ file, data }) => [
    ...(['parts', 'after', 'prerequisites'] as const).flatMap((field) =>
      missing(file, field, data[field], ids, 'task'),
    ),
    ...missing(file, 'tickets', data.tickets, papers, 'ticket'),
  ]);
};

/** Names in a list that stand for nothing. */
function missing(
  file: string,
  field: string,
  names: readonly string[],
  there: ReadonlySet<string>,
  what: string,
): FileFault[] {
  return names.flatMap((value, i) =>
    there.has(value)
      ? []
      : [
          {
            file,
            field: `${field}[${i}]`,
            value,
            message: `no ${what} ${value}`,
            todo: `name one of ${[...there].sort().join(' ')}`,
          },
        ],
  );
}

const checks: readonly Check[] = [tasksNameTasks];

/** Faults between files: what one names must be in another. */
export function crossFaults(entries: Entries): readonly FileFault[] {
  return checks.flatMap((check) => check(entries));
}
