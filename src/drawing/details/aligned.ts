/** A dimension along any direction of the sheet; its text stays upright and breaks the line. */
import { ARROW_ROOM } from '../dimension.ts';
import { textWidth } from '../glyphs.ts';
import { boxOf, type Plan, SIZES } from '../plan.ts';
import type { Point } from '../shapes.ts';

interface Look {
  /** Square to the direction, to the side that the dimension stands on; of length 1. */
  readonly normal: Point;
  /** Px from the measured points to the dimension line, and where the extension lines begin. */
  readonly off: number;
  readonly from: number;
  /** Which end the text goes beyond where the room between is too small. */
  readonly beyond?: 'first' | 'second' | undefined;
  readonly size?: number | undefined;
  readonly part: string;
}

const HEAD = 11;

export function aligned(plan: Plan, a: Point, b: Point, text: string, look: Look): Point {
  const { normal, off, from, beyond = 'second', size = SIZES.text, part } = look;
  const away = ([x, y]: Point, k: number): Point => [x + normal[0] * k, y + normal[1] * k];
  const [p, q] = [away(a, off), away(b, off)];
  const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const way: Point = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
  for (const end of [a, b]) plan.line('dimension', away(end, from + 4), away(end, off + 6), part);
  // Room that the upright text takes along the line.
  const wide = textWidth(text, size);
  const takes = Math.min(
    (wide + 8) / Math.max(Math.abs(way[0]), 1e-6),
    (size + 6) / Math.max(Math.abs(way[1]), 1e-6),
  );
  const fits = length >= takes + 2 * HEAD + 4;
  if (length < ARROW_ROOM) {
    for (const [x, y] of [p, q]) plan.line('thin', [x - 5, y + 5], [x + 5, y - 5]);
  } else {
    const deg = (Math.atan2(way[1], way[0]) * 180) / Math.PI;
    plan.arrow(p, deg + 180, HEAD);
    plan.arrow(q, deg, HEAD);
  }
  const sign = beyond === 'first' ? -1 : 1;
  const end = beyond === 'first' ? p : q;
  const reach = 9 + takes / 2;
  const middle: Point = fits
    ? [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2]
    : [end[0] + sign * way[0] * reach, end[1] + sign * way[1] * reach];
  plan.line('dimension', fits || sign > 0 ? p : middle, fits || sign < 0 ? q : middle, part);
  const made = plan.text([middle[0], middle[1] + size * 0.34], text, { size, ground: 'sheet', part });
  plan.keep(boxOf(made));
  const [x, y] = [Math.min(p[0], q[0]) - 3, Math.min(p[1], q[1]) - 3];
  if (Math.abs(way[0]) < 0.02 || Math.abs(way[1]) < 0.02) {
    plan.keep({ x, y, w: Math.abs(p[0] - q[0]) + 6, h: Math.abs(p[1] - q[1]) + 6 });
  }
  return middle;
}
