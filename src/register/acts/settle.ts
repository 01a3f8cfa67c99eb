import type { Fault } from '../../trade/given.ts';
import { branchOf, type Fork } from '../forks.ts';
import { chainOf } from '../header.ts';
import type { Judged } from '../judged.ts';
import { isBackDated, type Placed } from '../order.ts';
import { deviceOf, fault, refuseIf, type Writing, type Written, writeEntry, writerFaults } from '../write.ts';
import { ownerFaults, ownFaults, whyFaults } from './faults.ts';
import { idFaults } from './named.ts';

export interface SettleGiven {
  /** Id of an entry on the branch that stands, of one that is lost for good, or of a back-dated one that is taken. */
  readonly entry: string;
  readonly why: string;
}

/** Every fault that keeps something from being settled; empty when it may be. */
export function settleFaults(
  judged: Judged,
  { entry: id, why }: SettleGiven,
  writing: Writing,
): readonly Fault[] {
  const wrongId = idFaults('entry', id);
  return [
    ...ownerFaults(judged, writing),
    ...writerFaults(judged, writing),
    ...(wrongId.length > 0 ? wrongId : entryFaults(judged, id, writing)),
    ...whyFaults(why),
  ];
}

function entryFaults(judged: Judged, id: string, writing: Writing): readonly Fault[] {
  const entry = judged.view.list.find((p) => p.id === id);
  // An id may be both: cited as what it is not, it is missing there.
  const missing = judged.gaps.some((g) => g.cited.id === id);
  const todo = 'see "register verify" for what may be settled';
  if (entry === undefined) {
    if (missing) return [];
    return [fault('entry', id, 'neither an entry here nor one that is missing', todo)];
  }
  const own = ownFaults(judged, 'entry', id, entry.header.about, writing);
  const forks = judged.forks.map((f) => f.fork).filter((f) => branchOf(f, entry) !== undefined);
  if (forks.length === 0 && !missing && !isBackDated(entry)) {
    const message = 'nothing to settle: on no branch of a fork, not missing, not back-dated';
    return [...own, fault('entry', id, message, todo)];
  }
  return [...own, ...forks.flatMap((f) => ownForkFaults(judged, f, entry, writing))];
}

/** A fork of the owner's chain is settled from another of his devices, one that is not forked. */
function ownForkFaults(judged: Judged, fork: Fork, { id }: Placed, writing: Writing): readonly Fault[] {
  const { authority } = judged;
  if (!authority.owners.includes(fork.signer)) return [];
  const device = deviceOf(writing);
  const chain = chainOf({ signer: writing.signer.publicKey, device });
  if (!judged.forks.some((f) => f.fork.chain === chain)) return [];
  const message = `a fork of the owner’s, and the chain of ${device} is forked itself`;
  return [fault('device', device, `${message} (${id.slice(0, 8)})`, 'sign on another device of the owner')];
}

/** Ends a doubt: which branch stands, what is lost for good, what is taken though back-dated. @throws {GivenError} */
export async function settle(judged: Judged, given: SettleGiven, writing: Writing): Promise<Written> {
  refuseIf(settleFaults(judged, given, writing));
  const about = judged.view.order.byId.get(given.entry)?.header.about ?? null;
  const body = { why: given.why };
  return writeEntry(judged, { kind: 'settle', about, target: [given.entry], body }, writing);
}
