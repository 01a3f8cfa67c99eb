/** Words with a leader to the part they name; each finds a free place near it. */
import { textWidth } from '../glyphs.ts';
import { boxOf, type Plan, SIZES } from '../plan.ts';
import { Room } from '../room.ts';
import { anyBox, freeBox, rimOf } from '../search.ts';
import type { Box, Point, Polygon } from '../shapes.ts';

export interface Callout {
  readonly text: string;
  readonly at: Point;
  /** The side liked, degrees: 0 right, 90 down. */
  readonly likes: number;
  /** Second line. */
  readonly below?: string | undefined;
  readonly size?: number | undefined;
}

/** What a word must not stand on; the room that parts take. */
const FULL = 9;

/**
 * Draws callouts inside `bounds`; one without a free place is left out (the words of the view say it).
 *
 * @returns those left out
 */
export function callouts(plan: Plan, bounds: Box, wanted: readonly Callout[]): readonly Callout[] {
  const room = new Room(bounds);
  for (const box of plan.taken) room.inkBox(box, FULL);
  for (const shape of plan.shapes) {
    if (shape.kind === 'line') room.ink(shape.from, shape.to, 1.5, 2);
    if (shape.kind === 'polygon') inkPolygon(room, shape);
    if (shape.kind === 'rect') room.inkBox(shape, 2);
  }
  for (const text of plan.texts) room.keep(boxOf(text));
  const left: Callout[] = [];
  for (const one of wanted) {
    const { text, at, likes, below, size = SIZES.note } = one;
    const lines = below === undefined ? [text] : [text, below];
    const w = Math.max(...lines.map((line) => textWidth(line, size)));
    const h = size * 0.94 + (lines.length - 1) * (size + 3);
    const leader = { x: 0, w };
    const box =
      freeBox(room, at, { w, h }, { likes, from: 14, to: 150, step: 6, leader, ink: 2, air: 4 }) ??
      freeBox(room, at, { w, h }, { likes, from: 10, to: 260, step: 8, ink: 10, air: 3 }) ??
      anyBox(room, at, { w, h });
    if (box === undefined) {
      left.push(one);
      continue;
    }
    const rim = rimOf({ x: box.x - 4, y: box.y - 3, w: box.w + 8, h: box.h + 6 }, at);
    plan.line('dimension', rim, at, 'leader');
    plan.circle(at, 2.4, { fill: 'ink' });
    lines.forEach((line, i) => {
      plan.text([box.x + w / 2, box.y + size * 0.72 + i * (size + 3)], line, {
        size,
        ground: 'sheet',
        part: 'callout',
      });
    });
    room.keep(box);
    room.ink(rim, at, 2, 2);
    plan.keep({ x: box.x - 3, y: box.y - 2, w: box.w + 6, h: box.h + 4 });
  }
  return left;
}

/** Edges, and of a filled shape the spokes from its middle: channel lies straight, so they cover it. */
function inkPolygon(room: Room, { points, fill, open }: Polygon): void {
  const [x, y] = [0, 1].map((k) => points.reduce((sum, p) => sum + (p[k] ?? 0), 0) / points.length) as [
    number,
    number,
  ];
  points.forEach((p, i) => {
    const next = points[(i + 1) % points.length] as Point;
    if (open === true && i === points.length - 1) return;
    room.ink(p, next, 1.5, 2);
    if (fill === undefined || points.length > 6) return;
    for (let k = 0; k < 1; k += 0.05) {
      room.ink([p[0] + (next[0] - p[0]) * k, p[1] + (next[1] - p[1]) * k], [x, y], 2, 2);
    }
  });
}
