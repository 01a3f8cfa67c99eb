import type { Fault } from '../../trade/given.ts';
import { dropped } from '../bodies.ts';
import type { Judged } from '../judged.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { ownerFaults, personFaults, whyFaults } from './faults.ts';

export interface EraseGiven {
  readonly person: string;
  readonly why: string;
}

/** Every fault that keeps a person from being erased; empty when he may be. */
export function eraseFaults(judged: Judged, { person, why }: EraseGiven, writing: Writing): readonly Fault[] {
  const { authority, view } = judged;
  const wrong = personFaults(judged, person);
  const faults: Fault[] = [...ownerFaults(judged, writing), ...writerFaults(judged, writing), ...wrong];
  const ended = (key: string): boolean =>
    authority.retirements.some((r) => r.key === key) ||
    (authority.takeOvers.length > 0 && key === view.begin.header.signer);
  for (const [key, people] of authority.persons) {
    if (!people.has(person) || ended(key)) continue;
    const message = `a key of this person is not retired (${key.slice(0, 8)})`;
    faults.push(fault('person', person, message, 'retire every key of this person first'));
  }
  if (wrong.length === 0 && !view.order.list.some((p) => p.header.about === person)) {
    const message = 'nothing here is about this person';
    faults.push(
      fault('person', person, message, 'write the id as it stands on the board, or bring in other copies'),
    );
  }
  return [...faults, ...whyFaults(why)];
}

/**
 * Hashes of what goes with a person, held here or not: bodies that only entries of kinds that an erase drops name, and only
 * those about him.
 * A body that another entry names too is that one's, and stays.
 */
export function bodiesToDrop({ view }: Judged, person: string): readonly string[] {
  const begin = view.begin.id;
  const own = [...view.held.entries.values()].filter((e) => (e.header.register ?? e.id) === begin);
  const goes = new Set<string>();
  const stays = new Set<string>();
  for (const { header } of own) {
    if (header.body === null) continue;
    const drops = dropped.includes(header.kind) && header.about !== null;
    (drops && (header.about === person || view.erased.has(header.about)) ? goes : stays).add(header.body);
  }
  return [...goes].filter((hash) => !stays.has(hash)).sort();
}

/** Erases a person: what was said about him is dropped, the headers stay. @throws {GivenError} with all faults */
export async function erase(judged: Judged, given: EraseGiven, writing: Writing): Promise<Written> {
  refuseIf(eraseFaults(judged, given, writing));
  const { person, why } = given;
  const written = await writeEntry(judged, { kind: 'erase', about: person, body: { why } }, writing);
  return { ...written, drop: bodiesToDrop(judged, person) };
}
