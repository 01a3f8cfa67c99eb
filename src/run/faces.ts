/** What stands at the first and last face of a leg: a fitting, or what the run starts and ends at. */
import { type Ticks, ticks } from '../trade/length.ts';
import { halves } from './joints.ts';
import type { FittingItem } from './resolved.ts';
import type { Face } from './straight.ts';
import type { EndJoint } from './types.ts';

const NONE = ticks(0);

export const FREE_FACE: Face = {
  kind: 'free',
  joint: 'free',
  takeOut: NONE,
  insertion: NONE,
  share: NONE,
  gap: NONE,
  open: NONE,
};

export const fittingFace = ({ takeOut, insertion }: FittingItem): Face => ({
  ...FREE_FACE,
  kind: 'fitting',
  joint: 'fitting',
  takeOut,
  insertion,
});

/**
 * The start or an end of the run. The middle of an expansion splice's opening stands at the working point, so that the
 * leg gives up half of it; an odd tick goes to the channel behind the splice.
 *
 * @param side    0 at the start, 1 at an end
 * @param gap     wanted of an expansion splice; null where no such splice stands
 * @param socket  how far channel goes into a socketed start or end
 */
export function outerFace(
  kind: Face['kind'],
  joint: EndJoint,
  {
    side,
    gap,
    socket,
    open = NONE,
  }: {
    readonly side: 0 | 1;
    readonly gap: Ticks | null;
    readonly socket: Ticks;
    readonly open?: Ticks | undefined;
  },
): Face {
  const insertion = joint === 'socketed' ? socket : NONE;
  if (joint !== 'expansion' || gap === null) return { ...FREE_FACE, kind, joint, insertion, open };
  return { ...FREE_FACE, kind, joint, share: halves(gap)[side === 0 ? 1 : 0], gap, open };
}
