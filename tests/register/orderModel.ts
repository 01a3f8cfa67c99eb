/** The order of entries in its simplest form, a set of everything in the past of each: what `arrange` must agree with. */
import { byText } from '../../src/register/bytes.ts';
import { type Citation, chainOf } from '../../src/register/header.ts';
import type { Entry } from '../../src/register/held.ts';

export interface Modelled {
  readonly id: string;
  readonly entered: number;
  readonly lacks: readonly Citation[];
  readonly holed: boolean;
  readonly broken: boolean;
  readonly before: string | undefined;
  readonly past: ReadonlySet<string>;
  /** Ids of those that it may know beside its past. */
  mayKnow(earlier: Modelled): boolean;
}

export function model(entries: readonly Entry[]): readonly Modelled[] {
  const held = new Map(entries.map((e) => [e.id, e]));
  const citedBy = ({ header }: Entry): Citation[] => [
    ...(header.prev === null
      ? []
      : [{ id: header.prev, signer: header.signer, device: header.device, seq: header.seq - 1 }]),
    ...header.seen,
  ];
  const holds = (c: Citation): boolean => {
    const e = held.get(c.id);
    return e !== undefined && chainOf(e.header) === chainOf(c) && e.header.seq === c.seq;
  };
  const pasts = new Map<string, ReadonlySet<string>>();
  const depths = new Map<string, number>();
  const walk = (e: Entry): ReadonlySet<string> => {
    const known = pasts.get(e.id);
    if (known !== undefined) return known;
    const past = new Set<string>();
    let depth = 0;
    for (const c of citedBy(e).filter(holds)) {
      for (const id of walk(held.get(c.id) as Entry)) past.add(id);
      past.add(c.id);
      depth = Math.max(depth, (depths.get(c.id) ?? 0) + 1);
    }
    pasts.set(e.id, past);
    depths.set(e.id, depth);
    return past;
  };
  for (const e of entries) walk(e);
  const all = (e: Entry): Entry[] => [...walk(e), e.id].map((id) => held.get(id) as Entry);
  const enteredOf = (e: Entry): number => Math.max(...all(e).map((p) => p.time));
  const lacksOf = (e: Entry): Citation[] => citedBy(e).filter((c) => !holds(c));
  const sorted = [...held.values()].sort(
    (a, b) =>
      enteredOf(a) - enteredOf(b) || (depths.get(a.id) ?? 0) - (depths.get(b.id) ?? 0) || byText(a.id, b.id),
  );
  const rank = new Map(sorted.map((e, i) => [e.id, i]));
  const beforeOf = (e: Entry): Entry | undefined => {
    const p = held.get(e.header.prev ?? '');
    if (p === undefined || chainOf(p.header) !== chainOf(e.header)) return undefined;
    return (rank.get(p.id) ?? 0) < (rank.get(e.id) ?? 0) ? p : undefined;
  };
  const isBroken = (e: Entry): boolean => {
    const p = beforeOf(e);
    return p === undefined ? e.header.prev !== null : p.header.seq !== e.header.seq - 1 || isBroken(p);
  };
  return sorted.map((e): Modelled => {
    const lost = (chain: string): number =>
      Math.max(
        0,
        ...all(e)
          .flatMap(lacksOf)
          .flatMap((c) => (chainOf(c) === chain ? [c.seq] : [])),
      );
    return {
      id: e.id,
      entered: enteredOf(e),
      lacks: lacksOf(e),
      holed: all(e).some((p) => lacksOf(p).length > 0),
      broken: isBroken(e),
      before: beforeOf(e)?.id,
      past: walk(e),
      mayKnow: (earlier) => {
        const other = held.get(earlier.id) as Entry;
        const unsure = isBroken(e) || other.header.seq < lost(chainOf(other.header));
        const apart = earlier.id !== e.id && !earlier.past.has(e.id);
        return walk(e).has(earlier.id) || (unsure && apart && earlier.entered <= enteredOf(e));
      },
    };
  });
}
