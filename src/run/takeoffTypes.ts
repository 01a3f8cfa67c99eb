/** What a take-off hands out, as it is printed: lengths in inches, loads in pounds. */
import type { SticksResult } from '../trade/sticks/types.ts';
import type { Side } from './fillOver.ts';
import type { FastenerRow, HardwareRow } from './hardware.ts';
import type { JumperReason } from './jumpers.ts';
import type { JointKind } from './types.ts';

export interface TakeoffPiece {
  readonly id: string;
  readonly leg: string;
  readonly cutIn: number;
  /** The end nearer the start first. A fitting is met as a socket; a hinge, whether it turns or not, as hinged. */
  readonly ends: readonly [TakeoffEnd, TakeoffEnd];
}

export interface TakeoffEnd {
  readonly joint: JointKind | 'free';
  readonly takeOutIn: number;
  readonly insertionIn: number;
  readonly shareIn: number;
}

export interface Takeoff {
  /** By legs in order of travel, then along the leg. */
  readonly pieces: readonly TakeoffPiece[];
  /** A plan a channel. */
  readonly sticks: readonly ({ readonly tray: string } & SticksResult)[];
  readonly hardware: readonly HardwareRow[];
  /** What the splices are fastened with, by the catalogue's fastening place. */
  readonly fasteners: readonly FastenerRow[];
  /** What is needed, given or not. */
  readonly jumpers: readonly {
    readonly leg: string;
    readonly atIn: number;
    readonly reason: JumperReason;
    readonly size: string | null;
    readonly holds: boolean | null;
  }[];
  readonly fill: readonly {
    readonly leg: string;
    readonly side?: Side;
    readonly areaIn2: number;
    readonly allowedIn2: number | null;
    readonly within: boolean | null;
    readonly refer: boolean;
  }[];
  /** Of every expansion splice the gap wanted now. */
  readonly gaps: readonly { readonly leg: string; readonly atIn: number; readonly gapIn: number | null }[];
  readonly supportLoads: readonly {
    readonly leg: string;
    readonly atIn: number;
    readonly lb: number | null;
  }[];
  /** Of a support that hangs on two rods, on each. */
  readonly rodLoads: readonly { readonly leg: string; readonly atIn: number; readonly lb: number | null }[];
  /** Of each leg between its working points. */
  readonly weights: readonly {
    readonly leg: string;
    readonly trayLb: number;
    readonly cablesLb: number;
    readonly lb: number;
  }[];
  readonly cableLengthsIn: Readonly<Record<string, number>>;
}
