import type { StraightLeg } from '../run/straight.ts';
import type { Ticks } from '../trade/length.ts';
import type { Balloon } from './types.ts';

/** What a strip shows. */
export interface StripGiven {
  readonly leg: StraightLeg;
  /** One stock length: with it whole lengths and cut pieces are told apart, and what is left is drawn. */
  readonly stock?: Ticks | undefined;
  readonly kerf?: Ticks | undefined;
  /** Parts: `start end whole left-over piece-1 … s1 …`. */
  readonly balloons?: readonly Balloon[] | undefined;
}
