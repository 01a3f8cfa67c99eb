/**
 * The demo works: its own day and owner, its jobs, its people. Its signed register, `content/demo/register`, is read by
 * the register's own room.
 */
import { z } from 'zod';
import type { Need } from '../register/needs.ts';
import { type People, peopleOfText } from '../register/people.ts';
import { personId as personIdFault } from '../register/shapes.ts';
import { GivenError } from '../trade/given.ts';
import { faultsOf } from './faults.ts';
import { count } from './fields.ts';
import { plainId, taskId } from './ids.ts';
import { missing, missingOne } from './missing.ts';
import { type ContentFile, type FileFault, readEntry, type Shelf } from './shelf.ts';
import type { Task } from './task.ts';

const personId = z
  .string()
  .refine((id) => personIdFault(id) === undefined, { error: 'letters, digits, - _ or points, as p-17' });
const instant = z.iso.datetime({ offset: true, error: 'an instant with Z or an offset' });

const worksShape = z.strictObject({
  works: z.string().min(1),
  /** The zone that its register counts days in. */
  zone: z.string().min(1),
  /** The demo's own day and moment: its board does not age. */
  on: z.iso.date({ error: 'a day, as 2026-03-09' }),
  at: instant,
  /** Public key that owns the register. */
  owner: z.string().regex(/^[0-9a-f]{64}$/, { error: '64 small hexadecimal digits' }),
  /** People of the board, in no other order than by id. */
  crew: z.array(personId).min(1),
});

/** A jobs file: who is needed for what, and who is away when. */
const jobShape = z.strictObject({
  id: z.string().min(1),
  from: instant,
  to: instant,
  /** How many people the job wants. */
  hands: count,
  needs: z
    .array(z.strictObject({ task: taskId, variant: z.record(plainId, plainId).optional(), count }))
    .min(1),
});
const jobsShape = z.strictObject({
  jobs: z.tuple([jobShape], jobShape),
  people: z.array(
    z.strictObject({ id: personId, absent: z.array(z.strictObject({ from: instant, to: instant })) }),
  ),
});

export interface Job {
  readonly id: string;
  /** Instants, with their offsets. */
  readonly from: string;
  readonly to: string;
  readonly needs: readonly Need[];
}
export interface Demo extends z.infer<typeof worksShape> {
  readonly jobs: readonly [Job, ...Job[]];
  readonly people: People;
}

const WORKS = 'content/demo/demo.json';
const JOBS = 'content/demo/jobs.json';
const PEOPLE = 'content/demo/people.json';
export const demoFiles: readonly string[] = [WORKS, JOBS, PEOPLE];

const shelfOf = <T>(shape: z.ZodType<T>): Shelf<T> => ({
  ...{ folder: 'demo', ending: '.json', byLanguage: false, named: false, shape },
});

/** Reads the three files of the demo; `undefined` where they are not all there and good, with what is wrong. */
export function readDemo(
  files: readonly ContentFile[],
  tasks: ReadonlyMap<string, Task>,
): { readonly demo: Demo | undefined; readonly faults: readonly FileFault[] } {
  const given = new Map(files.filter(({ path }) => demoFiles.includes(path)).map((f) => [f.path, f]));
  if (given.size === 0) return { demo: undefined, faults: [] };
  const faults: FileFault[] = [];
  const read = <T>(file: string, of: (found: ContentFile) => T | undefined): T | undefined => {
    const found = given.get(file);
    if (found !== undefined) return of(found);
    const todo = `the demo wants ${demoFiles.join(', ')}`;
    faults.push({ file, field: '', message: 'this file is missing', todo });
    return undefined;
  };
  const shaped = <T>(file: string, shape: z.ZodType<T>) =>
    read(file, (found) => {
      const { entry, faults: wrong } = readEntry(shelfOf(shape), found, faultsOf);
      faults.push(...wrong);
      return entry?.data;
    });
  const works = shaped(WORKS, worksShape);
  const jobs = shaped(JOBS, jobsShape);
  const people = read(PEOPLE, ({ text }) => {
    try {
      return peopleOfText(text);
    } catch (cause) {
      if (!(cause instanceof GivenError)) throw cause;
      faults.push(...cause.faults.map((fault) => ({ file: PEOPLE, ...fault })));
      return undefined;
    }
  });
  if (jobs !== undefined) faults.push(...needFaults(jobs.jobs, tasks));
  if (people !== undefined) {
    const ids = new Set(people.ids);
    faults.push(...missing(WORKS, 'crew', works?.crew ?? [], ids, 'person'));
    const free = jobs?.people ?? [];
    faults.push(...free.flatMap(({ id }, i) => missingOne(JOBS, `people[${i}].id`, id, ids, 'person')));
  }
  if (works === undefined || jobs === undefined || people === undefined || faults.length > 0) {
    return { demo: undefined, faults };
  }
  return { demo: { ...works, jobs: jobs.jobs, people }, faults };
}

/** Tasks, pairs and values of a job's needs that the task map does not have. */
function needFaults(jobs: readonly Job[], tasks: ReadonlyMap<string, Task>): readonly FileFault[] {
  return jobs.flatMap(({ needs }, i) =>
    needs.flatMap(({ task: id, variant = {} }, k): readonly FileFault[] => {
      const at = `jobs[${i}].needs[${k}]`;
      const task = tasks.get(id);
      if (task === undefined) return missingOne(JOBS, `${at}.task`, id, new Set(tasks.keys()), 'task');
      const known = [task, ...task.parts.flatMap((part) => tasks.get(part) ?? [])];
      return Object.entries(variant).flatMap(([pair, value]) => {
        const values = known.flatMap(({ variants }) => variants[pair as keyof typeof variants] ?? []);
        return missingOne(JOBS, `${at}.variant.${pair}`, value, new Set(values), 'value of this pair');
      });
    }),
  );
}
