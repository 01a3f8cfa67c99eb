/** Dimensions of a run drawn in space: on the sheet its three axes stand 120° apart, and along each an inch is as long. */
import type { Vec } from '../../run/vector.ts';
import { inches } from '../../trade/length.ts';
import type { FiguredCourse } from '../figured.ts';
import { allOf, type DrawnFigure, type DrawnSpan } from './shapes.ts';

type Point = readonly [number, number];
const COS_30 = Math.sqrt(3) / 2;
/** East goes right and down the sheet, north right and up it. */
const onSheet = ([east, north, up]: Vec): Point => [(east + north) * COS_30, (east - north) / 2 - up];

/** Px: two ends, each to hundredths. */
const HAIR = 0.05;

/**
 * Whether every dimension is some leg's, by its way and by its length at one scale. A leg whose dimension found no room
 * has none, so there may be fewer.
 */
export function dimensionsFit(courses: readonly FiguredCourse[], figure: DrawnFigure): boolean {
  const spans = allOf(figure, 'span');
  const [first] = spans;
  if (first === undefined || spans.length > courses.length) return false;
  const legs = courses.map(
    ({ length, along }) => onSheet(along).map((one) => one * inches(length)) as unknown as Point,
  );
  return legs.some((leg) => allStand(spans, legs, longOf(wayOf(first)) / longOf(leg)));
}

const wayOf = ({ x1, y1, x2, y2 }: DrawnSpan): Point => [x2 - x1, y2 - y1];
const longOf = ([x, y]: Point) => Math.hypot(x, y);

/** Each leg is dimensioned once. */
function allStand(spans: readonly DrawnSpan[], legs: readonly Point[], pxPerInch: number): boolean {
  const left = [...legs];
  return spans.every((span) => {
    const [x, y] = wayOf(span);
    const i = left.findIndex(
      (leg) => Math.abs(leg[0] * pxPerInch - x) <= HAIR && Math.abs(leg[1] * pxPerInch - y) <= HAIR,
    );
    if (i >= 0) left.splice(i, 1);
    return i >= 0;
  });
}
