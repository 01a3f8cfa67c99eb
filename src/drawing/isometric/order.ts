/** Which solid hides which, and the order they are painted in; where one passes before another, the line behind breaks. */
import type { Vec } from '../../run/vector.ts';
import type { Point } from '../shapes.ts';
import type { Solid } from './solids.ts';
import { between, nearness, project } from './space.ts';

/** `behind` passes behind `front`, by their places in the list of solids. */
export interface Crossing {
  readonly behind: number;
  readonly front: number;
  /** Shares of their axes where they pass. */
  readonly at: { readonly behind: number; readonly front: number };
  /** Sine of the angle they pass at on the sheet. */
  readonly sine: number;
}

interface Passing {
  readonly t: number;
  readonly u: number;
  readonly sine: number;
}

interface Flat {
  readonly a: Point;
  readonly b: Point;
  readonly radius: number;
}

/** Where two lines with thickness come nearest on the sheet; `undefined` where they stay apart. */
function passing({ a, b, radius: ra }: Flat, { a: c, b: d, radius: rb }: Flat): Passing | undefined {
  const r = ra + rb;
  if (Math.max(a[0], b[0]) + r < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) + r < Math.min(a[0], b[0]))
    return undefined;
  if (Math.max(a[1], b[1]) + r < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) + r < Math.min(a[1], b[1]))
    return undefined;
  const [px, py, qx, qy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const [lp, lq] = [Math.hypot(px, py), Math.hypot(qx, qy)];
  const turn = px * qy - py * qx;
  const sine = lp * lq < 1e-9 ? 0 : Math.abs(turn) / (lp * lq);
  if (sine > 1e-6) {
    const t = ((c[0] - a[0]) * qy - (c[1] - a[1]) * qx) / turn;
    const u = ((c[0] - a[0]) * py - (c[1] - a[1]) * px) / turn;
    if (t >= 0 && t <= 1 && u >= 0 && u <= 1) return { t, u, sine };
  }
  // They do not cross: an end of one may still lie on the other.
  let best: (Passing & { readonly away: number }) | undefined;
  const foot = (p: Point, from: Point, to: Point) => {
    const [x, y] = [to[0] - from[0], to[1] - from[1]];
    const l = x * x + y * y;
    const k = l < 1e-9 ? 0 : Math.min(1, Math.max(0, ((p[0] - from[0]) * x + (p[1] - from[1]) * y) / l));
    return { k, away: Math.hypot(from[0] + x * k - p[0], from[1] + y * k - p[1]) };
  };
  for (const [t, p] of [
    [0, a],
    [1, b],
  ] as const) {
    const { k, away } = foot(p, c, d);
    if (away < r && (best === undefined || away < best.away)) best = { t, u: k, sine, away };
  }
  for (const [u, p] of [
    [0, c],
    [1, d],
  ] as const) {
    const { k, away } = foot(p, a, b);
    if (away < r && (best === undefined || away < best.away)) best = { t: k, u, sine, away };
  }
  return best;
}

/** All pairs that meet on the sheet; pairs that `joined` names meet in space and are told apart there. */
export function crossings(
  solids: readonly Pick<Solid, 'axis' | 'radius'>[],
  joined: (i: number, j: number) => boolean,
): readonly Crossing[] {
  const flat = solids.map(({ axis, radius }): Flat => ({ a: project(axis[0]), b: project(axis[1]), radius }));
  const found: Crossing[] = [];
  flat.forEach((one, i) => {
    for (let j = i + 1; j < flat.length; j++) {
      const other = flat[j];
      if (other === undefined || joined(i, j)) continue;
      const met = passing(one, other);
      if (met === undefined) continue;
      const axis = (k: number) => solids[k]?.axis as readonly [Vec, Vec];
      const near = nearness(between(...axis(i), met.t)) - nearness(between(...axis(j), met.u));
      found.push(
        near > 0
          ? { behind: j, front: i, at: { behind: met.u, front: met.t }, sine: met.sine }
          : { behind: i, front: j, at: { behind: met.t, front: met.u }, sine: met.sine },
      );
    }
  });
  return found;
}

/**
 * From back to front: every pair `[behind, front]` in its order. A ring, which solids that wind round each other can
 * make, is opened at the farthest of them.
 */
export function paintOrder(
  count: number,
  far: (i: number) => number,
  pairs: readonly (readonly [number, number])[],
): readonly number[] {
  const waits = new Array<number>(count).fill(0);
  const then: number[][] = Array.from({ length: count }, () => []);
  for (const [behind, front] of pairs) {
    then[behind]?.push(front);
    waits[front] = (waits[front] ?? 0) + 1;
  }
  const left = new Set(Array.from({ length: count }, (_, i) => i));
  const order: number[] = [];
  while (left.size > 0) {
    let next: number | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const i of left) {
      const cost = (waits[i] === 0 ? 0 : 1e12) + far(i);
      if (cost < least) [next, least] = [i, cost];
    }
    if (next === undefined) break;
    left.delete(next);
    order.push(next);
    for (const j of then[next] ?? []) waits[j] = (waits[j] ?? 0) - 1;
  }
  return order;
}
