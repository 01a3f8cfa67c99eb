import { type Fault, GivenError } from '../trade/given.ts';
import type { Variant } from './bodies.ts';
import { byText } from './bytes.ts';
import type { Json, JsonObject } from './canonical.ts';
import { type Day, isDay } from './days.ts';
import * as shape from './shapes.ts';

export interface Revision {
  readonly n: number;
  /** In force from this day. */
  readonly on: Day;
  /** Whether everyone who showed an earlier one has to show the task again. */
  readonly showAgain: boolean;
}

/** What the register needs to know of a task. */
export interface MapTask {
  readonly id: string;
  /** Months a showing is good for; `null` for a heading, which is never shown itself. */
  readonly months: number | null;
  /** Whether a second witness is wanted. */
  readonly second: boolean;
  readonly tickets: readonly string[];
  /** Pairs with their values, the first of each the plain one. */
  readonly variants: Readonly<Record<string, readonly string[]>>;
  readonly revisions: readonly Revision[];
  /** With parts a task is a heading: its parts are shown, never itself. */
  readonly parts: readonly string[];
  readonly trainHours: number;
}

/** Months a showing of the task is good for. @throws {RangeError} for a heading: nothing is ever shown of one */
export function monthsOf({ id, months }: MapTask): number {
  if (months === null) throw new RangeError(`${id} is a heading`);
  return months;
}
export interface TaskMap {
  readonly tasks: readonly MapTask[];
}

/** Outside tickets: recorded, never assessed; they are no tasks even where a map lists them. */
export const isTicket = (id: string): boolean => /^W[1-8]$/.test(id);

export const isHeading = (task: MapTask): boolean => task.parts.length > 0;

export const taskOf = (map: TaskMap, id: string): MapTask | undefined =>
  isTicket(id) ? undefined : map.tasks.find((t) => t.id === id);

/** The revision in force on a day; a day before the first counts as the first. */
export function revisionOn(task: MapTask, on: Day): number {
  const first = task.revisions[0]?.n ?? 1;
  return task.revisions.reduce((n, r) => (r.on <= on && r.n > n ? r.n : n), first);
}

/** Every pair of the task: what is given, the plain value elsewhere. What the task does not know stays as it is. */
export function fullVariant(task: MapTask, given: Variant): Variant {
  const names = [...new Set([...Object.keys(task.variants), ...Object.keys(given)])].sort(byText);
  return Object.fromEntries(names.map((n) => [n, given[n] ?? task.variants[n]?.[0] ?? '']));
}

/** `joint=socketed,width=4`: variants are told apart and sorted by it. */
export const variantText = (variant: Variant): string =>
  Object.keys(variant)
    .sort(byText)
    .map((name) => `${name}=${variant[name]}`)
    .join(',');

/** Pairs and values that the task does not know. */
export function variantFaults(task: MapTask, given: Variant, field: string): readonly Fault[] {
  return Object.entries(given).flatMap(([name, value]): readonly Fault[] => {
    const values = Object.hasOwn(task.variants, name) ? task.variants[name] : undefined;
    const at = { field: `${field}.${name}`, value };
    if (values === undefined) {
      const known = Object.keys(task.variants).join(', ');
      const todo = known === '' ? 'leave it out: the task has none' : `use ${known}`;
      return [{ ...at, message: `${task.id} knows no such pair`, todo }];
    }
    if (values.includes(value)) return [];
    return [
      { ...at, message: `${task.id} knows no such ${name}`, todo: `write one of ${values.join(', ')}` },
    ];
  });
}

const fields: Readonly<Record<keyof MapTask, shape.Shape>> = {
  id: shape.taskId,
  months: (v) => (v === null ? undefined : shape.count(1)(v)),
  second: shape.truth,
  tickets: shape.list(shape.ticketId),
  variants: shape.table((v) => {
    if (!Array.isArray(v)) return shape.list(shape.text)(v);
    if (v.length === 0) return 'wants at least one value';
    return new Set(v).size < v.length ? 'wants every value once' : shape.list(shape.text)(v);
  }),
  revisions: shape.list(
    shape.record({
      n: shape.count(1),
      on: (v) => (isDay(v) ? undefined : 'wants a day'),
      showAgain: shape.truth,
    }),
  ),
  parts: shape.list(shape.taskId),
  trainHours: (v) => (typeof v === 'number' && v >= 0 ? undefined : 'wants a number from 0'),
};
/** What a field that is left out is taken for. */
const left: Readonly<Partial<Record<keyof MapTask, Json>>> = {
  second: false,
  tickets: [],
  variants: {},
  revisions: [],
  parts: [],
  trainHours: 0,
};

/**
 * Reads a task map: the shape that `register tasks` prints.
 * @throws {GivenError} with every fault found
 */
export function readTaskMap(value: Json): TaskMap {
  const faults: Fault[] = [];
  const fault = (field: string, message: string, todo: string, given?: Json): void => {
    faults.push({ field, ...(given === undefined ? {} : { value: given }), message, todo });
  };
  const list = shape.isObject(value) ? value['tasks'] : undefined;
  if (!shape.isObject(value) || !Array.isArray(list)) {
    throw new GivenError([
      { field: 'tasks', message: 'missing', todo: 'write {"tasks":[…]} as "register tasks" prints it' },
    ]);
  }
  for (const name of Object.keys(value)) if (name !== 'tasks') fault(name, 'no such field', 'leave it out');
  const tasks = (list as readonly Json[]).map((given, i) => taskAt(given, `tasks[${i}]`, fault));
  const ids = new Set<string>();
  for (const [i, task] of tasks.entries()) {
    if (task === undefined) continue;
    if (ids.has(task.id)) fault(`tasks[${i}].id`, 'stands twice', 'give each task its own id', task.id);
    ids.add(task.id);
  }
  for (const [i, task] of tasks.entries()) {
    for (const [k, part] of (task?.parts ?? []).entries()) {
      const found = tasks.find((t) => t?.id === part);
      if (found === undefined || found.parts.length > 0) {
        fault(`tasks[${i}].parts[${k}]`, 'no task that can be a part', 'name a task without parts', part);
      }
    }
  }
  if (faults.length > 0) throw new GivenError(faults);
  return { tasks: tasks as MapTask[] };
}

type Report = (field: string, message: string, todo: string, given?: Json) => void;

function taskAt(given: Json, at: string, fault: Report): MapTask | undefined {
  if (!shape.isObject(given)) {
    fault(at, 'no task', 'write an object with id, months, second …', given);
    return undefined;
  }
  const before = faultCount(fault);
  const task: Record<string, Json> = { ...(left as JsonObject), ...given };
  for (const name of Object.keys(given)) {
    if (!Object.hasOwn(fields, name))
      before.fault(`${at}.${name}`, 'no such field', 'leave it out', given[name]);
  }
  for (const [name, of] of Object.entries(fields)) {
    const value = task[name];
    if (value === undefined) before.fault(`${at}.${name}`, 'missing', 'add it');
    else {
      const wrong = of(value);
      if (wrong !== undefined)
        before.fault(`${at}.${name}`, wrong, 'see "register tasks" for the shape', value);
    }
  }
  if (before.count() > 0) return undefined;
  const read = task as unknown as MapTask;
  if (read.months === null && read.parts.length === 0) {
    fault(`${at}.months`, 'null belongs to a heading only', 'write a whole number of months from 1', null);
    return undefined;
  }
  const revisions = [...read.revisions].sort((a, b) => a.n - b.n);
  for (const [k, r] of revisions.entries()) {
    const last = revisions[k - 1];
    if (last !== undefined && (last.n === r.n || last.on > r.on)) {
      fault(
        `${at}.revisions`,
        `revision ${r.n} does not follow revision ${last.n}`,
        'number and date them in order',
        r.n,
      );
    }
  }
  return { ...read, revisions };
}

function faultCount(report: Report): { fault: Report; count: () => number } {
  let n = 0;
  return {
    fault: (...args) => {
      n += 1;
      report(...args);
    },
    count: () => n,
  };
}
