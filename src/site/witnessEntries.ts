/** Entries that a witness's own pages list: checks that wait for a second witness, and what he has signed himself. Pure. */

import { isWithdrawn } from '../register/acts/named.ts';
import { secondFaults } from '../register/acts/second.ts';
import { withdrawFaults } from '../register/acts/withdraw.ts';
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
import type { Speak, Tell } from './speak.ts';

export interface Waiting {
  /** Checks that this key may second, the last entered first. */
  readonly mine: readonly Check[];
  /** How many more wait for somebody else. */
  readonly others: number;
}

/** Checks that stand but for a second witness. */
export function waitingOf(
  judged: Judged,
  map: TaskMap,
  writing: Writing,
  regrade: Regrade | undefined,
): Waiting {
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
    .filter(({ entry }) => secondFaults(judged, { entry: entry.id }, map, writing).length === 0)
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
  /** Whether this key can take it back now. */
  readonly canTakeBack: boolean;
}

/** What the person of a key has signed with any key of his, the last entered first. */
export function ownEntriesOf(judged: Judged, writing: Writing): readonly OwnEntry[] {
  const { view, authority } = judged;
  const { publicKey } = writing.signer;
  return view.list
    .flatMap((entry): readonly OwnEntry[] => {
      const { kind, signer, target } = entry.header;
      if (!isKind(kind) || !judged.counts(entry) || !samePerson(authority, publicKey, signer)) return [];
      const seconded = kind === 'second' ? view.order.byId.get(target[0] ?? '') : entry;
      const state = seconded === undefined ? undefined : authority.body(seconded, 'check');
      const withdrawn = isWithdrawn(judged, entry.id);
      const asked = { entry: entry.id, why: 'to be said' };
      return [
        {
          entry,
          kind,
          check: seconded?.header.kind === 'check' && state?.state === 'held' ? state.body : undefined,
          withdrawn,
          canTakeBack: !withdrawn && withdrawFaults(judged, asked, writing).length === 0,
        },
      ];
    })
    .reverse();
}

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
    task: `${check.task} ${speak({ say: `${check.task}.name` })}`,
    person,
    day: dayText(tell, check.on),
    outcome: tell(`witness.${check.outcome}`),
  });
}
