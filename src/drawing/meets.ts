/** What stands at the ends of a piece. */
import type { Face, PieceEnd, ResolvedJoint, StraightLeg } from '../run/straight.ts';

/** What a piece's end meets. */
export interface Meets {
  readonly end: PieceEnd;
  readonly joint?: ResolvedJoint | undefined;
  readonly face?: Face | undefined;
}

export function meets(leg: StraightLeg, end: PieceEnd): Meets {
  const joint = leg.joints.find(({ name }) => name === end.joint);
  if (joint !== undefined) return { end, joint };
  return { end, face: end.joint === 'start' ? leg.start : leg.end };
}
