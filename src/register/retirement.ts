import { chainBack, type Order, type Placed } from './order.ts';

export interface Retirement {
  readonly entry: Placed;
  readonly key: string;
  /** Entries of the key that stand under it, by id. */
  readonly stands: ReadonlySet<string>;
  /** Highest number that stands, by chain. */
  readonly upTo: ReadonlyMap<string, number>;
}

/** What of a key stands under a retirement: the entries named and those before them in their chains. */
export function retirementOf(order: Order, entry: Placed): Retirement {
  const key = entry.header.key ?? '';
  const named = entry.header.target.flatMap((id): readonly Placed[] => {
    const q = order.byId.get(id);
    return q !== undefined && q.header.signer === key && order.isPast(entry, q) ? [q] : [];
  });
  const stands = new Set<string>();
  const upTo = new Map<string, number>();
  for (const ends of Map.groupBy(named, (q) => q.chain).values()) {
    // Two entries of one device are refused when written; found in a register, the least of them stands.
    const [first, ...others] = ends.map((q) => new Set(chainBack(q)));
    for (const p of first ?? []) {
      if (!others.every((c) => c.has(p))) continue;
      stands.add(p.id);
      upTo.set(p.chain, Math.max(p.header.seq, upTo.get(p.chain) ?? 0));
    }
  }
  return { entry, key, stands, upTo };
}
