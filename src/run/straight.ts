/** What follows from a straight leg: the shapes. The working is in joints.ts, faces.ts, pieces.ts and spliceStraight.ts. */
import type { Ticks } from '../trade/length.ts';
import type { EndJoint, Joint, JointKind, Support } from './types.ts';

type Pair<T> = readonly [T, T];

/**
 * A joint with everything filled in. `[0]` of a pair is the channel before it, `[1]` the channel behind it.
 * The opening is the metal-to-metal space; its middle stands at `at`.
 */
interface JointPlace {
  /** `S1`, `S2` … along the leg. */
  readonly name: string;
  readonly at: Ticks;
  /** Catalogue id, or `null` where a length was filled from measures alone. */
  readonly item: string | null;
  /** Length of the sleeve, plate or expansion splice, or of the hinge from face to face; 0 at a gap. */
  readonly length: Ticks;
  readonly insertions: Pair<Ticks>;
  readonly opening: Ticks;
  readonly takeOuts: Pair<Ticks>;
  readonly shares: Pair<Ticks>;
  /** Where the channel before it ends and the channel behind it begins, from the leg's first working point. */
  readonly channelEnds: Pair<Ticks>;
  /** Where the tape stops on it: the edges of a sleeve, the faces of a hinge; else the channel ends. */
  readonly edges: Pair<Ticks>;
  /** As the run gives it, and its path there, `joints[2]`; null where a length was filled from measures alone. */
  readonly given: Joint | null;
  readonly field: string | null;
}

/** Both channels go into a sleeve. */
export interface SocketedJoint extends JointPlace {
  readonly kind: 'socketed';
}
/** The ends stand before each other, a plate across them. */
export interface ButtJoint extends JointPlace {
  readonly kind: 'butt';
}
/** Stands straight, its pivot at `at`; parts lines. */
export interface HingedJoint extends JointPlace {
  readonly kind: 'hinged';
}
/** The ends stand apart by the gap wanted, a sliding splice across them; parts lines and sections. */
export interface ExpansionJoint extends JointPlace {
  readonly kind: 'expansion';
}
/** Nothing joins the ends; parts lines and sections. */
export interface GapJoint extends JointPlace {
  readonly kind: 'gap';
}
/** A rigid splice: channel on both sides of it is one line. */
export type RigidJoint = SocketedJoint | ButtJoint;
export type ResolvedJoint = RigidJoint | HingedJoint | ExpansionJoint | GapJoint;

/** What stands at the first or the last face of the leg. */
export interface Face {
  readonly kind: 'ladder' | 'tray' | 'instrument' | 'free' | 'fitting';
  readonly joint: EndJoint | 'fitting';
  /** From the leg's working point to the face: of a fitting, else 0. */
  readonly takeOut: Ticks;
  readonly insertion: Ticks;
  /** What the leg gives to the opening of an expansion splice; else 0. */
  readonly share: Ticks;
  /** Whole opening of an expansion splice, the gap wanted; else 0. */
  readonly gap: Ticks;
  /** Beyond the channel's end, to an instrument; 0 elsewhere. */
  readonly open: Ticks;
}

export interface PieceEnd {
  /** `start`, `end`, or the joint's name. */
  readonly joint: string;
  readonly kind: JointKind | 'free' | 'fitting';
  readonly takeOut: Ticks;
  readonly insertion: Ticks;
  readonly share: Ticks;
}

export interface Piece {
  /** Leg and number along it, `1-2`. */
  readonly id: string;
  readonly number: number;
  readonly leg: string;
  /** Channel ends, from the leg's first working point (the first may be below 0: it goes into a socket). */
  readonly from: Ticks;
  readonly to: Ticks;
  /** Length to cut: `D − T1 − T2 + i1 + i2 − s1 − s2`. */
  readonly cut: Ticks;
  /** What a tape shows from edge to edge of the joints it meets: the cut less what goes in. */
  readonly clear: Ticks;
  readonly ends: Pair<PieceEnd>;
}

export interface StraightLeg {
  readonly leg: string;
  readonly length: Ticks;
  readonly start: Face;
  readonly end: Face;
  /** In order along the leg. */
  readonly joints: readonly ResolvedJoint[];
  readonly pieces: readonly Piece[];
  readonly supports: readonly Support[];
}
