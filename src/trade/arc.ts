/** Lengths along a curved fitting: its two walls, its centre line, and how far its faces stand from the corner. */
import type { Answered } from './answer.ts';
import { radians, tangent } from './degrees.ts';
import { figure } from './figure.ts';
import { TRIANGLES } from './geometrySources.ts';

export interface ArcGiven {
  /** Of the inner wall, from 0. */
  readonly insideRadiusIn: number;
  /** Between the walls, above 0. */
  readonly widthIn: number;
  /** How far the fitting turns, in degrees, above 0 and below 180. */
  readonly turnDeg: number;
}

export interface ArcResult {
  readonly insideIn: number;
  readonly centreIn: number;
  readonly outsideIn: number;
  /** From the corner of the centre lines to the end of the curve. */
  readonly tangentIn: number;
}

/**
 * Lengths along a curved fitting: radius times angle for both walls and the centre line.
 *
 * @param given  inches; degrees above 0 and below 180, which the input's shape sees to (schema/geometryInputs.ts)
 * @returns      inches, unrounded; `tangentIn` grows without bound as the turn comes near 180 degrees
 * @throws       nothing
 * Source: TRIANGLES in geometrySources.ts.
 */
export function arc({ insideRadiusIn, widthIn, turnDeg }: ArcGiven): Answered<ArcResult> {
  const angle = radians(turnDeg);
  const centre = insideRadiusIn + widthIn / 2;
  const outside = insideRadiusIn + widthIn;
  const result = {
    insideIn: insideRadiusIn * angle,
    centreIn: centre * angle,
    outsideIn: outside * angle,
    tangentIn: centre * tangent(turnDeg / 2),
  };
  const along = (radius: number) => ({ radius: figure(radius), angle: figure(angle) });
  return {
    result,
    steps: [
      { say: 'arc.angle', values: { turn: figure(turnDeg) }, value: angle, unit: 'rad' },
      { say: 'arc.inside', values: along(insideRadiusIn), value: result.insideIn, unit: 'in' },
      {
        say: 'arc.centre',
        values: { ...along(centre), inside: figure(insideRadiusIn), width: figure(widthIn) },
        value: result.centreIn,
        unit: 'in',
      },
      { say: 'arc.outside', values: along(outside), value: result.outsideIn, unit: 'in' },
      {
        say: 'arc.tangent',
        values: { radius: figure(centre), half: figure(turnDeg / 2) },
        value: result.tangentIn,
        unit: 'in',
      },
      { say: 'arc.cables', values: { radius: figure(insideRadiusIn) } },
    ],
    sources: [TRIANGLES],
  };
}
