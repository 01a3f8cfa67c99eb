/**
 * A run as content and commands write it, lengths already exact. Names of fields are those of the input; what a run *means*
 * (joints resolved, pieces, cuts) is worked out elsewhere and kept nowhere.
 * A field that may be left out may also be `undefined`, so that a reader can hand on what it found.
 */
import type { Edition } from '../trade/fillTables.ts';
import type { Size } from '../trade/jumper.ts';
import type { Ticks } from '../trade/length.ts';
import type { RadiusCable } from '../trade/radius.ts';

/** How the channel meets what is at the run's first or last face. */
export type EndJoint = 'socketed' | 'butt' | 'expansion' | 'free';

/** A joint along a leg: a sleeve, a plate, a hinge standing straight, an expansion splice, or nothing between the ends. */
export type JointKind = 'socketed' | 'butt' | 'hinged' | 'expansion' | 'gap';

/** Size of a jumper as the tables write it, `8 AWG`; `null` says that none is fitted. */
export type Jumper = Size | null;

/** Types of cable that have a radius of bend, and tube that carries air. */
export type CableType = RadiusCable | 'tube';

export type Direction =
  | 'N'
  | 'E'
  | 'S'
  | 'W'
  | 'U'
  | 'D'
  | { readonly azimuthDeg: number; readonly slopeDeg: number };

export interface Start {
  readonly kind: 'ladder' | 'tray' | 'free';
  readonly joint: EndJoint;
  readonly bare?: boolean | undefined;
  readonly jumper?: Jumper | undefined;
}

export interface Leg {
  readonly id: string;
  /** `start`, a leg's id, or `LEG:left`, `LEG:right`. */
  readonly from: string;
  readonly fitting: string | null;
  readonly dir: Direction;
  readonly length: Ticks;
  readonly onEdge?: boolean | undefined;
  readonly barrier?: boolean | undefined;
  readonly keeps?: 'left' | 'centre' | 'right' | undefined;
  readonly bare?: boolean | undefined;
  readonly jumper?: Jumper | undefined;
}

export interface End {
  readonly leg: string;
  readonly kind: 'free' | 'instrument' | 'tray';
  readonly joint: EndJoint;
  /** From the channel's end to the instrument; lies beyond the leg's length. */
  readonly open?: Ticks | undefined;
  readonly bare?: boolean | undefined;
  readonly jumper?: Jumper | undefined;
}

export interface Joint {
  readonly leg: string;
  /** From the leg's first working point to the middle of the opening. */
  readonly at: Ticks;
  readonly kind: JointKind;
  readonly item?: string | undefined;
  readonly gap?: Ticks | undefined;
  /** How far each channel goes in: the one before the joint, then the one behind it. */
  readonly insertions?: readonly [Ticks, Ticks] | undefined;
  readonly hole?: 'small' | 'large' | undefined;
  readonly bare?: boolean | undefined;
  readonly jumper?: Jumper | undefined;
}

export interface Support {
  readonly leg: string;
  readonly at: Ticks;
  readonly way: 'horizontal' | 'vertical';
  readonly hold: 'clamp' | 'guide' | 'load';
}

export interface RunCable {
  readonly id: string;
  readonly type: CableType;
  readonly shielded?: boolean | undefined;
  readonly odIn: number;
  readonly lbPerFt: number;
  readonly count: number;
  readonly make: 'multiconductor' | 'single';
  readonly use: 'power' | 'signal' | 'air';
  readonly deviceA?: number | undefined;
  readonly side?: 'left' | 'right' | undefined;
  readonly to: string;
}

export interface Mark {
  readonly leg: string;
  readonly at: Ticks;
  readonly kind: 'step';
}

export interface Places {
  readonly leg: string;
  readonly at: readonly Ticks[];
}

export interface Limits {
  readonly maxSpan?: Ticks | undefined;
  readonly edition?: Edition | undefined;
}

export interface Temperatures {
  readonly lowF: number;
  readonly highF: number;
  readonly nowF: number;
}

export interface Run {
  readonly v: 1;
  /** Catalogue id of the tray. */
  readonly tray: string;
  readonly stock?: Ticks | undefined;
  readonly kerf?: Ticks | undefined;
  readonly start: Start;
  readonly legs: readonly Leg[];
  readonly ends?: readonly End[] | undefined;
  readonly joints?: readonly Joint[] | undefined;
  readonly supports?: readonly Support[] | undefined;
  readonly cables?: readonly RunCable[] | undefined;
  readonly marks?: readonly Mark[] | undefined;
  readonly places?: readonly Places[] | undefined;
  readonly limits?: Limits | undefined;
  readonly temps?: Temperatures | undefined;
}
