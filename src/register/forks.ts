import { chainBack, latest, type Placed } from './order.ts';
import type { Authority } from './rights.ts';
import type { View } from './view.ts';

/** Two entries or more with one number in one chain. */
export interface Fork {
  readonly chain: string;
  readonly signer: string;
  readonly seq: number;
  /** The first entry of each branch. */
  readonly branches: readonly Placed[];
}

/** Which branch of a fork an entry is on; `undefined` when it is on none. */
export function branchOf(fork: Fork, p: Placed): Placed | undefined {
  if (p.chain !== fork.chain || p.header.seq < fork.seq) return undefined;
  for (const q of chainBack(p)) if (q.header.seq === fork.seq) return fork.branches.find((b) => b === q);
  return undefined;
}

export function forksOf(view: View): readonly Fork[] {
  const groups = Map.groupBy(view.list, (p) => `${p.chain}.${p.header.seq}`);
  return [...groups.values()]
    .filter((g) => g.length > 1)
    .map((branches) => {
      const [first] = branches as [Placed];
      return { chain: first.chain, signer: first.header.signer, seq: first.header.seq, branches };
    });
}

/** How a fork stands: settled, and then which branch counts for nothing. */
export interface ForkState {
  readonly fork: Fork;
  readonly settled: boolean;
  /** First entries of the branches that lost. */
  readonly lost: readonly Placed[];
}

/**
 * Settles forks: by the last `settle` that nobody contradicts, by a retirement of the key (what it cut off is judged
 * there), or, for the owner's own, by a take-over.
 * @param settles  the settlements that count
 */
export function settleForks(
  view: View,
  authority: Authority,
  forks: readonly Fork[],
  settles: readonly Placed[],
): readonly ForkState[] {
  const forkedChains = new Set(forks.map((f) => f.chain));
  return forks.map((fork): ForkState => {
    const { signer } = fork;
    const ofOwner = authority.owners.includes(signer);
    if (ofOwner && authority.takeOvers.length === 1 && signer === view.begin.header.signer) {
      return { fork, settled: true, lost: [] };
    }
    if (!ofOwner && authority.retirements.some((r) => r.key === signer))
      return { fork, settled: true, lost: [] };
    const naming = settles.flatMap((s) => {
      if (ofOwner && (s.chain === fork.chain || forkedChains.has(s.chain))) return [];
      const q = view.order.byId.get(s.header.target[0] ?? '');
      const branch = q === undefined ? undefined : branchOf(fork, q);
      return branch === undefined ? [] : [{ s, branch }];
    });
    const last = latest(
      view.order,
      naming.map((n) => n.s),
    );
    const winner = last.length === 1 ? naming.find((n) => n.s === last[0])?.branch : undefined;
    if (winner === undefined) return { fork, settled: false, lost: [] };
    return { fork, settled: true, lost: fork.branches.filter((b) => b !== winner) };
  });
}

/** Everything on a branch that lost, by id. */
export function lostEntries(view: View, states: readonly ForkState[]): ReadonlySet<string> {
  const lost = new Set<string>();
  for (const { fork, lost: branches } of states) {
    if (branches.length === 0) continue;
    for (const p of view.list) {
      const branch = branchOf(fork, p);
      if (branch !== undefined && branches.includes(branch)) lost.add(p.id);
    }
  }
  return lost;
}
