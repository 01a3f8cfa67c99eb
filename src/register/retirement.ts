import { chainOf } from './header.ts';
import { lackingOf } from './lacking.ts';
import { chainBack, type Order, type Placed } from './order.ts';

export interface Retirement {
  readonly entry: Placed;
  readonly key: string;
  /** Entries of the key that stand under it, by id; one that is named and missing too. */
  readonly stands: ReadonlySet<string>;
  /** Highest number that stands, by chain. */
  readonly upTo: ReadonlyMap<string, number>;
}

/** An entry that a retirement names as the last of its chain, and those before it. */
interface End {
  readonly id: string;
  readonly chain: string;
  readonly seq: number;
  readonly before: ReadonlySet<Placed>;
}

/** What of a key stands under a retirement: the entries named and those before them in their chains. */
export function retirementOf(order: Order, entry: Placed): Retirement {
  const key = entry.header.key ?? '';
  const named = entry.header.target.flatMap((id) => endOf(order, key, id) ?? []);
  const stands = new Set<string>();
  const upTo = new Map<string, number>();
  for (const [chain, ends] of Map.groupBy(named, (end) => end.chain)) {
    // Two entries of one device are refused when written; found in a register, the least of them stands.
    const [first, ...others] = ends as [End, ...End[]];
    for (const p of first.before) if (others.every((end) => end.before.has(p))) stands.add(p.id);
    if (others.length === 0) stands.add(first.id);
    upTo.set(chain, Math.min(...ends.map((end) => end.seq)));
  }
  return { entry, key, stands, upTo };
}

/**
 * Whoever names an id knew its entry: it need not be in the past, where a chain that was cut off is no more cited. A
 * missing one is known by whoever cites it, and still says how far its chain stands.
 */
function endOf(order: Order, key: string, id: string): End | undefined {
  const q = order.byId.get(id);
  if (q !== undefined) {
    if (q.header.signer !== key) return undefined;
    return { id, chain: q.chain, seq: q.header.seq, before: new Set(chainBack(q)) };
  }
  const cited = lackingOf(order).get(id);
  if (cited?.signer !== key) return undefined;
  const chain = chainOf(cited);
  const numbers = Map.groupBy(
    order.list.filter((p) => p.chain === chain && p.header.seq < cited.seq),
    (p) => p.header.seq,
  );
  // Which branch of a fork it followed nobody here knows: what stands ends before the fork.
  const forked = Math.min(...[...numbers].filter(([, all]) => all.length > 1).map(([seq]) => seq));
  const before = [...numbers.values()].flat().filter((p) => p.header.seq < forked);
  return { id, chain, seq: cited.seq, before: new Set(before) };
}
