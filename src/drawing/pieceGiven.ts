import type { StraightLeg } from '../run/straight.ts';
import type { Balloon } from './types.ts';

/** What a piece figure shows. */
export interface PieceGiven {
  readonly leg: StraightLeg;
  /** Number of the piece along the leg, from 1. */
  readonly piece: number;
  /** Leaves out how far the channel goes in, where that is what the reader must know. */
  readonly insertion?: 'shown' | 'hidden' | undefined;
  /** Writes the length to cut on the piece: for a sum that has worked it out. Left out where it is what is asked. */
  readonly cut?: 'shown' | 'asked' | undefined;
  /** Where the tape is held: to the edges the piece meets, or to the middle of each sleeve. */
  readonly measured?: 'edges' | 'middles' | undefined;
  /** Parts: `pieceParts` of piece.ts. */
  readonly balloons?: readonly Balloon[] | undefined;
}
