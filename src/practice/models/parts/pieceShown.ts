/** What the drawing of a piece shows of its two ends, for its model's `figured`: their names, and what goes in. */
import { meets } from '../../../drawing/meets.ts';
import { endKey } from '../../../drawing/pieceWords.ts';
import type { StraightLeg } from '../../../run/straight.ts';
import type { Figured } from '../../figured.ts';

/** @param goesIn  whether what goes in is lettered and said */
export function pieceShown(leg: StraightLeg, number: number, goesIn: 'shown' | 'hidden'): readonly Figured[] {
  const sides = leg.pieces.find((one) => one.number === number)?.ends.map((end) => meets(leg, end)) ?? [];
  const says = sides.map((side) => ({
    say: endKey(side),
    values: side.joint === undefined ? {} : { name: side.joint.name },
  }));
  const ticks = sides.flatMap(({ end }) => (goesIn === 'shown' && end.insertion > 0 ? [end.insertion] : []));
  return [
    { kind: 'names', says },
    { kind: 'sizes', ticks },
    { kind: 'said', ticks },
  ];
}
