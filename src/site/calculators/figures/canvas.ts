/** What the figures of the sums share: a framed plan in two widths, arcs, and dimensions that lie on a slope. */
import { down } from '../../../drawing/dimension.ts';
import { frameOf, MARGIN } from '../../../drawing/frame.ts';
import { textWidth } from '../../../drawing/glyphs.ts';
import { drawNotes } from '../../../drawing/notes.ts';
import { type Plan, SIZES } from '../../../drawing/plan.ts';
import type { Pen, Point } from '../../../drawing/shapes.ts';
import type { Sheet } from '../../../drawing/svg.ts';
import type { Form } from '../../../drawing/types.ts';
import type { FigureHow } from '../sum.ts';

export { across, down, opening } from '../../../drawing/dimension.ts';
export { Plan, SIZES } from '../../../drawing/plan.ts';
export type { Point } from '../../../drawing/shapes.ts';

export const WIDTH: Readonly<Record<Form, number>> = { phone: 328, desk: 680, paper: 680 };

/** Room inside the frame, from edge to edge. */
export const roomOf = (form: Form) => ({
  left: MARGIN[form] + 14,
  right: WIDTH[form] - MARGIN[form] - 14,
  top: MARGIN[form] + 12,
});

/** Frames a plan whose lowest part ends at `bottom`, with its notes in a band under it. */
export function framed(
  plan: Plan,
  bottom: number,
  notes: readonly string[],
  words: readonly string[],
  how: FigureHow,
): Sheet {
  const { form } = how;
  const width = WIDTH[form];
  const margin = MARGIN[form];
  const end = drawNotes(plan, notes, { form, width, margin, top: bottom + 14 });
  const height = Math.ceil(end + (notes.length === 0 ? 0 : 4) + margin);
  return {
    view: 'sum',
    width,
    height,
    frame: frameOf(form, width, height),
    plan,
    words: words.join(' '),
    zones: {},
  };
}

const radians = (deg: number) => (deg * Math.PI) / 180;

/** The place at an angle round a centre; 0 right, 90 down. */
export const round = ([x, y]: Point, r: number, deg: number): Point => [
  x + r * Math.cos(radians(deg)),
  y + r * Math.sin(radians(deg)),
];

/** Points along an arc, close enough together to look round. */
export function arc(centre: Point, r: number, from: number, to: number): readonly Point[] {
  const steps = Math.max(2, Math.ceil(Math.abs(to - from) / 3));
  return Array.from({ length: steps + 1 }, (_, k) => round(centre, r, from + ((to - from) * k) / steps));
}

export const curve = (plan: Plan, pen: Pen, points: readonly Point[], part?: string): void =>
  plan.polygon(points, { pen, open: true, part });

/** An angle between two directions from a corner: arc, and its text on the middle line. */
export function angle(
  plan: Plan,
  corner: Point,
  r: number,
  [from, to]: readonly [number, number],
  text: string,
  look: { readonly outside?: boolean } = {},
): void {
  curve(plan, 'dimension', arc(corner, r, from, to));
  const middle = (from + to) / 2;
  const half = textWidth(text, SIZES.text) / 2;
  const away = r + (look.outside === true ? 8 : 10) + Math.abs(Math.cos(radians(middle))) * half + 6;
  const [x, y] = round(corner, away, middle);
  plan.text([x, y + 5.5], text, { ground: 'sheet' });
}

/** Dimension of a depth, left of an edge: as far off as its text is wide, so that the text covers no part. */
export function besideLeft(plan: Plan, y1: number, y2: number, edge: number, text: string): void {
  const fits = y2 - y1 >= SIZES.text + 26;
  down(plan, y1, y2, edge - (fits ? Math.max(22, textWidth(text, SIZES.text) / 2 + 12) : 22), text, {
    from: edge,
  });
}

/** Room that such a dimension takes, from the edge to the left. */
export const besideRoom = (text: string): number => textWidth(text, SIZES.text) + 38;

/** Room that the text of a dimension across takes behind it, where it does not fit between. */
export function behindRoom(wide: number, text: string): number {
  const own = textWidth(text, SIZES.text);
  return wide >= own + 30 ? 0 : own + 16;
}

/** A dimension along a slope, `off` to its left as one walks from a to b; the text stands upright in the line. */
export function sloped(plan: Plan, a: Point, b: Point, off: number, text: string): void {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const [nx, ny] = [uy, -ux];
  const shift = (p: Point, by: number): Point => [p[0] + nx * by, p[1] + ny * by];
  const [c, d] = [shift(a, off), shift(b, off)];
  const way = Math.sign(off);
  for (const [from, to] of [
    [a, off],
    [b, off],
  ] as const)
    plan.line('dimension', shift(from, way * 4), shift(from, to + way * 6));
  plan.line('dimension', c, d);
  const deg = (Math.atan2(uy, ux) * 180) / Math.PI;
  if (length >= 30) {
    plan.arrow(c, deg + 180);
    plan.arrow(d, deg);
  }
  plan.text([(c[0] + d[0]) / 2, (c[1] + d[1]) / 2 + 5.5], text, { ground: 'sheet' });
}
