import type { Day } from './days.ts';
import { type Citation, chainOf } from './header.ts';
import { latest, type Placed } from './order.ts';
import type { Retirement } from './retirement.ts';
import type { Authority } from './rights.ts';
import type { View } from './view.ts';

/** An entry that is cited and not held. */
export interface Gap {
  readonly cited: Citation;
  /** The first entry, by time entered, that cites it: of someone with standing where there is one. */
  readonly by: Placed;
  /** Day of that entry: what it may have spoken against was seen no later. */
  readonly until: Day;
  /** A retirement or a take-over cut it off: it would count for nothing. */
  readonly cut: boolean;
  readonly settled: boolean;
  /** Someone with standing speaks of it: a stranger cannot put a register in doubt by citing what never was. */
  readonly heard: boolean;
}

/** Everything that is cited and not held. */
export function gapsOf(view: View, authority: Authority, settled: ReadonlySet<string>): readonly Gap[] {
  const found = new Map<string, { cited: Citation; by: Placed[] }>();
  for (const p of view.list) {
    if (p.lacks.length === 0) continue;
    for (const cited of p.lacks) {
      const key = `${cited.id}.${chainOf(cited)}`;
      const gap = found.get(key) ?? { cited, by: [] };
      gap.by.push(p);
      found.set(key, gap);
    }
  }
  // Whoever retires a key after an entry speaks of that entry, though what followed it may be all that he cites.
  const named = authority.retirements.flatMap((r) =>
    r.entry.header.target.map((id) => [id, r.entry] as const),
  );
  for (const { cited, by } of found.values())
    by.push(...named.filter(([id]) => id === cited.id).map(([, p]) => p));
  return [...found.values()].map(({ cited, by }) => {
    const first = by.find(authority.hasStanding);
    const speaks = first ?? (by[0] as Placed);
    const cutBy = cuts(authority, cited);
    const inPast = cutBy.some((c) => by.some((p) => p === c || view.order.isPast(c, p)));
    // Spoken of only by what a retirement or take-over cut off, and knew.
    const past = by.every((p) => {
      const refused = authority.voids.get(p.id);
      return refused?.code === 'after-retirement' && refused.settled;
    });
    return {
      cited,
      by: speaks,
      until: view.dayIn(view.zone, speaks.entered),
      cut: cutBy.length > 0,
      settled: settled.has(cited.id) || inPast || past,
      heard: first !== undefined,
    };
  });
}

/** Retirements and take-overs under which a missing entry would count for nothing. */
function cuts(authority: Authority, cited: Citation): readonly Placed[] {
  if (authority.owners.includes(cited.signer)) return [];
  return authority.retirements.filter((r) => r.key === cited.signer && !needed(r, cited)).map((r) => r.entry);
}

/** Whether a missing entry stands itself, or lies in its chain before something that does. */
const needed = ({ stands, upTo }: Retirement, cited: Citation): boolean =>
  stands.has(cited.id) || (upTo.get(chainOf(cited)) ?? 0) > cited.seq;

/** Settlements of single entries (missing, back-dated): by target, unless two that do not know each other name one. */
export function settledTargets(view: View, settles: readonly Placed[]): ReadonlySet<string> {
  const targets = Map.groupBy(settles, (s) => s.header.target[0] ?? '');
  return new Set([...targets].filter(([, all]) => latest(view.order, all).length === 1).map(([id]) => id));
}
