/** What a witness saw, as the options of a verb say it. */

import type { CheckGiven } from '../../register/acts/check.ts';
import type { Measured } from '../../register/bodies.ts';
import type { Json } from '../../register/canonical.ts';
import { isObject, orNull, record, text } from '../../register/shapes.ts';
import type { Fault } from '../../trade/given.ts';
import type { Option } from '../verb.ts';
import { variantAsked } from './asked.ts';
import type { Options } from './options.ts';

export const checkOptions = {
  person: { value: 'ID', needed: true, line: 'who did it' },
  task: { value: 'ID', needed: true, line: 'the task; a heading is signed by its parts' },
  outcome: { value: 'shown|not-yet', needed: true, line: 'what it came to' },
  variant: { value: 'k=v,k=v', line: 'pairs that are not plain' },
  manner: { value: 'performed|simulated|observed|talked', line: 'how it was done (performed)' },
  'help-given': { value: 'alone|with-help', line: 'whether help was given (alone)' },
  'in-sight': { value: 'yes|no', line: 'whether the witness saw all of it (yes)' },
  stopped: { line: 'stopped for safety: kept, and never counts against anyone; with not-yet only' },
  revision: { value: 'N', line: 'revision of the task (the one in force on the day)' },
  on: { value: 'DATE', needed: true, line: 'the day it was seen' },
  evidence: { value: 'FILE', line: 'the answers to a sheet; they are graded again' },
  measured: { value: 'FILE', line: 'JSON list of {what, wanted, got, tool?}' },
} satisfies Record<string, Option>;

/** What the options say was seen; what cannot be read is a fault, and left out. */
export function checkGivenOf(options: Options): CheckGiven {
  const person = options.need('person', 'give the id of who did it');
  const task = options.need('task', 'give the id of the task');
  return { person, task, ...sawOf(options), evidence: evidenceOf(options) };
}

/** The same without who, which task and the evidence. */
export function sawOf(options: Options): Omit<CheckGiven, 'person' | 'task' | 'evidence'> {
  const { call } = options;
  const outcome = options.need('outcome', 'write shown or not-yet') as CheckGiven['outcome'];
  const on = options.day('on', true) ?? '';
  return {
    outcome,
    on,
    variant: variantAsked(options),
    manner: call.text('manner') as CheckGiven['manner'],
    help: call.text('help-given') as CheckGiven['help'],
    inSight: inSightOf(options),
    stopped: call.has('stopped'),
    revision: revisionOf(options),
    measured: measuredOf(options),
  };
}

function inSightOf({ call, faults }: Options): boolean | undefined {
  const given = call.text('in-sight');
  if (given === undefined || given === 'yes' || given === 'no')
    return given === undefined ? undefined : given === 'yes';
  faults.push({ field: 'in-sight', value: given, message: 'no such choice', todo: 'write yes or no' });
  return undefined;
}

function revisionOf({ call, faults }: Options): number | undefined {
  const given = call.text('revision');
  if (given === undefined) return undefined;
  if (/^[1-9]\d{0,8}$/.test(given)) return Number(given);
  faults.push({
    field: 'revision',
    value: given,
    message: 'no number of a revision',
    todo: 'write a whole number from 1',
  });
  return undefined;
}

function measuredOf(options: Options): readonly Measured[] | undefined {
  const given = options.json('measured');
  if (given === undefined) return undefined;
  const list: readonly Json[] = Array.isArray(given) ? given : [];
  const faults: Fault[] = [];
  if (!Array.isArray(given)) {
    const todo = 'write [{"what","wanted","got","tool"?}]';
    faults.push({ field: 'measured', value: given, message: 'no list', todo });
  }
  const read = list.map((row, i): Measured | undefined => {
    const full = isObject(row) ? { tool: null, ...row } : row;
    const wrong = measuredShape(full);
    if (wrong === undefined) return full as unknown as Measured;
    const todo = 'write {"what","wanted","got"} as texts, "tool" where one was used';
    faults.push({ field: `measured[${i}]`, value: row, message: wrong, todo });
    return undefined;
  });
  options.faults.push(...faults);
  return faults.length > 0 ? undefined : read.filter((row) => row !== undefined);
}

/** The answers in `--evidence`; a file that says null is a fault. */
export function evidenceOf(options: Options): Json | undefined {
  const given = options.json('evidence');
  if (given === null) {
    const todo = 'name the file of the answers, or leave it out';
    options.faults.push({ field: 'evidence', value: given, message: 'no answers', todo });
  }
  return given;
}

const measuredShape = record({ what: text, wanted: text, got: text, tool: orNull(text) });
