/** Faults between tasks: names that stand for nothing, headings that are no headings, an order that bites its tail. */
import { missing, missingOne } from './missing.ts';
import type { Entry, FileFault } from './shelf.ts';
import { type Entries, idsOf, type Lost } from './shelves.ts';
import type { Task } from './task.ts';

export function taskFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const { tasks } = entries;
  const ids = idsOf('tasks', entries, lost);
  const papers = idsOf('tickets', entries, lost);
  return tasks.flatMap((entry) => {
    const { file, data } = entry;
    return [
      ...(['parts', 'after', 'prerequisites'] as const).flatMap((field) =>
        missing(file, field, data[field], ids, 'task'),
      ),
      ...missing(file, 'tickets', data.tickets, papers, 'ticket'),
      ...headingFaults(entry, tasks, lost),
      ...ringFaults(entry, tasks),
    ];
  });
}

/** A part stands under its heading and under no other; a heading wants no evidence, a task that is none wants some. */
function headingFaults({ file, data }: Entry<Task>, tasks: readonly Entry<Task>[], lost: Lost): FileFault[] {
  const faults: FileFault[] = [];
  const heading = data.parts.length > 0;
  for (const [i, value] of data.parts.entries()) {
    if (!value.startsWith(data.id) || value === data.id) {
      faults.push({
        file,
        field: `parts[${i}]`,
        value,
        message: `not a part of ${data.id}`,
        todo: `a part is ${data.id} with a letter`,
      });
    }
  }
  const above = data.id.slice(0, 3);
  const listed = lost.tasks.has(above) || tasks.some((t) => t.data.parts.includes(data.id));
  if (above !== data.id && !listed) {
    faults.push({
      file,
      field: 'id',
      value: data.id,
      message: 'no heading lists this part',
      todo: `name it in parts of ${above}`,
    });
  }
  if (heading === data.evidence.length > 0) {
    faults.push({
      file,
      field: 'evidence',
      value: data.evidence,
      message: heading ? 'a heading is never signed itself' : 'nothing would show this task',
      todo: heading ? 'write [] and give the evidence in its parts' : 'name at least one kind: K, P or M',
    });
  }
  return faults;
}

/** A task that comes, over others, after itself. */
function ringFaults({ file, data }: Entry<Task>, tasks: readonly Entry<Task>[]): FileFault[] {
  return (['after', 'prerequisites'] as const).flatMap((field) => {
    const seen = new Set<string>();
    const next = [...data[field]];
    for (let id = next.pop(); id !== undefined; id = next.pop()) {
      if (seen.has(id)) continue;
      seen.add(id);
      next.push(...(tasks.find((t) => t.id === id)?.data[field] ?? []));
    }
    return seen.has(data.id)
      ? [
          {
            file,
            field,
            value: data[field],
            message: `${data.id} comes after itself`,
            todo: 'take out the task that leads back to it',
          },
        ]
      : [];
  });
}

/** A ticket's sources stand for critical points that it has, and are there. */
export function ticketFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const known = idsOf('sources', entries, lost);
  return entries.tickets.flatMap(({ file, data }) =>
    Object.entries(data.sources).flatMap(([point, source]) => [
      ...missingOne(file, `sources.${point}`, point, new Set(data.critical), 'critical point'),
      ...missingOne(file, `sources.${point}`, source, known, 'source'),
    ]),
  );
}
