/**
 * Lines laid so that every leg straight up or down can be borne: in a section that no expansion splice bounds, or as the
 * one anchor of a section that none else holds. Of all ways to share the sections out, one with the fewest supports.
 */
import type { ResolvedLeg, ResolvedRun, Section } from '../resolved.ts';
import { anchored } from './anchored.ts';
import { type LaidOut, supportsOf } from './write.ts';

interface Seat {
  readonly section: Section;
  /** Supports it takes beyond the fewest. */
  readonly more: number;
}

/**
 * @param laid      each line with its fewest supports
 * @param resolved  the same run with its supports
 * @returns         null where no choice bears all
 */
export function borne(laid: readonly LaidOut[], resolved: ResolvedRun): readonly LaidOut[] | null {
  const risers = resolved.legs.filter((leg) => leg.plumb && seatsOf(leg, resolved) !== null);
  const seats = risers.map((leg) => offers(laid, leg, seatsOf(leg, resolved) ?? []));
  const chosen = sharedOut(seats);
  if (chosen === null) return null;
  return chosen.reduce<readonly LaidOut[]>((lines, section, i) => {
    // Without a middle any support may hold it.
    if (section.branches) return lines;
    return anchored(lines, section, (risers[i] as ResolvedLeg).leg) ?? lines;
  }, laid);
}

/** Sections that a leg is in; null where one of them slides nowhere, and may bear it whatever others do. */
function seatsOf(leg: ResolvedLeg, { sections }: ResolvedRun): readonly Section[] | null {
  const own = sections.filter(({ stretches }) => stretches.some((stretch) => stretch.leg.leg === leg.leg));
  return own.some(({ expansions }) => expansions === 0) ? null : own;
}

function offers(laid: readonly LaidOut[], leg: ResolvedLeg, sections: readonly Section[]): readonly Seat[] {
  const fewest = supportsOf(laid);
  return sections
    .flatMap((section): Seat[] => {
      if (section.branches) return [{ section, more: 0 }];
      const again = anchored(laid, section, leg.leg);
      return again === null ? [] : [{ section, more: supportsOf(again) - fewest }];
    })
    .sort((a, b) => a.more - b.more);
}

/** One seat for each, no section twice, with the least supports more in all. */
function sharedOut(all: readonly (readonly Seat[])[]): readonly Section[] | null {
  let best: { readonly sections: readonly Section[]; readonly more: number } | null = null;
  const taken: Section[] = [];
  const share = (i: number, more: number): void => {
    if (best !== null && more >= best.more) return;
    const seats = all[i];
    if (seats === undefined) {
      best = { sections: [...taken], more };
      return;
    }
    for (const seat of seats) {
      if (taken.includes(seat.section)) continue;
      taken.push(seat.section);
      share(i + 1, more + seat.more);
      taken.pop();
    }
  };
  share(0, 0);
  return (best as { readonly sections: readonly Section[] } | null)?.sections ?? null;
}
