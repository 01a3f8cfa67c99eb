import type { Fault } from '../../trade/given.ts';
import type { Judged } from '../judged.ts';
import { latest } from '../order.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { whyFaults } from './faults.ts';

export interface TakeOverGiven {
  readonly why: string;
}

/** Every fault that keeps a key from taking over; empty when it may. */
export function takeOverFaults(judged: Judged, { why }: TakeOverGiven, writing: Writing): readonly Fault[] {
  const { authority, view } = judged;
  const { publicKey } = writing.signer;
  const faults: Fault[] = [...writerFaults(judged, writing)];
  if (authority.takeOvers.length > 0) {
    const message = authority.forked
      ? 'the ownership is forked: nobody is owner'
      : 'the ownership was taken over once, and is not taken over again';
    faults.push(
      fault('key', publicKey, message, authority.forked ? 'begin a register anew' : 'ask the owner to sign'),
    );
  } else if (publicKey === authority.owner) {
    faults.push(
      fault('key', publicKey, 'this key is the owner’s already', 'sign with the key that takes over'),
    );
  } else {
    const last = latest(view.order, authority.successions).at(-1);
    if (last === undefined) {
      faults.push(
        fault('key', publicKey, 'the owner named no key that may take over', 'begin a register anew'),
      );
    } else if (last.header.key !== publicKey) {
      const message = 'not the key that the owner named last';
      faults.push(fault('key', publicKey, message, `sign with the key ${last.header.key}`));
    }
  }
  return [...faults, ...whyFaults(why)];
}

/** Makes the key that was named the owner's. @throws {GivenError} with all faults */
export async function takeOver(judged: Judged, given: TakeOverGiven, writing: Writing): Promise<Written> {
  refuseIf(takeOverFaults(judged, given, writing));
  return writeEntry(judged, { kind: 'take-over', body: { why: given.why } }, writing);
}
