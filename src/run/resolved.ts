/**
 * What follows from a whole run: the shapes. Every room that reads a run reads this; the working is in resolve.ts and
 * the files it names. Places along a leg are ticks from its first working point, as in straight.ts; places in space are
 * floating ticks from the run's start, and serve drawings alone: no length is ever worked out from them.
 */
import type { Ticks } from '../trade/length.ts';
import type { Branch, Elbow, Hinge, Reducer, Tray } from './catalogue.ts';
import type { ResolvedJoint, StraightLeg } from './straight.ts';
import type { End, Leg, Run, RunCable, Start, Support } from './types.ts';
import type { Vec } from './vector.ts';

export type { Vec } from './vector.ts';

/** How the channel lies: three unit vectors at right angles. `left` is left along the travel: open × along. */
export interface Frame {
  readonly along: Vec;
  /** Towards the open side of the channel. */
  readonly open: Vec;
  readonly left: Vec;
}

export type WayOut = 'straight' | 'left' | 'right';

/** How a leg leaves the fitting before it, seen along the travel; `none` goes straight on. */
export type Turn = 'none' | 'left' | 'right' | 'inside' | 'outside';

export type FittingItem = Elbow | Branch | Reducer | Hinge;

/** One fitting as it stands: a tee or cross is one, whatever legs leave it. */
export interface ResolvedFitting {
  /** Its place in the run's list of fittings, in order of travel. */
  readonly index: number;
  readonly item: FittingItem;
  /** The leg that comes in, and those that go out. */
  readonly into: ResolvedLeg;
  readonly out: readonly { readonly leg: ResolvedLeg; readonly way: WayOut; readonly turn: Turn }[];
  /** Working point. */
  readonly at: Vec;
  /** Angle between the ways in and out; 0 for a reducer, 90 for a tee or cross. */
  readonly turnDeg: number;
}

/** A leg with its place in space, its channel, its joints, pieces, supports, lines. */
export interface ResolvedLeg extends StraightLeg {
  readonly given: Leg;
  /** `legs[k]` of the run as given: faults and findings name the leg by it. */
  readonly field: string;
  /** Place in `ResolvedRun.legs`. */
  readonly index: number;
  /** The channel of this leg: another behind a reducer. */
  readonly tray: Tray;
  readonly frame: Frame;
  /** First and last working point. */
  readonly at: readonly [Vec, Vec];
  /** Goes straight up or down. */
  readonly plumb: boolean;
  readonly parent: ResolvedLeg | null;
  readonly children: readonly ResolvedLeg[];
  /** At the first working point; null on the first leg. */
  readonly fittingBefore: ResolvedFitting | null;
  /** At the last working point; null on a last leg. */
  readonly fittingAfter: ResolvedFitting | null;
  readonly turn: Turn;
  readonly way: WayOut;
  /** In order along the leg. */
  readonly supports: readonly PlacedSupport[];
  /** What the run gives at the leg's end: null where a fitting stands; a last leg without an entry ends free. */
  readonly givenEnd: End | null;
  /** Path of that entry, `ends[1]`; the leg's own where there is none. */
  readonly endField: string;
  readonly lines: readonly Line[];
}

/** What bounds a line, and what a section may end at. */
export type Bound = 'start' | 'end' | 'fitting' | 'hinged' | 'expansion' | 'gap';

export interface LineEnd {
  readonly kind: Bound;
  /** Face that a support must stand near: fitting's or hinge's face, else the channel's end. */
  readonly face: Ticks;
  /** The joint, where a joint of the leg ends the line. */
  readonly joint: ResolvedJoint | null;
}

/** Channel joined by rigid splices, between fittings, hinges, expansion splices, gaps or free ends. Lies in one leg. */
export interface Line {
  readonly leg: string;
  readonly from: LineEnd;
  readonly to: LineEnd;
  /** Rigid splices inside it, in order. */
  readonly splices: readonly ResolvedJoint[];
  /** In order. */
  readonly supports: readonly PlacedSupport[];
  /** Between neighbouring supports, in order; one fewer than supports. */
  readonly spans: readonly Span[];
}

export interface Span {
  readonly from: Ticks;
  readonly to: Ticks;
  readonly length: Ticks;
  /** First or last of its line: no splice may stand in it. */
  readonly end: boolean;
}

export interface PlacedSupport extends Support {
  /** `supports[k]` of the run as given. */
  readonly field: string;
  /** Letter or letters of the drawings and lists, in order of travel over the whole run: A, B … (no I, O, Q), AA … */
  readonly name: string;
}

/**
 * What hangs together through splices, fittings and hinges, parted by expansion splices and gaps: stretches of legs.
 * The bounds are the ends of its stretches that are no fitting or hinge inside it.
 */
export interface Section {
  readonly stretches: readonly { readonly leg: ResolvedLeg; readonly from: Ticks; readonly to: Ticks }[];
  readonly bounds: readonly Bound[];
  /** Joints of kind expansion at its bounds, the start's and the ends' among them. */
  readonly expansions: number;
  /** Whether a tee or cross stands inside with more than one way out used: it then has no middle. */
  readonly branches: boolean;
  /** In order of travel. */
  readonly supports: readonly PlacedSupport[];
  /** Half its length measured along working points: leg and place; null when it branches. */
  readonly middle: { readonly leg: ResolvedLeg; readonly at: Ticks } | null;
}

/** Cables that run over a leg, in the order given. */
export type CablesOver = (leg: ResolvedLeg) => readonly RunCable[];

export interface ResolvedRun {
  readonly run: Run;
  /** The first leg's channel. */
  readonly tray: Tray;
  readonly stock: Ticks;
  readonly kerf: Ticks;
  readonly start: Start;
  /** Parents before children, in order of travel; straight on before left before right. */
  readonly legs: readonly ResolvedLeg[];
  readonly byId: ReadonlyMap<string, ResolvedLeg>;
  readonly fittings: readonly ResolvedFitting[];
  readonly sections: readonly Section[];
  readonly cablesOver: CablesOver;
}
