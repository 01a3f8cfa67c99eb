import type { Fault } from '../../trade/given.ts';
import { covers } from '../appointments.ts';
import type { Regrade } from '../checks.ts';
import { samePerson } from '../demands.ts';
import type { Judged } from '../judged.ts';
import type { Placed } from '../order.ts';
import { isHeading, type TaskMap, taskOf } from '../taskMap.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { endedFaults, ownFaults } from './faults.ts';
import { isWithdrawn, namedOf } from './named.ts';
import { type Demands, ownStandingFaults } from './ownStanding.ts';

export interface SecondGiven {
  /** Id of the check that the second witness saw himself. */
  readonly entry: string;
}

/**
 * Every fault that keeps a second witness from signing; empty when he may.
 * @param map      tells headings, which nobody shows; a task that it does not know is no fault
 * @param regrade  grades the evidence of his own checks again, where the site demands that he is shown himself
 * @param demands  what the site asks of a witness beyond his appointment; nothing when left out
 */
export function secondFaults(
  judged: Judged,
  { entry: id }: SecondGiven,
  map: TaskMap,
  writing: Writing,
  regrade?: Regrade,
  demands?: Demands,
): readonly Fault[] {
  const found = namedOf(['check'], judged, 'entry', id, writing);
  const faults: Fault[] = [...writerFaults(judged, writing), ...endedFaults(judged, writing)];
  if (found.entry === undefined) return [...faults, ...found.faults];
  faults.push(...checkFaultsFor(judged, found.entry, map, writing));
  const state = judged.authority.body(found.entry, 'check');
  if (state.state !== 'held') return faults;
  return [...faults, ...ownStandingFaults(judged, state.body, map, writing, regrade, demands)];
}

function checkFaultsFor(judged: Judged, check: Placed, map: TaskMap, writing: Writing): readonly Fault[] {
  const { authority } = judged;
  const { publicKey } = writing.signer;
  const { id } = check;
  const faults: Fault[] = [...ownFaults(judged, 'entry', id, check.header.about, writing)];
  if (samePerson(authority, publicKey, check.header.signer)) {
    const message = 'the second witness is the witness of the check';
    faults.push(fault('key', publicKey, message, 'have another witness sign, who saw it himself'));
  }
  if (!judged.counts(check)) {
    faults.push(fault('entry', id, 'this check counts for nothing', 'see "register verify" for the reason'));
  }
  if (isWithdrawn(judged, id)) {
    faults.push(fault('entry', id, 'this check was withdrawn, for good', 'have it shown again'));
  }
  const state = authority.body(check, 'check');
  if (state.state !== 'held') {
    faults.push(
      fault('entry', id, 'what this check says is not here', 'bring in the copy that holds its body'),
    );
    return faults;
  }
  const { task, on } = state.body;
  const inMap = taskOf(map, task);
  if (inMap !== undefined && isHeading(inMap)) {
    const todo = `name checks of its parts: ${inMap.parts.join(', ')}`;
    faults.push(fault('entry', id, `${task} is a heading, which is not shown itself`, todo));
  }
  if (!authority.appointments.some((a) => a.key === publicKey && covers(a, task, on))) {
    const message = `not appointed for ${task} on ${on}`;
    faults.push(fault('key', publicKey, message, 'have the owner appoint this key first'));
  }
  return faults;
}

/** Signs "I saw it myself" under a check; takes what `secondFaults` takes. @throws {GivenError} with all faults */
export async function second(
  judged: Judged,
  given: SecondGiven,
  map: TaskMap,
  writing: Writing,
  regrade?: Regrade,
  demands?: Demands,
): Promise<Written> {
  refuseIf(secondFaults(judged, given, map, writing, regrade, demands));
  const { about } = judged.view.order.byId.get(given.entry)?.header ?? {};
  if (about === undefined) throw new RangeError('an entry without a fault is held');
  return writeEntry(judged, { kind: 'second', about, target: [given.entry], body: { saw: true } }, writing);
}
