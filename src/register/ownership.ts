import { latest, type Placed } from './order.ts';
import { type Refusals, refusal } from './refusal.ts';
import type { View } from './view.ts';

/** Acts that the owner alone signs. */
export const ownerKinds: readonly string[] = ['appoint', 'retire', 'settle', 'succeed', 'erase'];

export interface Ownership {
  readonly takeOvers: readonly Placed[];
  readonly successions: readonly Placed[];
  /** Two take-overs that do not know each other: from then on nobody is owner. */
  readonly forked: boolean;
  /** The key that is owner now; the last one known where ownership is forked. */
  readonly owner: string;
  /** Every key that is or was owner. */
  readonly owners: readonly string[];
  /** Whether its signer was owner when he signed it. */
  byOwner(entry: Placed): boolean;
}

/**
 * Follows the ownership from the beginning through its take-overs.
 * @param lost      entries that count for nothing already, by id
 * @param refusals  gets take-overs that nobody named, and what a take-over cut off
 */
export function ownershipOf(view: View, lost: ReadonlySet<string>, refusals: Refusals): Ownership {
  const { isPast } = view.order;
  const first = view.begin.header.signer;
  const takeOvers: Placed[] = [];
  const successions: Placed[] = [];
  const byOwner = (p: Placed): boolean => {
    const after = takeOvers.find((t) => t === p || isPast(p, t));
    return p.header.signer === (after?.header.signer ?? first);
  };
  for (const p of view.list) {
    if (lost.has(p.id)) continue;
    if (p.header.kind === 'succeed' && byOwner(p) && p.header.key !== null) successions.push(p);
    if (p.header.kind !== 'take-over') continue;
    const known = successions.filter((s) => isPast(p, s));
    const named = latest(view.order, known).at(-1);
    if (takeOvers.some((t) => isPast(p, t))) refusals.add(p, refusal('not-appointed', 'second-take-over'));
    else if (named?.header.key !== p.header.signer) refusals.add(p, refusal('not-appointed', 'not-named'));
    else takeOvers.push(p);
  }
  const forked = takeOvers.length > 1;
  const afterEither = (p: Placed): boolean => takeOvers.some((t) => isPast(p, t));
  for (const p of view.list) {
    const { kind, signer } = p.header;
    if (signer === first && takeOvers.some((t) => !isPast(t, p))) {
      refusals.add(p, refusal('after-retirement', 'taken-over'));
    } else if (forked && ownerKinds.includes(kind) && afterEither(p)) {
      refusals.add(p, refusal('not-appointed', 'owner-forked'));
    }
  }
  return {
    takeOvers,
    successions: successions.filter((s) => !refusals.has(s)),
    forked,
    owner: takeOvers.at(-1)?.header.signer ?? first,
    owners: [first, ...takeOvers.map((t) => t.header.signer)],
    byOwner: forked ? (p) => !afterEither(p) && byOwner(p) : byOwner,
  };
}
