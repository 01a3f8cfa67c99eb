/** Faults between a procedure and what it names: its task, runs, sources. */
import { missing, missingOne } from './missing.ts';
import type { Procedure } from './procedure.ts';
import type { Entry, FileFault } from './shelf.ts';
import type { Entries } from './shelves.ts';
import type { Task } from './task.ts';

export function procedureFaults(entries: Entries): readonly FileFault[] {
  const ids = new Set(entries.tasks.map((t) => t.id));
  return entries.procedures.flatMap((entry) => {
    const task = entries.tasks.find((t) => t.id === entry.id)?.data;
    if (task === undefined) return missingOne(entry.file, 'id', entry.id, ids, 'task');
    return [...revisionFaults(entry, task), ...criticalFaults(entry, task), ...formFaults(entry)];
  });
}

/** The text follows the task's last revision, and says what each one changed. */
function revisionFaults({ file, data }: Entry<Procedure>, task: Task): FileFault[] {
  const last = task.revisions.length;
  const faults: FileFault[] = [];
  if (data.revision !== last) {
    faults.push({
      file,
      field: 'revision',
      value: data.revision,
      message: `the task stands at revision ${last}`,
      todo: 'bring the text up to it, then write its number',
    });
  }
  if (data.changes.length !== last) {
    faults.push({
      file,
      field: 'changes',
      value: data.changes.length,
      message: `${last} revisions, ${data.changes.length} lines`,
      todo: 'write one line a revision, the first issue first',
    });
  }
  return faults;
}

/** A step names only critical points of its task, and none of them is forgotten. */
function criticalFaults({ file, data }: Entry<Procedure>, task: Task): FileFault[] {
  const points = new Set(task.critical ?? []);
  const carried = new Set(data.forms.flatMap((f) => f.steps.flatMap((s) => s.critical)));
  return [
    ...data.forms.flatMap((f, i) =>
      f.steps.flatMap((s, j) =>
        missing(file, `forms[${i}].steps[${j}].critical`, s.critical, points, 'critical point'),
      ),
    ),
    ...[...points]
      .filter((p) => !carried.has(p))
      .map((value) => ({
        file,
        field: 'forms',
        value,
        message: `no step carries the critical point ${value}`,
        todo: 'name it in `critical` of the step where it is decided',
      })),
  ];
}

/** Each form has a place where somebody looks, and text changed by a revision names one that there is. */
function formFaults({ file, data }: Entry<Procedure>): FileFault[] {
  return data.forms.flatMap((f, i) => [
    ...(f.steps.some((s) => s.hold !== undefined)
      ? []
      : [
          {
            file,
            field: `forms[${i}].steps`,
            message: 'no hold point',
            todo: 'say at which step somebody must look, and who',
          },
        ]),
    ...f.steps.flatMap((s, j) =>
      s.changed !== undefined && s.changed.revision > data.revision
        ? [
            {
              file,
              field: `forms[${i}].steps[${j}].changed.revision`,
              value: s.changed.revision,
              message: `the text stands at revision ${data.revision}`,
              todo: 'name the revision that changed this step',
            },
          ]
        : [],
    ),
  ]);
}
