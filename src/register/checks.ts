import type { Say } from '../trade/answer.ts';
import type { Bodies, Variant } from './bodies.ts';
import { byText } from './bytes.ts';
import { canonical, type Json } from './canonical.ts';
import type { Day } from './days.ts';
import type { Judged } from './judged.ts';
import { latest, type Placed } from './order.ts';
import { fullVariant, type MapTask, revisionOn, type TaskMap, taskOf, variantText } from './taskMap.ts';

/**
 * Grades evidence again from its sheet's seed: whether it passes, for this person and task. Passed in, for grading is
 * the practice's affair.
 * @throws {GivenError} where it cannot be graded (unknown sheet, another person's): then the check is in doubt
 */
export type Regrade = (evidence: Json, of: { readonly person: string; readonly task: string }) => boolean;

/** A withdrawal that counts: the day it was entered. */
export interface Withdrawn {
  readonly entry: Placed;
  readonly day: Day;
}

export interface Second {
  readonly entry: Placed;
  readonly entered: Day;
  readonly withdrawn: Withdrawn | undefined;
  readonly doubt: Say | undefined;
}

/** A check that counts, with all that later entries made of it, whatever the map of tasks. */
interface Seen {
  readonly entry: Placed;
  readonly body: Bodies['check'];
  readonly person: string;
  readonly withdrawn: Withdrawn | undefined;
  readonly seconds: readonly Second[];
  /** Its own doubt, and that of its signer's appointment; what its seconds hand on depends on the day asked about. */
  readonly doubt: Say | undefined;
}

/** The same beside its task. */
export interface Check extends Seen {
  /** Every pair of the task, plain where it was left out. */
  readonly variant: Variant;
  readonly variantKey: string;
  /** The revision it stands for: never one later than in force on the day seen. */
  readonly revision: number;
}

type ByPerson = ReadonlyMap<string, readonly Check[]>;

/** Checks of a register by person, those of people who are erased left out. */
export function checksOf(judged: Judged, map: TaskMap, regrade: Regrade | undefined): ByPerson {
  const known = lastAsked.get(judged);
  if (known?.map === map && known.regrade === regrade) return known.checks;
  const checks = besideTasks(judged, map, regrade);
  lastAsked.set(judged, { map, regrade, checks });
  return checks;
}

interface AskedLast {
  readonly map: TaskMap;
  readonly regrade: Regrade | undefined;
  readonly checks: ByPerson;
}
/** A page asks for one board after the other: of other days and people, of one map. */
const lastAsked = new WeakMap<Judged, AskedLast>();

function besideTasks(judged: Judged, map: TaskMap, regrade: Regrade | undefined): ByPerson {
  const tasks = tasksOf(map);
  const { people, corrections } = seenOf(judged);
  const beside = (seen: Seen): Check | undefined => {
    const { entry, body, person, withdrawn, seconds } = seen;
    const found = tasks(body.task);
    if (found === undefined) return undefined;
    const { variant, variantKey } = found.variantOf(body.variant);
    const revision = Math.min(body.revision, found.revisionOn(body.on));
    const doubt =
      seen.doubt ?? doubtOfEvidence(judged, person, body, corrections.get(entry.id) ?? [], regrade);
    return { entry, body, person, withdrawn, seconds, doubt, variant, variantKey, revision };
  };
  const all = new Map<string, readonly Check[]>();
  for (const [person, seen] of people) {
    const checks = seen.map(beside).filter((c) => c !== undefined);
    if (checks.length > 0) all.set(person, checks);
  }
  return all;
}

interface AllSeen {
  readonly people: ReadonlyMap<string, readonly Seen[]>;
  /** By the id of the check. */
  readonly corrections: ReadonlyMap<string, readonly Placed[]>;
}
const allSeen = new WeakMap<Judged, AllSeen>();

/** Every check that counts, by person: gone through once for a register, and not again for every board and question. */
export function seenOf(judged: Judged): AllSeen {
  const found = allSeen.get(judged) ?? readSeen(judged);
  allSeen.set(judged, found);
  return found;
}

function readSeen(judged: Judged): AllSeen {
  const { view, authority } = judged;
  const kinds = Map.groupBy(view.list, (p) => p.header.kind);
  const counted = (kind: string): readonly Placed[] => (kinds.get(kind) ?? []).filter(judged.counts);
  const ofKind = (kind: string): ReadonlyMap<string, Placed[]> =>
    Map.groupBy(counted(kind), (p) => p.header.target[0] ?? '');
  const dayOf = (p: Placed): Day => view.dayIn(view.zone, p.entered);
  const withdrawals = ofKind('withdraw');
  const withdrawn = (id: string): Withdrawn | undefined => {
    const [entry] = withdrawals.get(id) ?? [];
    return entry === undefined ? undefined : { entry, day: dayOf(entry) };
  };
  const secondsOf = ofKind('second');
  const people = new Map<string, Seen[]>();
  for (const entry of counted('check')) {
    const { about } = entry.header;
    const state = authority.body(entry, 'check');
    if (state.state !== 'held' || about === null) continue;
    const { body } = state;
    const seconds = secondsOf.get(entry.id)?.map(
      (s): Second => ({
        entry: s,
        entered: dayOf(s),
        withdrawn: withdrawn(s.id),
        doubt: judged.doubt(s) ?? unsureAppointment(judged, s, body),
      }),
    );
    const seen: Seen = {
      entry,
      body,
      person: about,
      withdrawn: withdrawn(entry.id),
      seconds: seconds ?? NO_SECONDS,
      doubt: judged.doubt(entry) ?? unsureAppointment(judged, entry, body),
    };
    const own = people.get(about);
    if (own === undefined) people.set(about, [seen]);
    else own.push(seen);
  }
  return { people, corrections: ofKind('correct') };
}

const NO_SECONDS: readonly Second[] = [];

type Way = Pick<Check, 'variant' | 'variantKey'>;

/** A task of a map; its ways and what was in force on a day are each worked out once: many checks are of few. */
interface Known {
  variantOf(given: Variant): Way;
  revisionOn(on: Day): number;
}

function tasksOf(map: TaskMap): (id: string) => Known | undefined {
  const known = new Map(
    map.tasks.map((t) => {
      const task = taskOf(map, t.id);
      return [t.id, task === undefined ? undefined : knownOf(task)];
    }),
  );
  return (id) => known.get(id);
}

function knownOf(task: MapTask): Known {
  const plain = wayOf(task, {});
  const ways = new Map<string, Way>();
  const days = new Map<Day, number>();
  const variantOf = (given: Variant): Way => {
    if (Object.keys(given).length === 0) return plain;
    const text = canonical(given);
    const way = ways.get(text) ?? wayOf(task, given);
    ways.set(text, way);
    return way;
  };
  const revision = (on: Day): number => {
    const n = days.get(on) ?? revisionOn(task, on);
    days.set(on, n);
    return n;
  };
  return { variantOf, revisionOn: revision };
}

function wayOf(task: MapTask, given: Variant): Way {
  const variant = fullVariant(task, given);
  return { variant, variantKey: variantText(variant) };
}

function unsureAppointment(judged: Judged, entry: Placed, { task, on }: Bodies['check']): Say | undefined {
  const appointments = judged.authority.appointedFor(entry, task, on);
  const sure = appointments.some((a) => a.tasks !== null && judged.doubt(a.entry) === undefined);
  return sure ? undefined : { say: 'registerWhy.appointment' };
}

function doubtOfEvidence(
  judged: Judged,
  person: string,
  body: Bodies['check'],
  corrections: readonly Placed[],
  regrade: Regrade | undefined,
): Say | undefined {
  if (regrade === undefined || body.outcome !== 'shown') return undefined;
  const replaced = latest(judged.view.order, corrections).flatMap((c): readonly Json[] => {
    const state = judged.authority.body(c, 'correct');
    return state.state === 'held' ? [state.body.evidence] : [];
  });
  const evidence = replaced.length > 0 ? replaced : [body.evidence];
  const holds = (e: Json): boolean => {
    if (e === null) return true;
    try {
      return regrade(e, { person, task: body.task });
    } catch {
      return false;
    }
  };
  return evidence.every(holds) ? undefined : { say: 'registerWhy.evidence' };
}

/** Whether `a` comes after `b`: seen on a later day, or on the same with `b` in its past. */
export const comesAfter = (judged: Judged, a: Check, b: Check): boolean =>
  a.body.on > b.body.on || (a.body.on === b.body.on && judged.view.order.isPast(a.entry, b.entry));

/** By day seen, then as they were entered. */
export const bySeen = (a: Check, b: Check): number =>
  byText(a.body.on, b.body.on) || a.entry.rank - b.entry.rank;
