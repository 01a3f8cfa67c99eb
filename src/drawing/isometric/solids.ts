/** What an isometric is painted from: plates, gathered into solids that hide each other as wholes. */
import type { Frame } from '../../run/resolved.ts';
import { minus, plus, type Vec } from '../../run/vector.ts';
import type { Colour, Pen } from '../shapes.ts';
import { off, seen, turned, unitOr } from './space.ts';

/** A flat face with those of its edges that are drawn. Without a fill it is lines alone. */
export interface Plate {
  readonly points: readonly Vec[];
  readonly fill?: Colour | undefined;
  readonly edges: readonly (readonly Vec[])[];
  readonly pen?: Pen | undefined;
  readonly part?: string | undefined;
}

/** Plates in the order they are painted, and the line that the solid lies round. */
export interface Solid {
  readonly plates: readonly Plate[];
  readonly axis: readonly [Vec, Vec];
  /** How far it reaches from its axis, px. */
  readonly radius: number;
}

/** A cross-section of channel somewhere along its way: the middle of its floor, and how it lies there. */
export interface Station {
  readonly at: Vec;
  readonly frame: Frame;
  readonly half: number;
  readonly deep: number;
}

/** Floor edges and lips of a station: left floor, right floor, right lip, left lip. */
function corners({ at, frame, half, deep }: Station) {
  const left = off(at, frame.left, half);
  const right = off(at, frame.left, -half);
  return {
    left,
    right,
    leftLip: off(left, frame.open, deep),
    rightLip: off(right, frame.open, deep),
  };
}

interface Look {
  /** Whether an edge is drawn across the channel at its first and last station. */
  readonly ends?: readonly [boolean, boolean] | undefined;
  /** All faces of one colour. */
  readonly fill?: Colour | undefined;
  /** A cable on the floor. */
  readonly cable?: boolean | undefined;
  readonly part?: string | undefined;
}

/** Fills reach a hair under the neighbour at an end without an edge, so that no seam shows between two parts of one channel. */
const SEAM = 0.5;
const LAP = 0.7;

/** Channel between two stations: floor and two walls, in the order they hide each other. */
export function channel(
  a: Station,
  b: Station,
  { ends = [false, false], fill, cable = false, part }: Look = {},
): Plate[] {
  const along = unitOr(off(b.at, a.at, -1), a.frame.along);
  const [p, q] = [corners(a), corners(b)];
  // Only where the neighbour is painted later, and covers it.
  const [sa, sb] = [ends[0] || seen(a.frame.along) ? 0 : -SEAM, ends[1] || !seen(b.frame.along) ? 0 : SEAM];
  // Lines reach a hair past, so that one runs on in the next.
  const [la, lb] = [ends[0] ? 0 : -LAP, ends[1] ? 0 : LAP];
  const plate = (p1: Vec, q1: Vec, q2: Vec, p2: Vec, normal: Vec, inner: Colour, outer: Colour): Plate => ({
    points: [off(p1, along, sa), off(q1, along, sb), off(q2, along, sb), off(p2, along, sa)],
    fill: fill ?? (seen(normal) ? outer : inner),
    edges: [
      [off(p1, along, la), off(q1, along, lb)],
      [off(p2, along, la), off(q2, along, lb)],
      ...(ends[0] ? [[p1, p2]] : []),
      ...(ends[1] ? [[q1, q2]] : []),
    ],
    part,
  });
  const open = plus(a.frame.open, b.frame.open);
  const left = plus(a.frame.left, b.frame.left);
  const right = minus(left);
  const under = minus(open);
  const floor = plate(p.left, q.left, q.right, p.right, under, 'sheet', 'galv');
  const leftWall = plate(p.left, q.left, q.leftLip, p.leftLip, left, 'galv2', 'galv');
  const rightWall = plate(p.right, q.right, q.rightLip, p.rightLip, right, 'galv2', 'galv');
  const [far, near] = seen(left) ? [rightWall, leftWall] : [leftWall, rightWall];
  if (seen(under)) return [far, near, floor];
  const lies = (s: Station) => off(s.at, s.frame.open, Math.min(2, s.deep / 3));
  const line: Plate[] = cable
    ? [{ points: [], edges: [[off(lies(a), along, sa), off(lies(b), along, sb)]], part: 'cable' }]
    : [];
  return [floor, far, ...line, near];
}

/** A plate across the channel's end. */
export function endPlate({ at, frame, half, deep }: Station, grow = 0, fill: Colour = 'galv'): Plate {
  const c = corners({ at: off(at, frame.open, -grow), frame, half: half + grow, deep: deep + 2 * grow });
  const points = [c.left, c.right, c.rightLip, c.leftLip];
  return { points, fill, edges: [[...points, c.left]] };
}

/** The line round the channel at a station: a joint, seen from outside and in. */
export function girdle(station: Station, part?: string): Plate {
  const c = corners(station);
  return { points: [], edges: [[c.leftLip, c.left, c.right, c.rightLip]], part };
}

/** Of two neighbours that meet in a plane, whether the one farther along is the nearer to the viewer. */
export const laterHides = (along: Vec): boolean => seen(along);

/** Plates of a chain of parts, each meeting the next in a plane, in painter's order. */
export function chain(parts: readonly (readonly Plate[])[], planes: readonly Vec[]): readonly Plate[] {
  // Parts up to a plane that is looked at from behind come before what follows it: sort a path by its own links.
  let order: readonly Plate[] = parts[0] ?? [];
  for (let i = 1; i < parts.length; i++) {
    const next = parts[i] ?? [];
    order = laterHides(planes[i - 1] as Vec) ? [...order, ...next] : [...next, ...order];
  }
  return order;
}

/** How far round a bend one straight piece of it goes: an angle at most, and px. */
const STEP = Math.PI / 12;
const STRAIGHT = 3.5;

/**
 * Stations round a bend, from the frame that comes in to the frame that goes out.
 *
 * @param at    working point
 * @param take  px from there to both its faces
 */
export function bend(
  at: Vec,
  into: Station,
  out: Station,
  axis: Vec,
  angle: number,
  take: number,
): readonly Station[] {
  const start = off(at, into.frame.along, -take);
  const radius = take / Math.tan(angle / 2);
  const count = Math.max(
    2,
    Math.min(Math.ceil(angle / STEP), Math.ceil((angle * (radius + into.half)) / STRAIGHT)),
  );
  // The centre lies square to the way in, on the side that the bend turns to.
  const inwards = turned(into.frame.along, axis, Math.PI / 2);
  const centre = off(start, inwards, radius);
  return Array.from({ length: count + 1 }, (_, i) => {
    const turn = (angle * i) / count;
    const k = i / count;
    const frame =
      i === count
        ? out.frame
        : {
            along: turned(into.frame.along, axis, turn),
            open: turned(into.frame.open, axis, turn),
            left: turned(into.frame.left, axis, turn),
          };
    return {
      at: off(centre, turned(inwards, axis, turn), -radius),
      frame,
      half: into.half + (out.half - into.half) * k,
      deep: into.deep + (out.deep - into.deep) * k,
    };
  });
}
