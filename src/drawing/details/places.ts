/** How the places of a run are named where a detail is asked for. */
import type { PlacedSupport, ResolvedFitting, ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import type { Piece, ResolvedJoint } from '../../run/straight.ts';
import { jointNames } from '../runNames.ts';

type Run = Pick<ResolvedRun, 'legs' | 'fittings'>;

export interface PlacedJoint {
  readonly leg: ResolvedLeg;
  readonly joint: ResolvedJoint;
  readonly name: string;
}

/** Joints in order of travel, named as the sheets of the whole run name them: `S1`, `S2` … */
export function jointsOf(run: Run): readonly PlacedJoint[] {
  const names = jointNames(run);
  return run.legs.flatMap((leg) =>
    leg.joints.map((joint) => ({ leg, joint, name: names.get(joint) ?? joint.name })),
  );
}

/** A fitting by the first leg that leaves it. */
export const fittingName = ({ out, into }: ResolvedFitting): string => out[0]?.leg.leg ?? into.leg;

export interface PlacedPiece {
  readonly leg: ResolvedLeg;
  readonly piece: Piece;
}
export const piecesOf = ({ legs }: Run): readonly PlacedPiece[] =>
  legs.flatMap((leg) => leg.pieces.map((piece) => ({ leg, piece })));

export interface Held {
  readonly leg: ResolvedLeg;
  readonly support: PlacedSupport;
}
export const supportsOf = ({ legs }: Run): readonly Held[] =>
  legs.flatMap((leg) => leg.supports.map((support) => ({ leg, support })));
