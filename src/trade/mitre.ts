/** A mitred turn: both mating ends are cut at half the turn. */
import type { Answered } from './answer.ts';
import { tangent } from './degrees.ts';
import { figure } from './figure.ts';
import { TRIANGLES } from './geometrySources.ts';

export interface MitreGiven {
  /** Width across the cut, above 0: the outside width of the channel. */
  readonly widthIn: number;
  /** How far the run turns, in degrees, above 0 and below 180. */
  readonly turnDeg: number;
}

export interface MitreResult {
  /** How far the short wall is cut back behind the long one, at each end. */
  readonly cutBackIn: number;
  /** Of the cut off square, in degrees. */
  readonly angleDeg: number;
}

/**
 * The cut of a turn made of two straight ends: width · tan(turn / 2) off each.
 *
 * @param given  inches above 0; degrees above 0 and below 180, which the input's shape sees to (schema/geometryInputs.ts)
 * @returns      inches and degrees, unrounded; nothing is added for the saw
 * @throws       nothing
 * Source: TRIANGLES in geometrySources.ts.
 */
export function mitre({ widthIn, turnDeg }: MitreGiven): Answered<MitreResult> {
  const angleDeg = turnDeg / 2;
  const cutBackIn = widthIn * tangent(angleDeg);
  const values = { turn: figure(turnDeg), angle: figure(angleDeg), width: figure(widthIn) };
  return {
    result: { cutBackIn, angleDeg },
    steps: [
      { say: 'mitre.half', values, value: angleDeg, unit: 'deg' },
      { say: 'mitre.cutBack', values, value: cutBackIn, unit: 'in' },
      { say: 'mitre.both' },
      { say: 'mitre.leave' },
    ],
    sources: [TRIANGLES],
  };
}
