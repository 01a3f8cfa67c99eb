import type { Say } from '../trade/answer.ts';
import { byText } from './bytes.ts';
import { type Entry, markerText, type Problem, type ProblemCode } from './held.ts';
import type { Judged } from './judged.ts';
import { isBackDated, type Placed } from './order.ts';
import { MARKER } from './paths.ts';
import { bodyState } from './view.ts';

/** What a register's own faults are called in `registerProblem`. */
export const problemKeys = [
  'foreign-file',
  'foreign-owner',
  'back-dated',
  'body-missing',
  'fork',
  'fork-owner',
  'gap',
  'marker',
  'unreadable',
] as const;
type ProblemKey = (typeof problemKeys)[number];

/**
 * Everything wrong with a register, sorted by file and line. One fault is one problem: what follows from it is the
 * standing's affair.
 *
 * @param foreign  entries of another register
 * @param of  targets of settlements that count; entries on branches that lost, by id; public key that was asked for
 */
export function listProblems(
  judged: Omit<Judged, 'problems'>,
  foreign: readonly Entry[],
  of: {
    readonly settled: ReadonlySet<string>;
    readonly lost: ReadonlySet<string>;
    readonly owner: string | undefined;
  },
): readonly Problem[] {
  const { view, authority } = judged;
  const { settled, lost, owner } = of;
  const at = (e: Entry, code: ProblemCode, say: Say, isSettled = false): Problem => ({
    file: e.file,
    line: e.line,
    code,
    say,
    ...(isSettled ? { settled: true as const } : {}),
  });
  const words = (key: ProblemKey, values?: Say['values']): Say =>
    values === undefined ? { say: `registerProblem.${key}` } : { say: `registerProblem.${key}`, values };
  const problems: Problem[] = [...view.held.problems];

  if (view.held.marker !== undefined && view.held.marker !== view.begin.id) {
    problems.push({ file: MARKER, code: 'altered', say: words('marker') });
  } else if (view.held.marker === undefined && !problems.some((p) => p.file === MARKER)) {
    const why = `it is not here, and was ${markerText(view.begin.id)}`;
    problems.push({ file: MARKER, code: 'unreadable', say: words('unreadable', { why }) });
  }
  for (const e of foreign) problems.push(at(e, 'foreign-file', words('foreign-file')));
  if (owner !== undefined && !authority.owners.includes(owner)) {
    problems.push(at(view.begin, 'foreign-file', words('foreign-owner')));
  }
  for (const p of view.list) {
    const reason = authority.voids.get(p.id);
    if (reason !== undefined) problems.push(at(p, reason.code, reason.say, reason.settled));
    // Cut off by what knew it, or given up with its branch: what else is wrong with it is done with too.
    const isGone = (reason?.code === 'after-retirement' && reason.settled) || lost.has(p.id);
    if (isBackDated(p)) {
      const day = view.dayIn(view.zone, p.entered);
      problems.push(at(p, 'back-dated', words('back-dated', { day }), settled.has(p.id) || isGone));
    }
    if (bodyIsMissing(judged, p))
      problems.push(at(p, 'body-missing', words('body-missing', { hash: p.header.body ?? '' }), isGone));
  }
  for (const { fork, settled: done } of judged.forks) {
    const second = fork.branches[1] as Placed;
    problems.push(at(second, 'fork', words('fork', { n: fork.seq }), done));
  }
  if (authority.forked) {
    for (const t of authority.takeOvers) problems.push(at(t, 'fork', words('fork-owner')));
  }
  for (const gap of judged.gaps)
    problems.push(at(gap.by, 'gap', words('gap', { id: gap.cited.id }), gap.settled));
  return problems.sort(
    (a, b) => byText(a.file, b.file) || (a.line ?? 0) - (b.line ?? 0) || byText(a.code, b.code),
  );
}

/** An altered body is reported once, at its own file; one about somebody who was erased is missed by nobody. */
function bodyIsMissing({ view }: Omit<Judged, 'problems'>, p: Placed): boolean {
  const { about } = p.header;
  return bodyState(view, p).state === 'missing' && (about === null || !view.erased.has(about));
}
