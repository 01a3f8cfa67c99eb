/**
 * Moments and reactions at the supports: Clapeyron's equation of three moments, one an inner support. Each row of
 * the equations is ruled by its diagonal (2(L+L′) against L + L′), so elimination down the band needs no exchange of
 * rows and stays true for any number of spans of any lengths.
 */
import { type Frame, type Overhang, type Span, weightOf } from './frame.ts';

/** One equation: before·M(i−1) + at·M(i) + after·M(i+1) = right, for support i. */
export interface ThreeMoments {
  readonly support: number;
  readonly before: number;
  readonly at: number;
  readonly after: number;
  readonly right: number;
}

export interface Supports {
  readonly equations: readonly ThreeMoments[];
  readonly momentsLbIn: readonly number[];
  readonly reactionsLb: readonly number[];
}

export function supportsOf({ spans, left, right }: Frame): Supports {
  const first = left === null ? 0 : 0 - momentOut(left);
  const last = right === null ? 0 : 0 - momentOut(right);
  const equations = spans.slice(1).map((span, i): ThreeMoments => {
    const before = spans[i] as Span;
    return {
      support: i + 1,
      before: before.lengthIn,
      at: 2 * (before.lengthIn + span.lengthIn),
      after: span.lengthIn,
      right: 0 - loadTerm(before, 'right') - loadTerm(span, 'left'),
    };
  });
  const momentsLbIn = [first, ...solved(equations, first, last), last];
  const outer = (overhang: Overhang | null) => (overhang === null ? 0 : weightOf(overhang));
  const shears = spans.map((span, i) => endShears(span, momentsLbIn[i] ?? 0, momentsLbIn[i + 1] ?? 0));
  return {
    equations,
    momentsLbIn,
    reactionsLb: momentsLbIn.map(
      (_, i) =>
        (i === 0 ? outer(left) : (shears[i - 1]?.right ?? 0)) +
        (i === spans.length ? outer(right) : (shears[i]?.left ?? 0)),
    ),
  };
}

/** Moments at the supports of the equations, between those at both ends: elimination down the band and back up. */
export function solved(equations: readonly ThreeMoments[], first: number, last: number): number[] {
  const above: { factor: number; rest: number }[] = [];
  let [factor, rest] = [0, first];
  for (const { before, at, after, right } of equations) {
    const pivot = at - before * factor;
    rest = (right - before * rest) / pivot;
    factor = after / pivot;
    above.push({ factor, rest });
  }
  let next = last;
  return above
    .reverse()
    .map((row) => {
      next = row.rest - row.factor * next;
      return next;
    })
    .reverse();
}

/** Moment of an overhang's loads about its support. */
function momentOut({ lengthIn, lbPerIn, points }: Overhang): number {
  return points.reduce((sum, { atIn, lb }) => sum + lb * atIn, (lbPerIn * lengthIn * lengthIn) / 2);
}

/**
 * A span's loads in the equation of the support at one end: wL³/4, and for a point load a from the left and b from
 * the right Pb(L²−b²)/L seen from the left, Pa(L²−a²)/L from the right. Six times the slope they make there, over EI.
 */
export function loadTerm({ lengthIn, lbPerIn, points }: Span, end: 'left' | 'right'): number {
  return points.reduce(
    (sum, { atIn, lb }) => {
      const other = lengthIn - atIn;
      const far = end === 'left' ? other : atIn;
      // b(L²−b²) = ab(L+b): no difference of two nearly equal squares.
      return sum + (lb * atIn * other * (lengthIn + far)) / lengthIn;
    },
    (lbPerIn * lengthIn ** 3) / 4,
  );
}

/** What a span leans on its two supports with. */
export function endShears(
  { lengthIn, lbPerIn, points }: Span,
  leftLbIn: number,
  rightLbIn: number,
): { readonly left: number; readonly right: number } {
  const half = (lbPerIn * lengthIn) / 2;
  const tilt = (rightLbIn - leftLbIn) / lengthIn;
  return {
    left: points.reduce((sum, { atIn, lb }) => sum + lb * ((lengthIn - atIn) / lengthIn), half) + tilt,
    right: points.reduce((sum, { atIn, lb }) => sum + lb * (atIn / lengthIn), half) - tilt,
  };
}
