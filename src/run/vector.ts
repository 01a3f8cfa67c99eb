/** Places and directions in space: east, north, up. Whole numbers stay whole where nothing is turned by an odd angle. */
import type { Direction } from './types.ts';

/** East, north, up. */
export type Vec = readonly [number, number, number];

export const UP: Vec = [0, 0, 1];
export const NORTH: Vec = [0, 1, 0];

/** Never -0, so that equal directions are equal values. */
const vec = (x: number, y: number, z: number): Vec => [x + 0, y + 0, z + 0];

export const plus = (a: Vec, b: Vec): Vec => vec(a[0] + b[0], a[1] + b[1], a[2] + b[2]);
export const times = (k: number, [x, y, z]: Vec): Vec => vec(k * x, k * y, k * z);
export const minus = (a: Vec): Vec => times(-1, a);
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec, b: Vec): Vec =>
  vec(a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]);

/** Of length 1. A unit vector along an axis comes out as it went in. */
export function unit(a: Vec): Vec {
  const length = Math.sqrt(dot(a, a));
  return length === 1 ? a : times(1 / length, a);
}

/** The part of `a` at right angles to the unit vector `n`, of length 1. */
export const square = (a: Vec, n: Vec): Vec => unit(plus(a, times(-dot(a, n), n)));

/** Exact where the trade's angles are: at whole quarter turns. */
export function cosDeg(deg: number): number {
  const whole = ((deg % 360) + 360) % 360;
  if (whole % 90 === 0) return [1, 0, -1, 0][whole / 90] ?? 0;
  return Math.cos((deg * Math.PI) / 180);
}
export const sinDeg = (deg: number): number => cosDeg(deg - 90);

/** Angle between two unit vectors, 0 to 180; good to the last digits near 0 and 180 too. */
export function angleDeg(a: Vec, b: Vec): number {
  const c = cross(a, b);
  return (Math.atan2(Math.sqrt(dot(c, c)), dot(a, b)) * 180) / Math.PI;
}

const AXES: Readonly<Record<Extract<Direction, string>, Vec>> = {
  N: [0, 1, 0],
  E: [1, 0, 0],
  S: [0, -1, 0],
  W: [-1, 0, 0],
  U: [0, 0, 1],
  D: [0, 0, -1],
};

/** Azimuth from north by east; slope above level. */
export function directionOf(dir: Direction): Vec {
  if (typeof dir === 'string') return AXES[dir];
  const level = cosDeg(dir.slopeDeg);
  return vec(level * sinDeg(dir.azimuthDeg), level * cosDeg(dir.azimuthDeg), sinDeg(dir.slopeDeg));
}

/** A direction for a person: `N`, or `azimuth 45°, slope 0°`. */
export function directionText(a: Vec): string {
  const named = Object.entries(AXES).find(([, axis]) => angleDeg(axis, a) < 0.05);
  if (named !== undefined) return named[0];
  const degrees = (n: number) => `${Math.round(n * 100) / 100}°`;
  const azimuth = (Math.atan2(a[0], a[1]) * 180) / Math.PI;
  const slope = (Math.asin(Math.max(-1, Math.min(1, a[2]))) * 180) / Math.PI;
  return `azimuth ${degrees((azimuth + 360) % 360)}, slope ${degrees(slope)}`;
}
