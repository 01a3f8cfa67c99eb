/** Faults between a procedure and what it names: its task, runs, sources. */
import type { Catalogue } from '../run/catalogue.ts';
import { resolveRun, stockFaults } from '../run/resolve.ts';
import type { Run } from '../run/types.ts';
import type { RunUsual } from '../run/usual.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { placesOf } from '../trade/say.ts';
import { catalogueOf } from './catalogue.ts';
import { judgedBy, usualBy } from './entryTables.ts';
import { shownBy } from './figure.ts';
import { missing, missingOne } from './missing.ts';
import type { Form, Procedure } from './procedure.ts';
import type { Entry, FileFault } from './shelf.ts';
import { type Entries, idsOf, type Lost } from './shelves.ts';
import type { Task } from './task.ts';
import { textsIn } from './texts.ts';

export function procedureFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const ids = idsOf('tasks', entries, lost);
  return entries.procedures.flatMap((entry) => {
    const task = entries.tasks.find((t) => t.id === entry.id)?.data;
    if (task === undefined) return missingOne(entry.file, 'id', entry.id, ids, 'task');
    return [
      ...revisionFaults(entry, task),
      ...criticalFaults(entry, task),
      ...formFaults(entry),
      ...missing(
        entry.file,
        'practice',
        entry.data.practice,
        idsOf('scenarios', entries, lost),
        'practice family',
      ),
      ...sourceFaults(entry, idsOf('sources', entries, lost)),
      ...entry.data.forms.flatMap((form, i) => figureFaults(entry.file, `forms[${i}]`, form, entries, lost)),
    ];
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

/** Every limit of acceptance has its source. */
function sourceFaults({ file, data }: Entry<Procedure>, sources: ReadonlySet<string>): FileFault[] {
  return data.forms.flatMap((form, i) =>
    form.limits.flatMap(({ source }, j) =>
      missingOne(file, `forms[${i}].limits[${j}].source`, source, sources, 'source'),
    ),
  );
}

/**
 * Every figure can be drawn, what is laid out is in the catalogue, and every place in the text is a measure of the
 * first figure. Judged when the whole catalogue could be read.
 */
function figureFaults(
  file: string,
  at: string,
  form: Form,
  entries: Entries,
  lost: Lost,
): readonly FileFault[] {
  const figures = [
    [`${at}.figure`, form.figure],
    ...form.also.map((figure, i) => [`${at}.also[${i}]`, figure] as const),
  ] as const;
  const ids = idsOf('runs', entries, lost);
  const noRun = figures.flatMap(([field, { run }]) => missingOne(file, `${field}.run`, run, ids, 'run'));
  if (lost.catalogues.size > 0) return noRun;
  const { catalogue } = catalogueOf(entries.catalogues.map((c) => c.data));
  const items = new Set(catalogue.keys());
  const hardware = form.hardware.flatMap(({ item }, i) =>
    missingOne(file, `${at}.hardware[${i}].item`, item, items, 'item of the catalogue'),
  );
  const tables = figures.some(([, { view }]) => view === 'bonding' || view === 'exploded')
    ? judgedBy(entries, lost)?.tables
    : undefined;
  const drawn = figures.flatMap(([field, figure], i): readonly FileFault[] => {
    const run = entries.runs.find((r) => r.id === figure.run)?.data.run;
    if (run === undefined) return [];
    try {
      const { facts, parts } = shownBy(figure, run, catalogue, usualBy(entries), tables);
      return i > 0 ? [] : [...placeFaults(file, at, form, facts), ...balloonFaults(file, at, form, parts)];
    } catch (cause) {
      if (!(cause instanceof GivenError)) throw cause;
      // Other fields are of the run, and are reported in its own file.
      const own = cause.faults.filter((f) => f.field === 'of');
      return own.map((f) => ({ file, ...f, field: `${field}.of` }));
    }
  });
  return [...hardware, ...noRun, ...drawn];
}

/** A balloon points at a part that the figure has, and no two at the same. */
function balloonFaults(file: string, at: string, form: Form, parts: readonly string[]): readonly FileFault[] {
  return form.steps.flatMap(({ shows }, i) => {
    if (shows === undefined) return [];
    const field = `${at}.steps[${i}].shows`;
    const first = form.steps.findIndex((s) => s.shows === shows);
    return first < i
      ? [
          {
            file,
            field,
            value: shows,
            message: `step ${first + 1} points there already`,
            todo: 'point at another part, or leave it out',
          },
        ]
      : missingOne(file, field, shows, new Set(parts), 'part of the figure');
  });
}

function placeFaults(
  file: string,
  at: string,
  form: Form,
  facts: Readonly<Record<string, string>>,
): readonly FileFault[] {
  return textsIn(form, at).flatMap(([field, text]) =>
    placesOf(text)
      .filter((name) => !Object.hasOwn(facts, name))
      .map((name) => ({
        file,
        field,
        value: `{${name}}`,
        message: 'the figure has no such measure',
        todo: `its measures are {${Object.keys(facts).join('} {')}}`,
      })),
  );
}

/** A run that cannot be worked out. */
export function runFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  if (lost.catalogues.size > 0) return [];
  const { catalogue } = catalogueOf(entries.catalogues.map((c) => c.data));
  const usual = usualBy(entries);
  return entries.runs.flatMap(({ file, data }) => {
    const faults = runFaultsOf(data.run, catalogue, usual);
    return faults.map((f) => ({ file, ...f, field: f.field === '' ? 'run' : `run.${f.field}` }));
  });
}

/** A procedure's run must hang together, and be cut from lengths as they come. */
function runFaultsOf(run: Run, catalogue: Catalogue, usual: RunUsual): readonly Fault[] {
  try {
    return stockFaults(resolveRun(run, catalogue, usual));
  } catch (cause) {
    if (cause instanceof GivenError) return cause.faults;
    throw cause;
  }
}
