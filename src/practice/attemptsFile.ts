/**
 * The file that carries a device's tries at practice (README.md shows it): out of harm's way, to another device of the same
 * person, or to a trainer who counts mistakes. It names no person and is signed by nobody: practice never changes what the
 * register says.
 */
import { PLAIN_ID } from '../trade/ids.ts';
import { type Attempt, CAME, mergeAttempts } from './attempts.ts';
import { anyText, exactly, type Fields, faultsIn, isRecord, refuseIf, textOf } from './fileFields.ts';
import { SEED_SIGNS, seedFault } from './generator.ts';

export interface AttemptsFile {
  readonly v: 1;
  readonly kind: 'attempts';
  /** Name of the device that saved it. */
  readonly device: string;
  /** When it was saved, as ISO text in UTC with milliseconds. */
  readonly made: string;
  readonly attempts: readonly Attempt[];
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

/** A file of kind `attempts`. Whether its draws can still be drawn is another question. @throws {GivenError} every fault of it */
export function readAttemptsFile(given: unknown): AttemptsFile {
  const attempts = isRecord(given) && Array.isArray(given['attempts']) ? given['attempts'] : [];
  refuseIf([
    ...faultsIn(given, fields),
    ...attempts.flatMap((one, k) => faultsIn(one, attemptFields, `attempts[${k}]`)),
  ]);
  return given as AttemptsFile;
}

/** The file's text: each try once, a line each, first to last. */
export function attemptsText(file: Omit<AttemptsFile, 'v' | 'kind'>): string {
  const { attempts, ...head } = file;
  const start = JSON.stringify({ v: 1, kind: 'attempts', ...head }).slice(0, -1);
  const lines = mergeAttempts(attempts, []).map((attempt) => JSON.stringify(attempt));
  return `${start},"attempts":[${lines.length === 0 ? '' : `\n${lines.join(',\n')}\n`}]}\n`;
}
