import type { Fault } from '../../trade/given.ts';
import { samePerson } from '../demands.ts';
import type { Judged } from '../judged.ts';
import type { Placed } from '../order.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { isAppointed, isOwner, namedOf, ownFaults, whyFaults } from './faults.ts';
import { isWithdrawn } from './second.ts';

export interface WithdrawGiven {
  /** Id of a check, a second, a ticket or an entry of who was sent where. */
  readonly entry: string;
  readonly why: string;
}

/** Every fault that keeps an entry from being withdrawn; empty when it may be. */
export function withdrawFaults(
  judged: Judged,
  { entry: id, why }: WithdrawGiven,
  writing: Writing,
): readonly Fault[] {
  const found = namedOf(['check', 'second', 'ticket', 'assigned'], judged, 'entry', id, writing);
  const faults: Fault[] = [...writerFaults(judged, writing)];
  if (found.entry === undefined) faults.push(...found.faults);
  else {
    faults.push(...amendFaults(judged, found.entry, writing));
    if (isWithdrawn(judged, id)) {
      faults.push(fault('entry', id, 'it was withdrawn already, for good', 'nothing more is needed'));
    }
  }
  return [...faults, ...whyFaults(why)];
}

/** An entry is amended by the owner or by whoever signed it, with any key of his that is appointed; never by its person. */
export function amendFaults(judged: Judged, entry: Placed, writing: Writing): readonly Fault[] {
  const { publicKey } = writing.signer;
  const faults: Fault[] = [...ownFaults(judged, 'entry', entry.id, entry.header.about, writing)];
  const own = samePerson(judged.authority, publicKey, entry.header.signer) && isAppointed(judged, publicKey);
  if (!own && !isOwner(judged, writing)) {
    const message = 'neither the owner’s key nor one of the witness who signed that entry';
    faults.push(fault('key', publicKey, message, 'have the owner sign, or who signed the entry'));
  }
  return faults;
}

/** Takes an entry back, for good. @throws {GivenError} with all faults */
export async function withdraw(judged: Judged, given: WithdrawGiven, writing: Writing): Promise<Written> {
  refuseIf(withdrawFaults(judged, given, writing));
  const { about } = judged.view.order.byId.get(given.entry)?.header ?? {};
  if (about === undefined) throw new RangeError('an entry without a fault is held');
  const body = { why: given.why };
  return writeEntry(judged, { kind: 'withdraw', about, target: [given.entry], body }, writing);
}
