/**
 * The file that carries a device's tries at practice (README.md shows it): out of harm's way, to another device of the same
 * person, or to a trainer who counts mistakes. It names no person and is signed by nobody: practice never changes what the
 * register says.
 */
import { type Fault, GivenError } from '../trade/given.ts';
import { PLAIN_ID } from '../trade/ids.ts';
import { type Attempt, CAME, mergeAttempts } from './attempts.ts';
import { anyText, exactly, type Fields, faultsIn, isRecord, textOf } from './fileFields.ts';
import { SEED_SIGNS, seedFault } from './generator.ts';

export interface AttemptsFile {
  readonly v: 1;
  readonly kind: 'attempts';
  /** Name of the device that saved it. */
  readonly device: string;
  /** When it was saved, as ISO text in UTC with milliseconds. */
  readonly made: string;
  readonly attempts: readonly Attempt[];
  /** Of a file that was read: tries in it that are none, each with what is wrong; never written. */
  readonly left?: readonly LeftTry[];
}

export interface LeftTry {
  /** As far as they can be read. */
  readonly family: string;
  readonly seed: string;
  readonly faults: readonly Fault[];
}

const instant = {
  good: (value: unknown) =>
    typeof value === 'string' &&
    /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/.test(value) &&
    // A day that is none reads as another one, or as none.
    new Date(Date.parse(value) || 0).toISOString() === value,
  message: 'this is no moment',
  todo: 'leave it as it was saved: 2026-03-09T14:05:00.000Z',
};

const fields: Fields = {
  v: exactly(1),
  kind: exactly('attempts'),
  device: textOf(/^[A-Za-z0-9-]{1,32}$/, 'this is no name of a device', 'write 1 to 32 letters, digits, -'),
  made: instant,
  attempts: { good: Array.isArray, message: 'this is no list of tries', todo: 'give one entry a try' },
};

const attemptFields: Fields = {
  family: textOf(PLAIN_ID, 'this is no id of a family', 'leave it as it was saved', 100),
  seed: {
    good: (value) => typeof value === 'string' && seedFault(value) === undefined,
    message: 'this is no seed',
    todo: `give a text of 1 to ${SEED_SIGNS} signs`,
  },
  generator: anyText,
  at: instant,
  answers: {
    good: isRecord,
    message: 'these are no answers',
    todo: 'give the answers by the id of their ask',
  },
  came: {
    good: (value) => CAME.some((came) => came === value),
    message: 'nothing comes of a try but these',
    todo: `write ${CAME.join(', ')}, or leave it out`,
    optional: true,
  },
};

/**
 * A file of kind `attempts`. Whether its draws can still be drawn is another question. A single try that is none stays out
 * (`left`), the others come in.
 * @throws {GivenError} every fault of it, where it is no such file or none of its tries can be read
 */
export function readAttemptsFile(given: unknown): AttemptsFile {
  const attempts: readonly unknown[] =
    isRecord(given) && Array.isArray(given['attempts']) ? given['attempts'] : [];
  const read = attempts.map((one, k) => ({ one, faults: faultsIn(one, attemptFields, `attempts[${k}]`) }));
  const bad = read.filter(({ faults }) => faults.length > 0);
  const head = faultsIn(given, fields);
  if (head.length > 0 || (bad.length > 0 && bad.length === read.length))
    throw new GivenError([...head, ...bad.flatMap(({ faults }) => faults)]);
  if (bad.length === 0) return given as AttemptsFile;
  const text = (one: unknown, name: string) => {
    const value = isRecord(one) ? one[name] : undefined;
    return typeof value === 'string' ? value : '';
  };
  return {
    ...(given as AttemptsFile),
    attempts: read.filter(({ faults }) => faults.length === 0).map(({ one }) => one as Attempt),
    left: bad.map(({ one, faults }) => ({ family: text(one, 'family'), seed: text(one, 'seed'), faults })),
  };
}

/** The file's text: each try once, a line each, first to last. One that no reader would take is not written. */
export function attemptsText(file: Omit<AttemptsFile, 'v' | 'kind'>): string {
  const { attempts, left: _, ...head } = file;
  const start = JSON.stringify({ v: 1, kind: 'attempts', ...head }).slice(0, -1);
  const lines = mergeAttempts(attempts, [])
    .filter((attempt) => faultsIn(attempt, attemptFields).length === 0)
    .map((attempt) => JSON.stringify(attempt));
  return `${start},"attempts":[${lines.length === 0 ? '' : `\n${lines.join(',\n')}\n`}]}\n`;
}
