/** Entries in words: what it is, who signed it where, its number and day. Pure. */
import type { Bodies } from '../../register/bodies.ts';
import type { Placed } from '../../register/order.ts';
import { fullVariant, variantText as plainText, taskOf } from '../../register/taskMap.ts';
import { dayText } from '../dates.ts';
import { daysBetween } from '../days.ts';
import { spokenName } from '../people.ts';
import { shortKey } from '../shortKey.ts';
import type { SiteKey } from '../speak.ts';
import { variantText } from '../variants.ts';
import { wallIn } from '../zoned.ts';
import type { Looking, Option } from './looking.ts';

/** Kinds that say no more than their name. */
const named: Readonly<Record<string, SiteKey>> = {
  begin: 'drills.kindBegin',
  seen: 'drills.kindSeen',
  appoint: 'drills.kindAppoint',
  withdraw: 'drills.kindWithdraw',
  correct: 'drills.kindCorrect',
  retire: 'drills.kindRetire',
  settle: 'drills.kindSettle',
  succeed: 'drills.kindSucceed',
  'take-over': 'drills.kindTakeOver',
  erase: 'drills.kindErase',
};

/** Who a key belongs to: the name or id of its person, else the beginning of the key. */
export function signerName(key: string, { judged, names }: Looking): string {
  const [person] = judged.authority.persons.get(key) ?? [];
  return person === undefined ? shortKey(key) : spokenName(person, names);
}

export const dayOf = ({ judged: { view }, tell }: Looking, instant: number): string =>
  dayText(tell, view.dayIn(view.zone, instant));

/** "9 March 2026, 07:12" as a clock in the register's zone shows it. */
export const dayAndTime = (looking: Looking, instant: number): string =>
  looking.tell('drills.dayAndTime', {
    day: dayOf(looking, instant),
    time: wallIn(looking.judged.view.zone, instant).slice(11),
  });

/** How old something is, in whole days of the register's zone: "today", "1 day old", "9 days old". */
export function ageText({ judged: { view }, now, tell }: Looking, instant: number): string {
  const days = daysBetween(view.dayIn(view.zone, instant), view.dayIn(view.zone, now));
  if (days < 0) return tell('drills.ageAhead');
  if (days === 0) return tell('drills.age0');
  return days === 1 ? tell('drills.age1') : tell('drills.ages', { days });
}

/** "T02 Join sticks, 4 in, socketed": a task and the way of doing it; as they were signed where this edition lacks the words. */
function taskText({ task, variant }: Bodies['check'], { map, speak, tell }: Looking): string {
  const known = taskOf(map, task);
  const name = known === undefined ? task : `${task} ${speak({ say: `${task}.name` })}`;
  const way = () => {
    try {
      return known === undefined
        ? plainText(variant)
        : variantText(known, fullVariant(known, variant), speak);
    } catch {
      return plainText(variant);
    }
  };
  const text = way();
  return text === '' ? name : tell('drills.taskWay', { task: name, way: text });
}

/** Kind, person, and of a check its task and variant. */
export function whatText(entry: Placed, looking: Looking): string {
  const { judged, names, tell } = looking;
  const { kind, about } = entry.header;
  const person = about === null ? tell('drills.nobody') : spokenName(about, names);
  const body = <K extends 'check' | 'ticket' | 'assigned'>(of: K) => {
    const state = judged.authority.body(entry, of);
    return state.state === 'held' ? state.body : undefined;
  };
  const check = body('check');
  if (check !== undefined) {
    const task = taskText(check, looking);
    const ended = check.outcome === 'shown' ? 'drills.outcomeShown' : 'drills.outcomeNotYet';
    const outcome = tell(check.stopped ? 'drills.outcomeStopped' : ended);
    return tell('drills.kindCheck', { person, task, outcome, day: dayText(tell, check.on) });
  }
  const ticket = body('ticket');
  if (ticket !== undefined) {
    return tell('drills.kindTicket', { person, ticket: ticket.ticket, day: dayText(tell, ticket.until) });
  }
  const assigned = body('assigned');
  if (assigned !== undefined) return tell('drills.kindAssigned', { person, job: assigned.job });
  if (kind === 'second') return tell('drills.kindSecond', { person });
  const key = Object.hasOwn(named, kind) ? named[kind] : undefined;
  return key === undefined ? tell('drills.kindOther', { kind, person }) : tell(key, { person });
}

/** "Dana Mott at T05 Measure and mark: shown, seen on 9 March 2026. Kai Torvald, kt-phone, number 3". */
export function entryText(entry: Placed, looking: Looking): string {
  const { signer, device, seq } = entry.header;
  return looking.tell('drills.entry', {
    what: whatText(entry, looking),
    signer: signerName(signer, looking),
    device,
    number: seq,
    day: dayOf(looking, entry.time),
  });
}

/** Entries to choose from, the newest first. */
export const entryOptions = (entries: readonly Placed[], looking: Looking): readonly Option[] =>
  [...entries]
    .sort((a, b) => b.entered - a.entered || b.rank - a.rank)
    .map((entry) => ({ value: entry.id, text: entryText(entry, looking) }));
