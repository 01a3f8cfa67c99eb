/** The notch that a leg needs when the channel is bent about its web. */
import type { Answered } from './answer.ts';
import { tangent } from './degrees.ts';
import { figure } from './figure.ts';
import { TRIANGLES } from './geometrySources.ts';

export interface NotchGiven {
  /** Depth of the leg from web to edge, above 0. */
  readonly depthIn: number;
  /** How far the channel is bent, in degrees, above 0 and below 180. */
  readonly bendDeg: number;
}

export interface NotchResult {
  /** Full width of the V at the leg's edge; its point is at the web. */
  readonly edgeWidthIn: number;
}

/**
 * The V cut out of each leg so that its edges close when the web is bent: 2 · depth · tan(bend / 2) at the edge.
 *
 * @param given  inches above 0; degrees above 0 and below 180, which the input's shape sees to (schema/geometryInputs.ts)
 * @returns      inches, unrounded; the metal's thickness and its growth in the bend are not counted
 * @throws       nothing
 * Source: TRIANGLES in geometrySources.ts.
 */
export function notch({ depthIn, bendDeg }: NotchGiven): Answered<NotchResult> {
  const half = bendDeg / 2;
  const edgeWidthIn = 2 * depthIn * tangent(half);
  const values = { bend: figure(bendDeg), half: figure(half), depth: figure(depthIn) };
  return {
    result: { edgeWidthIn },
    steps: [
      { say: 'notch.shape', values },
      { say: 'notch.edge', values, value: edgeWidthIn, unit: 'in' },
      { say: 'notch.each', values: { side: figure(edgeWidthIn / 2) } },
      { say: 'notch.metal' },
      { say: 'notch.leave' },
    ],
    sources: [TRIANGLES],
  };
}
