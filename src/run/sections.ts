/** Sections of a run: what hangs together through splices, fittings and hinges, parted by expansion splices and gaps. */
import { type Ticks, ticks } from '../trade/length.ts';
import type { Bound, PlacedSupport, ResolvedLeg, Section } from './resolved.ts';
import type { Start } from './types.ts';

interface Stretch {
  readonly leg: ResolvedLeg;
  readonly from: Ticks;
  to: Ticks;
}

/** A section as it grows. */
interface Growing {
  readonly stretches: Stretch[];
  readonly bounds: Bound[];
  expansions: number;
  branches: boolean;
  readonly supports: PlacedSupport[];
}

const ZERO = ticks(0);

/**
 * Sections in order of travel. A stretch reaches the middle of an expansion splice's opening, and the channel end at a
 * gap: as far as the section's own channel and its half of what slides.
 *
 * @param legs  parents before children
 */
export function sectionsOf(legs: readonly ResolvedLeg[], start: Start): readonly Section[] {
  const sections: Growing[] = [];
  const open = (bound: Bound): Growing => {
    const section = { stretches: [], bounds: [bound], expansions: 0, branches: false, supports: [] };
    sections.push(section);
    return section;
  };
  const atEnd = new Map<ResolvedLeg, Growing>();
  for (const leg of legs) {
    let section = (leg.parent && atEnd.get(leg.parent)) ?? open('start');
    if (leg.parent === null && start.joint === 'expansion') section.expansions += 1;
    let stretch: Stretch = { leg, from: ZERO, to: leg.length };
    section.stretches.push(stretch);
    let next = 0;
    const take = (until: number) => {
      for (; next < leg.supports.length && (leg.supports[next]?.at ?? 0) <= until; next++) {
        section.supports.push(leg.supports[next] as PlacedSupport);
      }
    };
    for (const { kind, at, channelEnds } of leg.joints) {
      if (kind !== 'expansion' && kind !== 'gap') continue;
      const moves = kind === 'expansion' ? 1 : 0;
      take(at);
      stretch.to = kind === 'gap' ? channelEnds[0] : at;
      section.bounds.push(kind);
      section.expansions += moves;
      section = open(kind);
      section.expansions += moves;
      stretch = { leg, from: kind === 'gap' ? channelEnds[1] : at, to: leg.length };
      section.stretches.push(stretch);
    }
    take(Number.POSITIVE_INFINITY);
    if (leg.children.length === 0) {
      section.bounds.push('end');
      if (leg.end.joint === 'expansion') section.expansions += 1;
    }
    if (leg.children.length > 1) section.branches = true;
    atEnd.set(leg, section);
  }
  return sections.map((section) => ({
    ...section,
    middle: section.branches ? null : middleOf(section.stretches),
  }));
}

/** Half the way through the stretches of a section that does not branch. */
function middleOf(stretches: readonly Stretch[]): Section['middle'] {
  let ahead = Math.floor(stretches.reduce((sum, { from, to }) => sum + to - from, 0) / 2);
  for (const { leg, from, to } of stretches) {
    if (ahead <= to - from) return { leg, at: ticks(from + ahead) };
    ahead -= to - from;
  }
  return null;
}

/**
 * How far a place lies from the middle of a section that does not branch, measured along working points; in ticks, a
 * half tick where the section is an odd number of them long, so that two places equally near come out equal.
 */
export function fromMiddle({ stretches }: Section, of: { readonly leg: string; readonly at: Ticks }): number {
  let along = 0;
  let place = 0;
  for (const { leg, from, to } of stretches) {
    if (leg.leg === of.leg) place = along + of.at - from;
    along += to - from;
  }
  return Math.abs(place - along / 2);
}
