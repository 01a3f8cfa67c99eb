import type { Fault } from '../../trade/given.ts';
import type { Judged } from '../judged.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { whyFaults } from './faults.ts';
import { amendFaults, isWithdrawn, namedOf } from './named.ts';

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

/** Takes an entry back, for good. @throws {GivenError} with all faults */
export async function withdraw(judged: Judged, given: WithdrawGiven, writing: Writing): Promise<Written> {
  refuseIf(withdrawFaults(judged, given, writing));
  const { about } = judged.view.order.byId.get(given.entry)?.header ?? {};
  if (about === undefined) throw new RangeError('an entry without a fault is held');
  const body = { why: given.why };
  return writeEntry(judged, { kind: 'withdraw', about, target: [given.entry], body }, writing);
}
