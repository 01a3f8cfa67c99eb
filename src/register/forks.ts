import { latest, numbered, type Order, type Placed } from './order.ts';
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
  const q = numbered(p, fork.seq);
  return fork.branches.find((b) => b === q);
}

export function forksOf(view: View): readonly Fork[] {
  const firsts = new Map<string, Map<number, Placed>>();
  const groups = new Map<Placed, Placed[]>();
  // Along a stretch no number stands twice: a chain that is one stretch has no fork.
  const stretches = new Map<string, number>();
  for (const { step, chain } of view.order.list) {
    if (step === 0) stretches.set(chain, (stretches.get(chain) ?? 0) + 1);
  }
  for (const p of view.list) {
    if (stretches.get(p.chain) === 1) continue;
    const chain = firsts.get(p.chain) ?? new Map<number, Placed>();
    firsts.set(p.chain, chain);
    const first = chain.get(p.header.seq);
    if (first === undefined) chain.set(p.header.seq, p);
    else groups.set(first, [...(groups.get(first) ?? [first]), p]);
  }
  return [...groups]
    .sort(([a], [b]) => a.rank - b.rank)
    .map(([{ chain, header }, branches]) => ({ chain, signer: header.signer, seq: header.seq, branches }));
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
  const states = forks.map((fork): ForkState => {
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
  // Long branches share many numbers: where a fork before left one of them at most, there is nothing more to settle.
  const gone = lostEntries(view, states);
  return states.map((state) => {
    const left = state.fork.branches.filter((b) => !gone.has(b.id));
    return state.settled || left.length > 1 ? state : { ...state, settled: true };
  });
}

/** Everything on a branch that lost, by id. */
export function lostEntries(view: View, states: readonly ForkState[]): ReadonlySet<string> {
  return onBranches(
    view.list,
    states.map(({ fork, lost }) => ({ ...fork, branches: lost })),
  );
}

/**
 * Ids of everything on these branches: an entry is on them when the one before it is, or when it begins one. Only where
 * a chain skips numbers is every fork gone through.
 * @param list  in order
 */
export function onBranches(list: Order['list'], forks: readonly Fork[]): ReadonlySet<string> {
  const on = new Set<string>();
  const begins = new Set(forks.flatMap((f) => f.branches));
  if (begins.size === 0) return on;
  const byChain = Map.groupBy(forks, (f) => f.chain);
  for (const p of list) {
    const own = byChain.get(p.chain);
    if (own === undefined) continue;
    const { before } = p;
    const is =
      before?.header.seq === p.header.seq - 1
        ? begins.has(p) || on.has(before.id)
        : own.some((f) => branchOf(f, p) !== undefined);
    if (is) on.add(p.id);
  }
  return on;
}
