/** What follows from a straight leg: the shapes. The working is in resolve.ts, joints.ts, pieces.ts and spliceStraight.ts. */
import type { Ticks } from '../trade/length.ts';
import type { Tray } from './catalogue.ts';
import type { EndJoint, Run, Support } from './types.ts';

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
  /** Length of the sleeve or plate. */
  readonly length: Ticks;
  readonly insertions: Pair<Ticks>;
  readonly opening: Ticks;
  readonly takeOuts: Pair<Ticks>;
  readonly shares: Pair<Ticks>;
  /** Where the channel before it ends and the channel behind it begins, from the leg's first working point. */
  readonly channelEnds: Pair<Ticks>;
  /** Where the tape stops on it: the edges of a sleeve; a butt joint is measured to the channel ends. */
  readonly edges: Pair<Ticks>;
}

/** Both channels go into a sleeve. */
export interface SocketedJoint extends JointPlace {
  readonly kind: 'socketed';
}
/** The ends stand before each other, a plate across them. */
export interface ButtJoint extends JointPlace {
  readonly kind: 'butt';
}
export type ResolvedJoint = SocketedJoint | ButtJoint;

/** What stands at the first or the last face of the leg. */
export interface Face {
  readonly kind: 'ladder' | 'tray' | 'instrument' | 'free';
  readonly joint: Exclude<EndJoint, 'expansion'>;
  readonly insertion: Ticks;
  /** Beyond the channel's end, to an instrument; 0 elsewhere. */
  readonly open: Ticks;
}

export interface PieceEnd {
  /** `start`, `end`, or the joint's name. */
  readonly joint: string;
  readonly kind: 'socketed' | 'butt' | 'free';
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

export interface ResolvedRun {
  readonly run: Run;
  readonly tray: Tray;
  readonly stock: Ticks;
  readonly kerf: Ticks;
  readonly legs: readonly StraightLeg[];
}
