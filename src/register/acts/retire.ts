import type { Fault } from '../../trade/given.ts';
import type { Judged } from '../judged.ts';
import type { Placed } from '../order.ts';
import { fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { isAppointed, keyFaults, ownerFaults, whyFaults } from './faults.ts';
import { named } from './named.ts';

export interface RetireGiven {
  /** Public key of the witness, 64 hexadecimal digits. */
  readonly witness: string;
  /** One entry for each device of that key, the last that stands; with none named, nothing of the key stands. */
  readonly after: readonly string[];
  readonly why: string;
}

/** Most entries that one header can name. */
const MOST_TARGETS = 256;

/** Every fault that keeps a key from being retired; empty when it may be. */
export function retireFaults(
  judged: Judged,
  { witness, after, why }: RetireGiven,
  writing: Writing,
): readonly Fault[] {
  const key = keyFaults('witness', witness);
  const never =
    key.length === 0 && !isAppointed(judged, witness)
      ? [fault('witness', witness, 'this key was never appointed', 'name the key of a witness')]
      : [];
  const most =
    after.length > MOST_TARGETS
      ? [fault('after', after.length, `more than ${MOST_TARGETS} entries`, 'name one for each device')]
      : [];
  return [
    ...ownerFaults(judged, writing),
    ...writerFaults(judged, writing),
    ...key,
    ...never,
    ...most,
    ...afterFaults(judged, witness, after, writing),
    ...whyFaults(why),
  ];
}

function afterFaults(
  judged: Judged,
  witness: string,
  after: readonly string[],
  writing: Writing,
): readonly Fault[] {
  const field = (i: number): string => `after[${i}]`;
  const ends: (Placed | undefined)[] = [];
  return after.flatMap((id, i): readonly Fault[] => {
    const found = named(judged, field(i), id, writing);
    ends.push(found.entry);
    if (found.entry === undefined) return found.faults;
    const { signer, device } = found.entry.header;
    if (signer !== witness) {
      return [
        fault(field(i), id, 'not an entry of the key that is retired', 'name an entry that this key signed'),
      ];
    }
    const chain = found.entry.chain;
    if (!ends.slice(0, i).some((p) => p?.chain === chain)) return [];
    return [fault(field(i), id, `a second entry of the device ${device}`, 'name one entry for each device')];
  });
}

/** Ends what a key signed after some entries of its. @throws {GivenError} with all faults */
export async function retire(judged: Judged, given: RetireGiven, writing: Writing): Promise<Written> {
  refuseIf(retireFaults(judged, given, writing));
  const { witness, after, why } = given;
  const [about = null] = judged.authority.persons.get(witness) ?? [];
  return writeEntry(judged, { kind: 'retire', about, key: witness, target: after, body: { why } }, writing);
}
