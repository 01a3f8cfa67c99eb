/** Entries that a witness's own pages list: checks that wait for a second witness, and what he has signed himself. Pure. */

import { withdrawFaults } from '../register/acts/withdraw.ts';
import { covers } from '../register/appointments.ts';
import type { Bodies } from '../register/bodies.ts';
import { type Check, checksOf, type Regrade } from '../register/checks.ts';
import { samePerson } from '../register/demands.ts';
import type { Judged } from '../register/judged.ts';
import type { Placed } from '../register/order.ts';
import { isPerformed } from '../register/standing.ts';
import { type TaskMap, taskOf } from '../register/taskMap.ts';
import type { Writing } from '../register/write.ts';
import { dayText } from './dates.ts';
import { type Names, spokenName } from './people.ts';
import { type Speak, saidOr, type Tell } from './speak.ts';

export interface Waiting {
  /** Checks that this key may second, the last entered first. */
  readonly mine: readonly Check[];
  /** How many more wait for somebody else. */
  readonly others: number;
}

/** Whether a signer is the person of a key: asked once a signer, and not once an entry. */
function ownOf({ authority }: Judged, publicKey: string): (signer: string) => boolean {
  const known = new Map<string, boolean>();
  return (signer) => {
    const own = known.get(signer) ?? samePerson(authority, publicKey, signer);
    known.set(signer, own);
    return own;
  };
}

/**
 * Checks that stand but for a second witness. Whose they are to second is told by persons and appointments; whether this
 * key can sign one now is asked of the one that is opened.
 */
export function waitingOf(
  judged: Judged,
  map: TaskMap,
  publicKey: string,
  regrade: Regrade | undefined,
): Waiting {
  const { authority } = judged;
  const isOwn = ownOf(judged, publicKey);
  const persons = authority.persons.get(publicKey);
  const appointed = authority.appointments.filter(({ key }) => key === publicKey);
  const waiting = [...checksOf(judged, map, regrade).values()]
    .flat()
    .filter(
      (check) =>
        taskOf(map, check.body.task)?.second === true &&
        check.body.outcome === 'shown' &&
        isPerformed(check) &&
        check.withdrawn === undefined &&
        check.seconds.every(({ withdrawn }) => withdrawn !== undefined),
    );
  const mine = waiting
    .filter(
      ({ entry, person, body }) =>
        persons?.has(person) !== true &&
        !isOwn(entry.header.signer) &&
        appointed.some((appointment) => covers(appointment, body.task, body.on)),
    )
    .sort((a, b) => b.entry.rank - a.entry.rank);
  return { mine, others: waiting.length - mine.length };
}

/** Kinds of entries that can be taken back. */
const kinds = ['check', 'second', 'ticket', 'assigned'] as const;
type Kind = (typeof kinds)[number];
const isKind = (kind: string): kind is Kind => kinds.some((one) => one === kind);

export interface OwnEntry {
  readonly entry: Placed;
  readonly kind: Kind;
  /** The check that it is, or that a second stands under. */
  readonly check: Bodies['check'] | undefined;
  readonly withdrawn: boolean;
}

/** What the person of a key has signed with any key of his, the last entered first. */
export function ownEntriesOf(judged: Judged, publicKey: string): readonly OwnEntry[] {
  const { view, authority } = judged;
  const isOwn = ownOf(judged, publicKey);
  const own = view.list.filter(
    (entry) => isKind(entry.header.kind) && isOwn(entry.header.signer) && judged.counts(entry),
  );
  const gone = new Set(
    view.list
      .filter((entry) => entry.header.kind === 'withdraw' && judged.counts(entry))
      .map(({ header }) => header.target[0]),
  );
  return own
    .map((entry): OwnEntry => {
      const kind = entry.header.kind as Kind;
      const seconded = kind === 'second' ? view.order.byId.get(entry.header.target[0] ?? '') : entry;
      const state = seconded === undefined ? undefined : authority.body(seconded, 'check');
      return {
        entry,
        kind,
        check: seconded?.header.kind === 'check' && state?.state === 'held' ? state.body : undefined,
        withdrawn: gone.has(entry.id),
      };
    })
    .reverse();
}

/** Whether this key can take an entry back now. Asked of the one that is opened: it looks through the whole register. */
export const canTakeBack = (judged: Judged, { entry, withdrawn }: OwnEntry, writing: Writing): boolean =>
  !withdrawn && withdrawFaults(judged, { entry: entry.id, why: 'to be said' }, writing).length === 0;

interface Told {
  readonly judged: Judged;
  readonly names: Names;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** An entry in one line: what, of whom, of which day. */
export function ownEntryText(
  { entry, kind, check }: OwnEntry,
  { judged: { authority }, names, speak, tell }: Told,
): string {
  const person = entry.header.about === null ? '' : spokenName(entry.header.about, names);
  if (kind === 'ticket') {
    const state = authority.body(entry, 'ticket');
    if (state.state !== 'held') return tell('ownEntries.gist', { person });
    const { ticket, until } = state.body;
    return tell('ownEntries.ticket', { ticket, person, day: dayText(tell, until) });
  }
  if (kind === 'assigned') {
    const state = authority.body(entry, 'assigned');
    return state.state === 'held'
      ? tell('ownEntries.assigned', { person, job: state.body.job })
      : tell('ownEntries.gist', { person });
  }
  if (check === undefined) return tell('ownEntries.gist', { person });
  return tell(`ownEntries.${kind}`, {
    task: `${check.task} ${saidOr(speak, `${check.task}.name`, '')}`.trim(),
    person,
    day: dayText(tell, check.on),
    outcome: tell(`witness.${check.outcome}`),
  });
}
