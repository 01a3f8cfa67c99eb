import type { Say } from '../trade/answer.ts';
import { byText } from './bytes.ts';
import { bySeen, type Check, type Withdrawn } from './checks.ts';
import { addMonths, type Day, nextDay } from './days.ts';
import type { Gap } from './gaps.ts';
import type { Judged } from './judged.ts';
import { latest } from './order.ts';
import type { MapTask } from './taskMap.ts';

export const standings = ['not shown', 'practice only', 'show again', 'shown'] as const;
export type Standing = (typeof standings)[number];
export const rankOf = (standing: Standing): number => standings.indexOf(standing);

/**
 * Why something stands as it does. `code`: W withdrawn, N not yet since, a revision's number, T time, ? in doubt;
 * beside "not shown", 2: only the second witness is missing.
 */
export interface Why {
  readonly code: string;
  readonly say: Say;
  readonly entry: string | null;
}

/** How a person stands in one way of doing a task, or in a task, on a day. */
export interface Stands {
  readonly standing: Standing;
  /** First day of the present standing, where there is one. */
  readonly since: Day | null;
  /** Last day that the showing is or was good. */
  readonly until: Day | null;
  /** The one that governs first. */
  readonly why: readonly Why[];
  /** Ids that it rests on, sorted. */
  readonly entries: readonly string[];
}

export interface On {
  readonly judged: Judged;
  readonly task: MapTask;
  readonly on: Day;
  /** Months that a showing is good for. */
  readonly months: number;
  /** Doubt about everything of this person (a body is missing). */
  readonly unsure: Why | undefined;
}

/** Ids, each once, sorted. */
export const ids = (all: readonly string[]): readonly string[] =>
  all.length < 2 ? all : [...new Set(all)].sort(byText);

/** Wherever it is asked for: shown, performed, alone and in sight of the witness. */
export const isPerformed = ({ body }: Check): boolean =>
  body.manner === 'performed' && body.help === 'alone' && body.inSight;

/** Seconds of a check that were entered by the day. */
const secondsBy = (check: Check, on: Day): Check['seconds'] => check.seconds.filter((s) => s.entered <= on);

const isGood = (check: Check, { task, on }: On): boolean =>
  check.body.outcome === 'shown' && isPerformed(check) && (!task.second || secondsBy(check, on).length > 0);

export const notYetStands = ({ body, withdrawn }: Check): boolean =>
  body.outcome === 'not-yet' && !body.stopped && withdrawn === undefined;

/** A check that says something about the person: stopped attempts and what was taken back, good ones apart, do not. */
export const isOnRecord = (check: Check, at: On): boolean =>
  !check.body.stopped && (check.withdrawn === undefined || isGood(check, at));

/**
 * How a person stands in one variant of a task.
 * @param checks  the person's checks of this task and variant that count, seen up to `at.on`
 */
export function standingOf(checks: readonly Check[], at: On): Stands {
  const good = checks.filter((c) => isGood(c, at));
  const outcomes = lastOf(good, at.judged)
    .sort((a, b) => byText(a.entry.id, b.entry.id))
    .map((c) => withShowing(c, checks, at));
  const [first, ...rest] = outcomes;
  if (first === undefined) return withoutShowing(checks, at);
  return rest.reduce((low, s) => (rankOf(s.standing) < rankOf(low.standing) ? s : low), first);
}

/** Those that no other comes after: of the last day, and of that day not in another's past. */
function lastOf(good: readonly Check[], { view }: Judged): Check[] {
  let day = '';
  for (const { body } of good) if (body.on > day) day = body.on;
  const ofDay = good.filter((c) => c.body.on === day);
  if (ofDay.length < 2) return ofDay;
  const last = new Set(
    latest(
      view.order,
      ofDay.map((c) => c.entry),
    ),
  );
  return ofDay.filter((c) => last.has(c.entry));
}

function withShowing(showing: Check, checks: readonly Check[], at: On): Stands {
  const until = addMonths(showing.body.on, at.months);
  const { id } = showing.entry;
  const seconds = at.task.second ? secondsBy(showing, at.on).map((s) => s.entry.id) : [];
  const reasons = [
    ...withdrawal(showing, at),
    ...notYet(showing, checks, at),
    ...revision(showing, at),
    ...time(showing, until, at),
    ...doubt(showing, at),
  ];
  const [governs] = reasons;
  const base = {
    until,
    why: reasons.map((r) => r.why),
    entries: ids([id, ...seconds, ...reasons.flatMap((r) => r.rests ?? [])]),
  };
  if (governs === undefined) return { standing: 'shown', since: showing.body.on, ...base };
  return { standing: 'show again', since: governs.since, ...base };
}

interface Reason {
  readonly since: Day | null;
  readonly why: Why;
  /** The entry beside the showing that it rests on. */
  readonly rests?: string;
}

function withdrawal(showing: Check, { task, on }: On): readonly Reason[] {
  const of = (w: Withdrawn, key: string): Reason => ({
    since: w.day,
    why: { code: 'W', say: { say: key, values: { day: w.day } }, entry: w.entry.id },
    rests: w.entry.id,
  });
  if (showing.withdrawn !== undefined) return [of(showing.withdrawn, 'registerWhy.withdrawn')];
  const seconds = secondsBy(showing, on);
  if (!task.second || seconds.some((s) => s.withdrawn === undefined)) return [];
  // The day on which the last of them was taken back.
  const back = seconds.map((s) => s.withdrawn as Withdrawn).sort((a, b) => a.entry.rank - b.entry.rank);
  const last = back.at(-1);
  return last === undefined ? [] : [of(last, 'registerWhy.second-withdrawn')];
}

function notYet(showing: Check, checks: readonly Check[], { judged }: On): readonly Reason[] {
  const against = checks
    .filter(notYetStands)
    .filter(
      (c) =>
        c.body.on > showing.body.on ||
        (c.body.on === showing.body.on && !judged.view.order.isPast(showing.entry, c.entry)),
    )
    .sort(bySeen);
  const [first] = against;
  if (first === undefined) return [];
  const { on } = first.body;
  const { id } = first.entry;
  return [
    {
      since: on,
      why: { code: 'N', say: { say: 'registerWhy.not-yet', values: { day: on } }, entry: id },
      rests: id,
    },
  ];
}

function revision(showing: Check, { task, on }: On): readonly Reason[] {
  const asks = task.revisions.find((r) => r.showAgain && r.on <= on && r.n > showing.revision);
  if (asks === undefined) return [];
  const say = { say: 'registerWhy.revision', values: { n: asks.n, day: asks.on } };
  return [{ since: asks.on, why: { code: String(asks.n), say, entry: showing.entry.id } }];
}

function time(showing: Check, until: Day, { on }: On): readonly Reason[] {
  if (on <= until) return [];
  const say = { say: 'registerWhy.time', values: { day: until } };
  return [{ since: nextDay(until), why: { code: 'T', say, entry: showing.entry.id } }];
}

function doubt(showing: Check, at: On): readonly Reason[] {
  const { judged, task, unsure } = at;
  const whys: Why[] = [];
  if (showing.doubt !== undefined) whys.push({ code: '?', say: showing.doubt, entry: showing.entry.id });
  const seconds = task.second ? secondsBy(showing, at.on).filter((s) => s.withdrawn === undefined) : [];
  const [unsureSecond] = seconds;
  if (unsureSecond !== undefined && seconds.every((s) => s.doubt !== undefined)) {
    whys.push({ code: '?', say: { say: 'registerWhy.second-doubt' }, entry: unsureSecond.entry.id });
  }
  if (unsure !== undefined) whys.push(unsure);
  const gap = gapsFor(judged, task.id).find(({ until }) => showing.body.on <= until);
  if (gap !== undefined) whys.push({ code: '?', say: { say: 'registerWhy.gap' }, entry: gap.cited.id });
  return whys.slice(0, 1).map((why) => ({ since: null, why }));
}

const knownGaps = new WeakMap<Judged, Map<string, readonly Gap[]>>();

/** Missing entries that may have been about a task; of several the first that reaches to a day speaks for it. */
function gapsFor(judged: Judged, task: string): readonly Gap[] {
  const known = knownGaps.get(judged) ?? new Map<string, readonly Gap[]>();
  knownGaps.set(judged, known);
  let furthest = '';
  const gaps =
    known.get(task) ??
    judged.gaps.filter(({ cited, until, cut, settled, heard }) => {
      const speaks = !cut && !settled && heard && until > furthest && mightSign(judged, cited.signer, task);
      if (speaks) furthest = until;
      return speaks;
    });
  known.set(task, gaps);
  return gaps;
}

/** Whether an entry of this signer that nobody holds could have been about the task. */
function mightSign(judged: Judged, signer: string, task: string): boolean {
  const { authority } = judged;
  if (authority.owners.includes(signer)) return true;
  return authority.appointments.some(
    (a) => a.key === signer && (a.tasks === null || a.tasks === 'all' || a.tasks.includes(task)),
  );
}

function withoutShowing(checks: readonly Check[], at: On): Stands {
  const unsure = at.unsure === undefined ? [] : [at.unsure];
  const stand = checks.filter((c) => c.body.outcome === 'shown' && c.withdrawn === undefined);
  const practice = stand.filter((c) => !isPerformed(c)).sort(bySeen);
  const last = practice.at(-1);
  if (last !== undefined) {
    const entries = ids(practice.map((c) => c.entry.id));
    return { standing: 'practice only', since: last.body.on, until: null, why: unsure, entries };
  }
  const alone = stand.filter(isPerformed).sort(bySeen);
  const waiting = at.task.second ? alone.at(-1) : undefined;
  const second: readonly Why[] =
    waiting === undefined
      ? []
      : [{ code: '2', say: { say: 'registerWhy.second-missing' }, entry: waiting.entry.id }];
  const rests = waiting === undefined ? checks.filter(notYetStands) : alone;
  return {
    standing: 'not shown',
    since: null,
    until: null,
    why: [...second, ...unsure],
    entries: ids(rests.map((c) => c.entry.id)),
  };
}
