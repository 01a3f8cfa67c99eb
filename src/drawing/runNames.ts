/** How legs and joints are named on a sheet of the whole run. */
import type { ResolvedLeg, ResolvedRun } from '../run/resolved.ts';
import type { ResolvedJoint } from '../run/straight.ts';
import { textWidth } from './glyphs.ts';
import { SIZES } from './plan.ts';

/** Joints in order of travel over the whole run, `S1`, `S2` …: along one straight leg, its own names. */
export function jointNames({ legs }: Pick<ResolvedRun, 'legs'>): ReadonlyMap<ResolvedJoint, string> {
  return new Map(legs.flatMap((leg) => leg.joints).map((joint, i) => [joint, `S${i + 1}`]));
}

/** Widest name that a balloon holds, px. */
const WIDEST = 58;

/** What the legs' balloons carry: their ids; where one is too long, every leg has its number in order of travel. */
export function legMarks({ legs }: Pick<ResolvedRun, 'legs'>): ReadonlyMap<ResolvedLeg, string> {
  const fit = legs.every(({ leg }) => textWidth(leg, SIZES.text) <= WIDEST);
  return new Map(legs.map((leg, i) => [leg, fit ? leg.leg : String(i + 1)]));
}
