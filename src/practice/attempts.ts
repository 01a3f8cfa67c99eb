/**
 * Tries at practice draws: what was answered, when, and what the first look at it said. Two heaps of tries join to one in
 * which the same try stands once. A draw and its answers fix the grade, so a grade here is a note of it, never its source.
 */
import { isRecord } from './fileFields.ts';
import type { Grade } from './grade.ts';

/** What came of a try: the draw passed, was only near, or neither. */
export const CAME = ['passed', 'near', 'not'] as const;
export type Came = (typeof CAME)[number];

export interface Attempt {
  readonly family: string;
  readonly seed: string;
  /** Generator that made the draw; a later one makes other draws of the same seed. */
  readonly generator: string;
  /** When it was answered, as ISO text in UTC with milliseconds. */
  readonly at: string;
  /** By ask, as they were given; a blank is left out. */
  readonly answers: Readonly<Record<string, unknown>>;
  /** What was said of it then, so that a list of sheets needs no engine; left out by an earlier edition of the pages. */
  readonly came?: Came;
}

/** What a grade comes to: near only when nothing has to be reworked and nothing is blank. */
export function cameOf({ passed, findings }: Grade): Came {
  if (passed) return 'passed';
  return findings.some(({ verdict }) => verdict === 'rework' || verdict === 'blank') ? 'not' : 'near';
}

/** The same text for the same value, in whatever order its fields came. */
const plainText = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) =>
    isRecord(one)
      ? Object.fromEntries(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)))
      : one,
  );

/** What makes two tries one and the same: all but the note of what came of it. */
export const attemptKey = ({ family, seed, generator, at, answers }: Attempt): string =>
  plainText([at, family, seed, generator, answers]);

/** Of two notes of one try the harder one; none gives way to any. */
function harder(a: Attempt, b: Attempt): Attempt {
  const place = ({ came }: Attempt) => (came === undefined ? -1 : CAME.indexOf(came));
  return place(b) > place(a) ? b : a;
}

/** Both heaps as one, first to last; the same whichever comes first, and however often one is joined again. */
export function mergeAttempts(here: readonly Attempt[], there: readonly Attempt[]): readonly Attempt[] {
  const all = new Map<string, Attempt>();
  for (const attempt of [...here, ...there]) {
    const key = attemptKey(attempt);
    const known = all.get(key);
    all.set(key, known === undefined ? attempt : harder(known, attempt));
  }
  return [...all].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, attempt]) => attempt);
}

/** The first try at each draw, first to last: a later one was made with the notes of an earlier one in sight. */
export function firstTries(attempts: readonly Attempt[]): readonly Attempt[] {
  const first = new Map<string, Attempt>();
  for (const attempt of mergeAttempts(attempts, [])) {
    const draw = plainText([attempt.family, attempt.seed, attempt.generator]);
    if (!first.has(draw)) first.set(draw, attempt);
  }
  return [...first.values()];
}
