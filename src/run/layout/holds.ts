/**
 * What each support does: carries, holds or guides.
 *
 * Where no expansion splice bounds a section its horizontal supports clamp. A leg that goes straight up or down hangs on
 * one support and is guided at the others. A section that an expansion splice bounds is held at one support alone, the
 * one nearest its middle, and one that bears a leg counts as held: such a leg must then be borne at that very support.
 */

import type { PlacedSupport, ResolvedLeg, ResolvedRun, Section } from '../resolved.ts';
import { fromMiddle } from '../sections.ts';
import type { Support } from '../types.ts';
import type { Refusal } from './refusal.ts';

type Hold = Support['hold'];
type Holds = Map<PlacedSupport, Hold>;

/** @param resolved  the run with its supports, whatever they are said to do */
export function holdsOf(
  resolved: ResolvedRun,
): { readonly holds: ReadonlyMap<PlacedSupport, Hold> } | { readonly refused: Refusal } {
  const holds: Holds = new Map();
  for (const leg of resolved.legs) {
    for (const support of leg.supports) holds.set(support, leg.plumb ? 'guide' : 'clamp');
  }
  const sliding = resolved.sections.filter(({ expansions }) => expansions > 0);
  for (const { supports } of sliding) for (const support of supports) holds.set(support, 'guide');

  const seats: Seats = { bearers: new Map(), held: new Map() };
  const { bearers, held } = seats;
  for (const leg of resolved.legs) {
    if (!leg.plumb || leg.supports.length === 0) continue;
    if (!seat(leg, sliding, seats, new Set())) return { refused: unheld(leg, sliding, held) };
  }
  for (const bearer of bearers.values()) holds.set(bearer, 'load');
  for (const section of sliding) {
    const [anchor] = nearest(section);
    if (!held.has(section) && anchor !== undefined) holds.set(anchor, 'clamp');
  }
  return { holds };
}

interface Seats {
  readonly bearers: Map<ResolvedLeg, PlacedSupport>;
  /** Sections that expansion splices bound, each with the leg that is borne in it. */
  readonly held: Map<Section, ResolvedLeg>;
}

/**
 * Lets the highest support bear a leg that may. Where its section holds another leg, that one is borne elsewhere if it
 * can be: so all are borne wherever any choice of supports bears them all.
 *
 * @param asked  sections that are being made free
 * @returns      false where no support of the leg may
 */
function seat(leg: ResolvedLeg, sliding: readonly Section[], seats: Seats, asked: Set<Section>): boolean {
  const falls = leg.frame.along[2] < 0;
  const fromTop = falls ? leg.supports : leg.supports.toReversed();
  for (const support of fromTop) {
    const section = sliding.find(({ supports }) => supports.includes(support));
    if (section !== undefined) {
      if (asked.has(section) || !nearest(section).includes(support)) continue;
      asked.add(section);
      const other = seats.held.get(section);
      if (other !== undefined && !seat(other, sliding, seats, asked)) continue;
      seats.held.set(section, leg);
    }
    seats.bearers.set(leg, support);
    return true;
  }
  return false;
}

/** Supports nearest to the middle of a section; all of one that branches, since it has none. */
function nearest(section: Section): readonly PlacedSupport[] {
  const { supports, branches } = section;
  if (branches) return supports;
  const least = Math.min(...supports.map((support) => fromMiddle(section, support)));
  return supports.filter((support) => fromMiddle(section, support) === least);
}

function unheld(
  leg: ResolvedLeg,
  sliding: readonly Section[],
  held: ReadonlyMap<Section, ResolvedLeg>,
): Refusal {
  const own = sliding.filter(({ stretches }) => stretches.some((stretch) => stretch.leg === leg));
  const other = own.map((section) => held.get(section)).find((one) => one !== undefined);
  const many = other !== undefined && own.every((section) => held.has(section) || section.branches);
  const at = leg.supports[0]?.at ?? null;
  const values = { leg: leg.leg, ...(many ? { other: other.leg } : {}) };
  const rule = many ? 'anchor-many' : 'anchor-off-middle';
  return { rule, leg: leg.leg, at, say: { say: `layout.${rule}`, values } };
}
