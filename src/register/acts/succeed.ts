import type { Fault } from '../../trade/given.ts';
import type { Judged } from '../judged.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { keyFaults, ownerFaults } from './faults.ts';

export interface SucceedGiven {
  /** Public key, kept elsewhere, that may take over. */
  readonly next: string;
}

/** Every fault that keeps a successor from being named; empty when he may be. */
export function succeedFaults(judged: Judged, { next }: SucceedGiven, writing: Writing): readonly Fault[] {
  const { authority } = judged;
  const another = 'make a new key, and keep it elsewhere';
  const faults: Fault[] = [
    ...ownerFaults(judged, writing),
    ...writerFaults(judged, writing),
    ...keyFaults('next', next),
  ];
  if (authority.owners.includes(next)) {
    const message =
      next === authority.owner ? 'the owner’s own key' : 'the ownership was taken over from this key';
    faults.push(fault('next', next, message, another));
  }
  if (authority.retirements.some((r) => r.key === next)) {
    faults.push(fault('next', next, 'this key is retired', another));
  }
  return faults;
}

/** Names the key that may take over; of several the last. @throws {GivenError} with all faults */
export async function succeed(judged: Judged, given: SucceedGiven, writing: Writing): Promise<Written> {
  refuseIf(succeedFaults(judged, given, writing));
  return writeEntry(judged, { kind: 'succeed', key: given.next, body: null }, writing);
}
