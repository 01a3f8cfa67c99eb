/**
 * A beam on any number of simple supports under uniform and point loads, with overhangs. Straight, of one section,
 * small deflections, supports that do not give. Exact: the equations of three moments, then polynomials.
 */
import type { Answered } from '../answer.ts';
import { THREE_MOMENTS } from '../mechanicsSources.ts';
import { alongSpan } from './alongSpan.ts';
import { type Frame, frameOf, type Overhang } from './frame.ts';
import type { BeamGiven, BeamResult } from './given.ts';
import { supportsOf } from './supports.ts';
import { workingOf } from './working.ts';

export type { BeamGiven, BeamResult, PointLoad, SpanLoad } from './given.ts';

export function beam(given: BeamGiven): Answered<BeamResult> {
  const frame = frameOf(given);
  const supports = supportsOf(frame);
  const { momentsLbIn, reactionsLb } = supports;
  const along = frame.spans.map((span, i) => alongSpan(span, momentsLbIn[i] ?? 0, momentsLbIn[i + 1] ?? 0));
  const result: BeamResult = {
    reactionsLb,
    supportMomentsLbIn: momentsLbIn,
    spanMaxima: along.map(({ moment }, span) => ({ span, atIn: moment.atIn, lbIn: moment.value })),
    deflections: along.map(({ sag }, span) => ({
      span,
      atIn: sag.atIn,
      in: sag.value / frame.stiffness,
    })),
    tipDeflectionsIn: [
      tipOf(frame.left, -(along[0]?.slopes.left ?? 0), frame),
      tipOf(frame.right, along.at(-1)?.slopes.right ?? 0, frame),
    ],
  };
  return { result, steps: workingOf(frame, supports, result), sources: [THREE_MOMENTS] };
}

/** The support's slope carried out to the tip, and the bending of the overhang as a cantilever: wa⁴/8, Pc²(3a−c)/6. */
function tipOf(overhang: Overhang | null, slopeOut: number, { stiffness }: Frame): number | null {
  if (overhang === null) return null;
  const { lengthIn, lbPerIn, points } = overhang;
  const bent = points.reduce(
    (sum, { atIn, lb }) => sum + (lb * atIn * atIn * (3 * lengthIn - atIn)) / 6,
    (lbPerIn * lengthIn ** 4) / 8,
  );
  return (slopeOut * lengthIn + bent) / stiffness;
}
