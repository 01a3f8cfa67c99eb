/** What a drawing is made of before it is SVG. Lengths in px of the drawing, y downwards. */
import type { Palette } from './types.ts';

export type Colour = Exclude<keyof Palette, 'letter'>;

/** Kinds of line; weights and dashes stand in pens.ts. */
export type Pen =
  | 'edge'
  | 'thin'
  | 'hidden'
  | 'centre'
  | 'dimension'
  | 'hatch'
  | 'plane'
  | 'planeBetween'
  | 'phantom'
  | 'mark'
  | 'frame'
  | 'zone';

export type Point = readonly [x: number, y: number];

interface Named {
  /** What of the run it stands for: `piece 1`, `splice S2`. Tests and pages find it by this. */
  readonly part?: string | undefined;
}

export interface Line extends Named {
  readonly kind: 'line';
  readonly pen: Pen;
  readonly from: Point;
  readonly to: Point;
}

export interface Polygon extends Named {
  readonly kind: 'polygon';
  readonly points: readonly Point[];
  readonly open?: boolean;
  readonly pen?: Pen;
  readonly fill?: Colour;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export interface Rect extends Named, Box {
  readonly kind: 'rect';
  readonly pen?: Pen;
  readonly fill?: Colour;
}

export interface Circle extends Named {
  readonly kind: 'circle';
  readonly at: Point;
  readonly r: number;
  readonly pen?: Pen;
  readonly fill?: Colour;
}

/** Filled arrowhead, three long to one wide, its tip at `at`. */
export interface Arrow extends Named {
  readonly kind: 'arrow';
  readonly at: Point;
  readonly towardsDeg: number;
  readonly length: number;
}

export interface Text extends Named {
  readonly kind: 'text';
  readonly at: Point;
  readonly text: string;
  readonly size: number;
  readonly weight: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly colour: Colour;
  /** Ground drawn behind the text, so that a line breaks for it. */
  readonly ground?: Colour | undefined;
}

/** A revision cloud round a box: its arcs bulge outwards by less than `BULGE`. */
export interface Cloud extends Named, Box {
  readonly kind: 'cloud';
}

/** How far a cloud reaches past its box, px. */
export const BULGE = 6;

export type Shape = Line | Polygon | Rect | Circle | Arrow | Cloud | Text;

export function overlaps(a: Box, b: Box, air = 0): boolean {
  return a.x < b.x + b.w + air && b.x < a.x + a.w + air && a.y < b.y + b.h + air && b.y < a.y + a.h + air;
}

/** Whether `inner` lies in `outer` with air around it. */
export function within(inner: Box, outer: Box, air = 0): boolean {
  return (
    inner.x >= outer.x + air &&
    inner.y >= outer.y + air &&
    inner.x + inner.w <= outer.x + outer.w - air &&
    inner.y + inner.h <= outer.y + outer.h - air
  );
}
