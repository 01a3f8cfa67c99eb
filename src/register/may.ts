/** Whether the register speaks for somebody doing a task over a span of time: yes, no, or not enough evidence. */
import type { Say } from '../trade/answer.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import type { Variant } from './bodies.ts';
import { byText } from './bytes.ts';
import { bySeen, type Check, checksOf, comesAfter, type Regrade } from './checks.ts';
import { addMonths, type Day, LAST_DAY, nextDay, writeInstant } from './days.ts';
import type { Judged } from './judged.ts';
import { personId } from './shapes.ts';
import { isOnRecord, notYetStands, type On, type Stands, standingOf, type Why } from './standing.ts';
import {
  fullVariant,
  isHeading,
  type MapTask,
  monthsOf,
  type TaskMap,
  taskOf,
  variantFaults,
  variantText,
} from './taskMap.ts';
import { ticketsOn } from './tickets.ts';

export const mayAnswers = ['yes', 'no', 'not enough evidence'] as const;
export type MayAnswer = (typeof mayAnswers)[number];

/** What speaks for or against it, and the entry that says so; `null` where it is the lack of one. */
export interface MayReason {
  readonly say: Say;
  readonly entry: string | null;
}
export interface May {
  readonly answer: MayAnswer;
  /** What decides first, then the rest. */
  readonly reasons: readonly MayReason[];
}

/** Who, what, when. */
export interface MayAsked {
  readonly person: string;
  /** A task that is shown itself: no heading, no outside ticket. */
  readonly task: string;
  /** A pair left out has its plain value. */
  readonly variant?: Variant | undefined;
  /** ms since 1970 UTC; the span is [from, to). */
  readonly from: number;
  readonly to: number;
}

/** What is the same for many questions to one register. */
export interface MayKnown {
  readonly map: TaskMap;
  /** Months in place of the map's, by task. */
  readonly months?: Readonly<Record<string, number>> | undefined;
  readonly regrade: Regrade | undefined;
}

/** Everything that keeps a question from being asked; fields by their names. */
export function mayFaults(asked: MayAsked, map: TaskMap): readonly Fault[] {
  const { person, task: id, variant = {}, from, to } = asked;
  const faults: Fault[] = [];
  const wrong = personId(person);
  if (wrong !== undefined) {
    faults.push({ field: 'person', value: person, message: `an id ${wrong}`, todo: 'write another id' });
  }
  const task = taskOf(map, id);
  if (task === undefined) {
    faults.push({
      field: 'task',
      value: id,
      message: 'no such task',
      todo: 'see "register tasks" for the ids',
    });
  } else if (isHeading(task)) {
    const todo = `ask for its parts: ${task.parts.join(', ')}`;
    faults.push({ field: 'task', value: id, message: 'a heading is not shown itself', todo });
  } else faults.push(...variantFaults(task, variant, 'variant'));
  if (to <= from) {
    const message = `not after ${writeInstant(from)}, where it starts`;
    faults.push({ field: 'to', value: writeInstant(to), message, todo: 'write a later instant' });
  }
  return faults;
}

/**
 * Whether the register speaks for a person doing a task, in one way of doing it, from an instant up to another.
 * Dates only: what was seen on a day holds for all of it, and a span that ends at midnight ends with the day before.
 * @throws {GivenError} with all faults of the question
 */
export const mayOf = (judged: Judged, asked: MayAsked & MayKnown): May => mayAsker(judged, asked)(asked);

/** The same for many questions to one register: what does not depend on the question is worked out once. */
export function mayAsker(judged: Judged, known: MayKnown): (asked: MayAsked) => May {
  const checks = checksOf(judged, known.map, known.regrade);
  return (asked) => {
    const faults = mayFaults(asked, known.map);
    if (faults.length > 0) throw new GivenError(faults);
    const task = taskOf(known.map, asked.task) as MapTask;
    if (judged.view.erased.has(asked.person)) {
      return answered([erased(judged, asked.person)]);
    }
    const months = known.months?.[task.id] ?? monthsOf(task);
    const way = variantText(fullVariant(task, asked.variant ?? {}));
    const own = (checks.get(asked.person) ?? []).filter(
      (c) => c.body.task === task.id && c.variantKey === way,
    );
    const span = daysOf(judged, asked);
    const missing = judged.bodyless.get(asked.person);
    const unsure: Why | undefined =
      missing === undefined ? undefined : { code: '?', say: { say: 'registerWhy.body' }, entry: missing.id };
    const at = (on: Day): On => ({ judged, task, on, months, unsure });
    return answered([
      ...turns(own, task, months, span).flatMap((on) => standingOn(own, at(on))),
      ...tickets(judged, asked.person, task, span.last),
    ]);
  };
}

/** First and last day of a span. */
interface Span {
  readonly first: Day;
  readonly last: Day;
}

function daysOf({ view }: Judged, { from, to }: MayAsked): Span {
  // The last hours of the year 9999 are those of a day of five digits in zones ahead of UTC.
  const day = (instant: number): Day => {
    const found = view.dayIn(view.zone, instant);
    return found.length > LAST_DAY.length ? LAST_DAY : found;
  };
  return { first: day(from), last: day(to - 1) };
}

/** Against it, not enough for it, for it, or said besides. */
type Weight = 'against' | 'lacking' | 'for' | 'beside';
interface Weighed extends MayReason {
  readonly weight: Weight;
}

const order: readonly Weight[] = ['against', 'lacking', 'for', 'beside'];

function answered(found: readonly Weighed[]): May {
  const has = (weight: Weight): boolean => found.some((r) => r.weight === weight);
  const answer = has('against') ? 'no' : has('lacking') ? 'not enough evidence' : 'yes';
  const told = new Set<string>();
  const reasons = order
    .flatMap((weight) => found.filter((r) => r.weight === weight))
    .filter(({ say, entry }) => {
      const key = JSON.stringify([say, entry]);
      return told.has(key) ? false : told.add(key);
    })
    .map(({ say, entry }) => ({ say, entry }));
  return { answer, reasons };
}

/** Days of the span on which a standing can turn: between two of them it stays as it is. */
function turns(
  checks: readonly Check[],
  task: MapTask,
  months: number,
  { first, last }: Span,
): readonly Day[] {
  const days = [
    ...checks.flatMap((c) => [
      c.body.on,
      nextDay(addMonths(c.body.on, months)),
      ...c.seconds.map((s) => s.entered),
    ]),
    ...task.revisions.map((r) => r.on),
  ];
  return [...new Set([first, ...days.filter((d) => d > first && d <= last)])].sort(byText);
}

/** The erase may have been entered later than what is known: it holds whatever is asked. */
function erased({ view, authority }: Judged, person: string): Weighed {
  const act = view.order.list.find(
    ({ id, header }) => header.kind === 'erase' && header.about === person && !authority.voids.has(id),
  );
  return { weight: 'lacking', say: { say: 'registerMay.erased' }, entry: act?.id ?? null };
}

/** What one day says. */
function standingOn(checks: readonly Check[], at: On): readonly Weighed[] {
  const seen = checks.filter((c) => c.body.on <= at.on);
  const stands = standingOf(seen, at);
  return reads[stands.standing](stands, seen, at);
}

const doubtful = ({ code }: Why): boolean => code === '?';

type Read = (stands: Stands, seen: readonly Check[], at: On) => readonly Weighed[];
const reads: Readonly<Record<Stands['standing'], Read>> = {
  shown: ({ since, until, entries }, seen) => {
    const showing = seen.find((c) => entries.includes(c.entry.id));
    const say = { say: 'registerMay.shown', values: { day: since ?? '', until: until ?? '' } };
    return [{ weight: 'for', say, entry: showing?.entry.id ?? null }];
  },
  'show again': ({ why }) =>
    why.map((w) => ({ weight: doubtful(w) ? 'lacking' : 'against', say: w.say, entry: w.entry })),
  'practice only': (stands, seen, at) => {
    const { since, why, entries } = stands;
    const practice = seen.filter((c) => entries.includes(c.entry.id)).sort(bySeen);
    const say = { say: 'registerMay.practice-only', values: { day: since ?? '' } };
    return [
      ...lastNotYet(seen, at),
      { weight: 'lacking', say, entry: practice.at(-1)?.entry.id ?? null },
      ...why.map(lacking),
    ];
  },
  'not shown': ({ why }, seen, at) => {
    const say = { say: 'registerMay.nothing', values: { day: at.on } };
    return [...lastNotYet(seen, at), ...why.map(lacking), { weight: 'lacking', say, entry: null }];
  },
};

const lacking = ({ say, entry }: Why): Weighed => ({ weight: 'lacking', say, entry });

/**
 * Where nothing was ever shown: a not-yet that nothing on record comes after. One of the same day that does not know
 * of it does not: as beside a showing, the not-yet speaks.
 */
function lastNotYet(seen: readonly Check[], at: On): readonly Weighed[] {
  const record = seen.filter((c) => isOnRecord(c, at));
  const last = record
    .filter(notYetStands)
    .filter((c) => !record.some((d) => comesAfter(at.judged, d, c)))
    .sort(bySeen)
    .at(-1);
  if (last === undefined) return [];
  const say = { say: 'registerMay.not-yet', values: { day: last.body.on } };
  return [{ weight: 'against', say, entry: last.entry.id }];
}

/** Tickets that the task names: one that was looked at counts when it ends too soon; one that nobody recorded is asked for. */
function tickets(judged: Judged, person: string, task: MapTask, last: Day): readonly Weighed[] {
  const held = ticketsOn(judged, person);
  return [...new Set(task.tickets)].sort(byText).map((id): Weighed => {
    const found = held.find((t) => t.ticket === id);
    if (found === undefined) {
      return {
        weight: 'beside',
        say: { say: 'registerMay.ticket-unrecorded', values: { ticket: id } },
        entry: null,
      };
    }
    const { until, entry } = found;
    const lapses = until < last;
    const key = lapses ? 'registerMay.ticket-lapses' : 'registerMay.ticket-good';
    return { weight: lapses ? 'against' : 'beside', say: { say: key, values: { ticket: id, until } }, entry };
  });
}
