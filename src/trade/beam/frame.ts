/** A beam taken apart: each span and each overhang with the loads on it, in pounds and inches. */
import type { BeamGiven, PointLoad } from './given.ts';

/** A point load by its distance from the left support of its span. */
export interface Point {
  readonly atIn: number;
  readonly lb: number;
}

export interface Span {
  readonly lengthIn: number;
  readonly lbPerIn: number;
  /** In order from the left. */
  readonly points: readonly Point[];
}

/** Distances are from the support outwards. */
export interface Overhang {
  readonly lengthIn: number;
  readonly lbPerIn: number;
  readonly points: readonly Point[];
}

export interface Frame {
  readonly spans: readonly Span[];
  readonly left: Overhang | null;
  readonly right: Overhang | null;
  /** E × I, lb-in². */
  readonly stiffness: number;
}

export function frameOf(given: BeamGiven): Frame {
  const { spansIn, overhangLeftIn = 0, overhangRightIn = 0 } = given;
  const uniform = uniformLbPerIn(given);
  const points = pointsBySpan(given.points ?? []);
  const spans = spansIn.map(
    (lengthIn, span): Span => ({
      lengthIn,
      lbPerIn: uniform[span] ?? 0,
      points: inOrder(points.get(span) ?? [], lengthIn),
    }),
  );
  const overhang = (lengthIn: number, lbPerIn: number, on: readonly Point[]): Overhang | null =>
    lengthIn > 0 ? { lengthIn, lbPerIn, points: inOrder(on, lengthIn) } : null;
  const fromTip = points.get(-1) ?? [];
  return {
    spans,
    left: overhang(
      overhangLeftIn,
      uniform[0] ?? 0,
      fromTip.map(({ atIn, lb }) => ({ atIn: overhangLeftIn - atIn, lb })),
    ),
    right: overhang(overhangRightIn, uniform.at(-1) ?? 0, points.get(spans.length) ?? []),
    stiffness: given.ePsi * given.iIn4,
  };
}

function uniformLbPerIn({ spansIn, loadLbPerFt = 0, loads = [] }: BeamGiven): readonly number[] {
  const perFt = spansIn.map(() => loadLbPerFt);
  for (const { span, lbPerFt } of loads) perFt[span] = (perFt[span] ?? 0) + lbPerFt;
  return perFt.map((lbPerFt) => lbPerFt / 12);
}

function pointsBySpan(points: readonly PointLoad[]): ReadonlyMap<number, readonly Point[]> {
  const bySpan = new Map<number, Point[]>();
  for (const { span, atIn, lb } of points) {
    const list = bySpan.get(span) ?? [];
    list.push({ atIn, lb });
    bySpan.set(span, list);
  }
  return bySpan;
}

/** Sorted; a place that decimals put a hair outside stands at the end. */
function inOrder(points: readonly Point[], lengthIn: number): readonly Point[] {
  return points
    .map(({ atIn, lb }) => ({ atIn: Math.min(Math.max(atIn, 0), lengthIn), lb }))
    .sort((a, b) => a.atIn - b.atIn);
}

/** All of a load, lb. */
export function weightOf({ lengthIn, lbPerIn, points }: Span | Overhang): number {
  return points.reduce((sum, { lb }) => sum + lb, lbPerIn * lengthIn);
}
