/** Whether a leg lies as it says: open side up on a level leg, level to a side on edge, never upside down. */
import { HAIR } from '../trade/hair.ts';
import { angleDeg, cross, dot, minus, square, UP, unit, type Vec } from './vector.ts';

/** Angles that differ by no more than this are the same, in degrees; the hair takes up what floating numbers lose. */
export const SAME_DEG = 0.1 + HAIR;

export interface Lies {
  readonly along: Vec;
  readonly open: Vec;
}

/** What of a leg does not agree with the fitting before it. */
export interface Wrong {
  readonly part: 'dir' | 'onEdge';
  readonly message: string;
  readonly todo: string;
}

export const isPlumb = (along: Vec): boolean =>
  angleDeg(along, UP) <= SAME_DEG || angleDeg(along, minus(UP)) <= SAME_DEG;

/** Neither rises nor falls. */
export const isLevel = (along: Vec): boolean => Math.abs(angleDeg(along, UP) - 90) <= SAME_DEG;

/** Where the open side of a leg that is not plumb looks when it lies flat; on edge, to its right and to its left. */
export const flatOpen = (along: Vec): Vec => square(UP, along);
export function edgeOpens(along: Vec): readonly [Vec, Vec] {
  const right = unit(cross(along, UP));
  return [right, minus(right)];
}

/**
 * Judges a leg by where its fitting brings it, and lays it true where it is within a tenth of a degree.
 *
 * @returns how it lies, or what does not agree
 */
export function settle({ along, open }: Lies, onEdge: boolean): Lies | Wrong {
  if (isPlumb(along)) return { along, open };
  const flat = flatOpen(along);
  const edge = edgeOpens(along).find((side) => angleDeg(side, open) <= SAME_DEG);
  const off = angleDeg(flat, open);
  if (onEdge) {
    if (edge !== undefined) return { along, open: edge };
    return {
      part: 'onEdge',
      message:
        off <= SAME_DEG ? 'the fittings bring this leg to lie flat' : 'it does not come to lie on edge',
      todo: 'leave it out, or turn by another fitting',
    };
  }
  if (off <= SAME_DEG) return { along, open: flat };
  if (edge !== undefined) {
    return {
      part: 'onEdge',
      message: 'the fittings bring this leg to lie on edge',
      todo: 'write true, or turn by another fitting',
    };
  }
  if (dot(open, UP) <= 0) {
    return {
      part: 'dir',
      message: 'the channel would lie upside down',
      todo: 'turn the other way, or by the other vertical elbow',
    };
  }
  if (!isLevel(along)) return { along, open };
  return {
    part: 'dir',
    message: 'the channel would lie tilted on a level leg',
    todo: 'bring it level before it turns aside',
  };
}
