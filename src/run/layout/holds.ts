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

/** A leg that no support bears which its section allows. */
export interface Unheld {
  readonly leg: ResolvedLeg;
  /** Sections of the leg that nothing holds yet: another lay-out might do it in one of them. */
  readonly open: readonly Section[];
  readonly refusal: Refusal;
}

/** @param resolved  the run with its supports, whatever they are said to do */
export function holdsOf(
  resolved: ResolvedRun,
): { readonly holds: ReadonlyMap<PlacedSupport, Hold> } | { readonly unheld: Unheld } {
  const holds: Holds = new Map();
  for (const leg of resolved.legs) {
    for (const support of leg.supports) holds.set(support, leg.plumb ? 'guide' : 'clamp');
  }
  const sliding = resolved.sections.filter(({ expansions }) => expansions > 0);
  for (const { supports } of sliding) for (const support of supports) holds.set(support, 'guide');

  const held = new Map<Section, ResolvedLeg>();
  for (const leg of resolved.legs) {
    if (!leg.plumb || leg.supports.length === 0) continue;
    const bearer = bearerOf(leg, sliding, held);
    if (bearer === null) return { unheld: unheld(leg, sliding, held) };
    holds.set(bearer, 'load');
  }
  for (const section of sliding) {
    const [anchor] = nearest(section);
    if (!held.has(section) && anchor !== undefined) holds.set(anchor, 'clamp');
  }
  return { holds };
}

/** The support that bears a leg: the highest that may. */
function bearerOf(
  leg: ResolvedLeg,
  sliding: readonly Section[],
  held: Map<Section, ResolvedLeg>,
): PlacedSupport | null {
  const falls = leg.frame.along[2] < 0;
  const fromTop = falls ? leg.supports : leg.supports.toReversed();
  for (const support of fromTop) {
    const section = sliding.find(({ supports }) => supports.includes(support));
    if (section === undefined) return support;
    if (held.has(section) || !nearest(section).includes(support)) continue;
    held.set(section, leg);
    return support;
  }
  return null;
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
): Unheld {
  const own = sliding.filter(({ stretches }) => stretches.some((stretch) => stretch.leg === leg));
  const open = own.filter((section) => !held.has(section) && !section.branches);
  const other = own.map((section) => held.get(section)).find((one) => one !== undefined);
  const many = open.length === 0 && other !== undefined;
  const at = leg.supports[0]?.at ?? null;
  const values = { leg: leg.leg, ...(many ? { other: other.leg } : {}) };
  const rule = many ? 'anchor-many' : 'anchor-off-middle';
  return { leg, open, refusal: { rule, leg: leg.leg, at, say: { say: `layout.${rule}`, values } } };
}
