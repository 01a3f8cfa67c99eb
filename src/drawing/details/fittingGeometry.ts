/**
 * A fitting in its own plane, inches from its working point, x along the travel, y down the sheet: arms with their
 * mouths, and the outline of its body.
 */
import type { FittingItem, ResolvedFitting, ResolvedLeg } from '../../run/resolved.ts';
import { inches } from '../../trade/length.ts';
import type { Point } from '../shapes.ts';

/** One mouth: where it looks, how far its face stands, how wide the channel in it is, and the leg there (none: left open). */
export interface Arm {
  readonly way: Point;
  readonly take: number;
  readonly insertion: number;
  readonly wide: number;
  /** How far the channel stands off the centre line, to the left of the travel: behind a handed reducer. */
  readonly shift?: number | undefined;
  readonly leg: ResolvedLeg | undefined;
  /** The channel goes on towards the fitting or from it. */
  readonly side: 'into' | 'out';
}

export interface Body {
  readonly arms: readonly Arm[];
  /** Closed outline, faces included. */
  readonly outline: readonly Point[];
  /** Centre and radius of the inner edge, where the body is a bend; the middle of the arc. */
  readonly bend?: { readonly centre: Point; readonly inner: number; readonly on: Point } | undefined;
  /** Where cables turn in a plane square to the channel's floor: seen from its side. */
  readonly seenFrom: 'above' | 'side';
}

const at = (p: Point, way: Point, k: number): Point => [p[0] + way[0] * k, p[1] + way[1] * k];
/** Square to a way, to its left as seen along it (up the sheet for a way to the right). */
export const leftOf = ([x, y]: Point): Point => [y, -x];

export function bodyOf({ item, into, out, turnDeg }: ResolvedFitting): Body {
  const first = out[0];
  const turn = first?.turn ?? 'none';
  const fromSide =
    (item.kind === 'elbow' && item.turn !== 'flat') ||
    (item.kind === 'hinge' && (turn === 'inside' || turn === 'outside'));
  const wideOf = (leg: ResolvedLeg) => inches(fromSide ? leg.tray.depth : leg.tray.outsideWidth);
  const [take, insertion] = [inches(item.takeOut), inches(item.insertion)];
  const arm = (way: Point, leg: ResolvedLeg | undefined, side: Arm['side']): Arm => ({
    way,
    take,
    insertion,
    wide: wideOf(leg ?? into),
    leg,
    side,
  });
  const coming = arm([-1, 0], into, 'into');
  const seenFrom = fromSide ? 'side' : 'above';
  if (item.kind === 'tee' || item.kind === 'cross') return branch(item.kind, coming, out, arm);
  const up = turn === 'left' || turn === 'inside' || turn === 'none' ? -1 : 1;
  const a = (turnDeg * Math.PI) / 180;
  const going = arm([Math.cos(a), up * Math.sin(a)], first?.leg, 'out');
  if (item.kind === 'reducer') return reducer(item, coming, going);
  if (item.kind === 'elbow') return elbow(item, coming, going, a, up, seenFrom);
  return hinge(coming, going, seenFrom);
}

const faces = ({ way, take, wide }: Arm): readonly [Point, Point] => {
  const face = at([0, 0], way, take);
  return [at(face, leftOf(way), wide / 2), at(face, leftOf(way), -wide / 2)];
};

function elbow(
  item: Extract<FittingItem, { kind: 'elbow' }>,
  coming: Arm,
  going: Arm,
  angle: number,
  up: number,
  seenFrom: Body['seenFrom'],
): Body {
  const half = coming.wide / 2;
  const tan = Math.tan(angle / 2);
  // Where the take-out is too short for the radius, the bend begins at the face.
  const middle = Math.min(inches(item.insideRadius) + half, coming.take / tan);
  const straight = coming.take - middle * tan;
  const start: Point = [-middle * tan, 0];
  const centre: Point = [start[0], up * middle];
  const arc = (radius: number): Point[] =>
    Array.from({ length: 19 }, (_, i) => {
      const t = (angle * i) / 18;
      return [centre[0] + radius * Math.sin(t), centre[1] - up * radius * Math.cos(t)];
    });
  const inner = Math.max(middle - half, 0.01);
  const [inside, outer] = [arc(inner), arc(middle + half)];
  const back = -coming.take;
  const end = (p: Point) => at(p, going.way, straight);
  const outline: Point[] = [
    [back, up * half],
    ...inside,
    end(inside.at(-1) as Point),
    end(outer.at(-1) as Point),
    ...outer.reverse(),
    [back, -up * half],
  ];
  return { arms: [coming, going], outline, bend: { centre, inner, on: inside[9] as Point }, seenFrom };
}

/** One wall straight where it is handed, the left one of a left hand seen from the wide end; about the centre line of what comes in. */
function reducer(item: Extract<FittingItem, { kind: 'reducer' }>, coming: Arm, going: Arm): Body {
  const fromWide = coming.leg?.tray.width === item.width;
  const left = (item.hand === 'left') === fromWide ? 1 : -1;
  const shift = item.hand === 'straight' ? 0 : (left * (coming.wide - going.wide)) / 2;
  const [a, b] = faces(coming);
  const [c, d] = faces(going).map((p): Point => [p[0], p[1] - shift]) as [Point, Point];
  return { arms: [coming, { ...going, shift }], outline: [b, c, d, a], seenFrom: 'above' };
}

/** Two ends that meet at a pivot. */
function hinge(coming: Arm, going: Arm, seenFrom: Body['seenFrom']): Body {
  const [a, b] = faces(coming);
  const [c, d] = faces(going);
  const meet = (p: Point, w: Point, q: Point, v: Point): Point => {
    const det = w[0] * v[1] - w[1] * v[0];
    if (Math.abs(det) < 0.05) return [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
    const k = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / det;
    // A sharp turn's outer corner would run far away.
    const reach = Math.min(Math.max(k, -coming.take), coming.take);
    return at(p, w, reach);
  };
  const on: Point = [1, 0];
  const back: Point = [-going.way[0], -going.way[1]];
  const top = meet(b, on, c, back);
  const bottom = meet(a, on, d, back);
  return { arms: [coming, going], outline: [b, top, c, d, bottom, a], seenFrom };
}

function branch(
  kind: 'tee' | 'cross',
  coming: Arm,
  out: ResolvedFitting['out'],
  arm: (way: Point, leg: ResolvedLeg | undefined, side: Arm['side']) => Arm,
): Body {
  const WAYS = { straight: [1, 0], left: [0, -1], right: [0, 1] } as const;
  const taken = new Map(out.map(({ way, leg }) => [way, leg]));
  const names = ['straight', 'left', 'right'] as const;
  // A tee has one mouth fewer: the ways that are taken, and of the others those that come first.
  const open = names.filter((n) => !taken.has(n)).slice(0, (kind === 'tee' ? 2 : 3) - taken.size);
  const arms = names
    .filter((n) => taken.has(n) || open.includes(n))
    .map((n) => arm(WAYS[n], taken.get(n), 'out'));
  const all = [coming, ...arms];
  const has = (x: number, y: number) => all.find((m) => m.way[0] === x && m.way[1] === y);
  const half = coming.wide / 2;
  const outline: Point[] = [];
  // Round by the sheet: left, up, right, down; a corner between two mouths is filleted at 45°.
  for (const [x, y] of [
    [-1, 0],
    [0, -1],
    [1, 0],
    [0, 1],
  ] as const) {
    const mouth = has(x, y);
    const clockwise: Point = [-y, x];
    if (mouth !== undefined) {
      const face: Point = [x * mouth.take, y * mouth.take];
      outline.push(at(face, clockwise, -half), at(face, clockwise, half));
    }
    const next = has(clockwise[0], clockwise[1]);
    const corner = (k: Point): Point => [k[0] * half, k[1] * half];
    const c: Point = [x + clockwise[0], y + clockwise[1]];
    if (mouth !== undefined && next !== undefined) {
      const cut = Math.min(mouth.take - half, next.take - half) * 0.7;
      const p = corner(c);
      if (cut > 0) outline.push(at(p, [x, y], cut), at(p, clockwise, cut));
      else outline.push(p);
    } else if (mouth === undefined && next === undefined) outline.push(corner(c));
    else outline.push(corner(c));
  }
  return { arms: all, outline, seenFrom: 'above' };
}
