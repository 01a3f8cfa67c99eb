/** What can be tapped on a leg: where things may be set down, or the parts that may be at fault. */
import { supportName } from '../../run/supports.ts';
import { inches } from '../../trade/length.ts';
import type { PlaceWhat, TapGiven } from './given.ts';
import { type Laned, type On, said, saidLength, target } from './on.ts';
import { bound, joints, partsOf, supports } from './parts.ts';

/** Everything that can be tapped on a leg, in order along it; what is the whole leg's comes first. */
export function targetsOf(on: On, tap: TapGiven['tap']): readonly Laned[] {
  const places = tap.kind === 'faults' ? partsOf(on) : setDown[tap.what](on);
  return [...places].sort((a, b) => (a.at ?? -1) - (b.at ?? -1));
}

const setDown: Readonly<Record<PlaceWhat, (on: On) => readonly Laned[]>> = {
  support: (on) => steel(on) ?? feet(on),
  splice: (on) => [...feet(on), ...joints(on)],
  jumper: (on) => [...bound(on), ...joints(on)],
  anchor: supports,
};

/** Steel that the run names on this leg. */
function steel(on: On): readonly Laned[] | undefined {
  const { leg, mark, resolved } = on;
  const places = resolved.run.places?.filter((p) => p.leg === leg.leg).flatMap((p) => p.at.map(inches));
  if (places === undefined || places.length === 0) return undefined;
  return [...new Set(places)]
    .sort((a, b) => a - b)
    .map((at, i) => {
      const letter = supportName(i);
      const words = said(on, 'steel', { letter, leg: mark, at: saidLength(at, on) });
      return target(on, 'place', at, { letters: letter, words, lane: 'left' });
    });
}

const FOOT = 12;

/** Every whole foot where a strut finds channel: by turns left and right, so that boxes of 48 px do not meet. */
function feet(on: On): readonly Laned[] {
  const { leg, mark } = on;
  const from = inches(leg.start.takeOut);
  const to = inches(leg.length) - inches(leg.end.takeOut);
  return Array.from({ length: Math.floor(inches(leg.length) / FOOT + 1e-9) + 1 }, (_, foot) => foot * FOOT)
    .filter((at) => at >= from && at <= to)
    .filter((at) => leg.pieces.some((p) => inches(p.from) <= at && at <= inches(p.to)))
    .map((at) => {
      const words = said(on, 'mark', { leg: mark, at: saidLength(at, on) });
      const lane = (at / FOOT) % 2 === 0 ? 'left' : 'right';
      return target(on, 'mark', at, { letters: `${at / FOOT}'`, words, lane });
    });
}
