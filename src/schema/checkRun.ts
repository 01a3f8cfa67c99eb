/**
 * A run read with every fault at once: where its shape is at fault, what can be read of it is looked through as well, so
 * that nobody mends the spelling of a field only to hear of a ring of legs.
 */
import type { z } from 'zod';
import type { Catalogue } from '../run/catalogue.ts';
import { resolveRun } from '../run/resolve.ts';
import type { Run } from '../run/types.ts';
import type { RunUsual } from '../run/usual.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { type Checked, faultsOf } from './faults.ts';
import { runShape } from './run.ts';

type Issue = z.core.$ZodIssue;
type Fields = Record<string, unknown>;

/**
 * @returns the run, its shape good, whether or not it hangs together (`resolveRun` says that); or every fault of its
 *          shape, and what else is wrong with the parts that could be read
 */
export function checkRun(given: unknown, catalogue: Catalogue, usual: RunUsual): Checked<Run> {
  const read = runShape.safeParse(given);
  if (read.success) return { data: read.data };
  const { issues } = read.error;
  const faults = faultsOf(issues, given);
  return {
    faults: [...faults, ...otherFaults(given, issues, faults, (run) => resolveRun(run, catalogue, usual))],
  };
}

function otherFaults(
  given: unknown,
  issues: readonly Issue[],
  known: readonly Fault[],
  resolve: (run: Run) => unknown,
): readonly Fault[] {
  const rest = readable(given, issues);
  if (rest === null) return [];
  const read = runShape.safeParse(rest.run);
  if (!read.success) return [];
  try {
    resolve(read.data);
    return [];
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    return cause.faults
      .map((fault) => ({ ...fault, field: rest.asGiven(fault.field) }))
      .filter(({ field }) => !known.some((k) => field === k.field || k.field.startsWith(`${field}.`)));
  }
}

/** Fields that every run must have, where they cannot be read: something that brings no fault of its own elsewhere. */
const STAND_IN: Fields = {
  v: 1,
  start: { kind: 'free', joint: 'free' },
  temps: { lowF: 0, highF: 100, nowF: 50 },
};
/** The same for fields of a leg: so long that whatever is placed on it lies on it. */
const LEG_STAND_IN: Fields = { length: 1_000_000, fitting: null };
/** Lists that may lack an entry without the others meaning something else. */
const LISTS = ['ends', 'joints', 'supports', 'cables', 'marks', 'places'];

/**
 * The run without what is at fault: fields that no run has, fields that may be left out, entries of its lists.
 *
 * @returns null where too little is left; else the run, and the path in what was given of a path in it
 */
function readable(
  given: unknown,
  issues: readonly Issue[],
): { readonly run: Fields; readonly asGiven: (field: string) => string } | null {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) return null;
  const run = structuredClone(given) as Fields;
  const dropped = new Map<string, Set<number>>();
  for (const issue of issues) {
    const [list, index, field, ...deeper] = issue.path;
    if (issue.code === 'unrecognized_keys') {
      const holder = at(run, issue.path);
      for (const key of issue.keys) delete holder?.[key];
    } else if (list === undefined) return null;
    else if (typeof index === 'number' && LISTS.includes(String(list))) {
      const of = dropped.get(String(list)) ?? new Set();
      dropped.set(String(list), of.add(index));
    } else if (list !== 'legs') {
      delete run[String(list)];
      if (Object.hasOwn(STAND_IN, list)) run[String(list)] = STAND_IN[String(list)];
      else if (list === 'tray') run['tray'] = '?';
    } else {
      const leg = typeof index === 'number' ? at(run, [list, index]) : undefined;
      if (leg === undefined || field === undefined || deeper.length > 0) return null;
      delete leg[String(field)];
      if (Object.hasOwn(LEG_STAND_IN, field)) leg[String(field)] = LEG_STAND_IN[String(field)];
    }
  }
  const kept = new Map<string, readonly number[]>();
  for (const [list, gone] of dropped) {
    const all = run[list] as readonly unknown[];
    const left = all.map((_, i) => i).filter((i) => !gone.has(i));
    kept.set(list, left);
    run[list] = left.map((i) => all[i]);
  }
  const asGiven = (field: string) =>
    field.replace(/^(\w+)\[(\d+)\]/, (path, list: string, i: string) => {
      const index = kept.get(list)?.[Number(i)];
      return index === undefined ? path : `${list}[${index}]`;
    });
  return { run, asGiven };
}

function at(run: unknown, path: readonly PropertyKey[]): Fields | undefined {
  const found = path.reduce<unknown>((part, key) => (part as Fields | undefined)?.[String(key)], run);
  return typeof found === 'object' && found !== null ? (found as Fields) : undefined;
}
