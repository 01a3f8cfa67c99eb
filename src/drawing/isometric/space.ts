/** Space of an isometric, in px of the drawing: east, north, up. East runs right and down the sheet, north right and up. */
import { cross, dot, plus, times, type Vec } from '../../run/vector.ts';
import type { Point } from '../shapes.ts';

/** `a` and `k` of `b`. */
export const off = (a: Vec, b: Vec, k: number): Vec => [a[0] + b[0] * k, a[1] + b[1] * k, a[2] + b[2] * k];
export const between = (a: Vec, b: Vec, k: number): Vec => off(times(1 - k, a), b, k);

/** Of length 1; of what has no length, `otherwise`. */
export function unitOr(a: Vec, otherwise: Vec): Vec {
  const length = Math.sqrt(dot(a, a));
  return length < 1e-9 ? otherwise : times(1 / length, a);
}

/** The three axes, both ways. */
export const WAYS: readonly Vec[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [-1, 0, 0],
  [0, -1, 0],
  [0, 0, -1],
];

const COS_30 = Math.sqrt(3) / 2;

/** Where a place of space stands on the sheet. Along the three axes one px is one px. */
export const project = ([e, n, u]: Vec): Point => [(e + n) * COS_30, (e - n) / 2 - u];

/** Towards the one who looks, from the south-east and above; not of length 1. */
const VIEWER: Vec = [1, -1, 1];
/** Greater is nearer. */
export const nearness = (p: Vec): number => dot(p, VIEWER);
/** Whether a face that looks this way is seen. */
export const seen = (normal: Vec): boolean => nearness(normal) > 1e-9;

/** A vector turned about an axis of length 1 (Rodrigues' formula). */
export function turned(v: Vec, axis: Vec, angle: number): Vec {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return plus(plus(times(c, v), times(s, cross(axis, v))), times(dot(axis, v) * (1 - c), axis));
}
