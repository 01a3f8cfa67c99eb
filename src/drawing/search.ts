/** The best free place for a label near the part it belongs to. */
import { lineMeets, type Room } from './room.ts';
import type { Box, Point } from './shapes.ts';

export interface Search {
  /** The side liked, degrees: 0 right, 90 down. */
  readonly likes: number;
  /** Px from the part to the label's edge, at least and at most. */
  readonly from: number;
  readonly to: number;
  readonly step?: number | undefined;
  /** How much a place on the other side costs, px for a half turn. */
  readonly turn?: number | undefined;
  /** A leader is drawn, from this part of the label (from its left edge): it must cross no label, its own included. */
  readonly leader?: { readonly x: number; readonly w: number } | undefined;
  readonly air?: number | undefined;
  /** Most inked cells that it may cover. */
  readonly ink?: number | undefined;
}

/** Where a leader from a box to a place begins: on the box's rim. */
export function rimOf({ x, y, w, h }: Box, [px, py]: Point): Point {
  const [cx, cy] = [x + w / 2, y + h / 2];
  const [dx, dy] = [px - cx, py - cy];
  const k = Math.min(dx === 0 ? 9 : w / 2 / Math.abs(dx), dy === 0 ? 9 : h / 2 / Math.abs(dy), 1);
  return [cx + dx * k, cy + dy * k];
}

/** Where a candidate stands: how far away, at which angle. */
const TURNS = Array.from({ length: 13 }, (_, i) => i * 15);

/** The cheapest place: near, on the side liked, on little ink; `undefined` where there is none. */
export function freeBox(room: Room, at: Point, size: Size, how: Search): Box | undefined {
  const { likes, from, to, step = 7, turn: dear = 50, leader, air = 3, ink: most = 4 } = how;
  const { w, h } = size;
  let best: Box | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let away = from; away <= to && away < least; away += step) {
    for (const turn of TURNS) {
      const cheap = away + (turn / 180) * dear;
      if (cheap >= least) break;
      for (let side = 1; side >= -1; side -= 2) {
        if (side < 0 && (turn === 0 || turn === 180)) continue;
        const angle = ((likes + side * turn) * Math.PI) / 180;
        const cos = Math.cos(angle);
        const sin = Math.sin(angle);
        const reach =
          away +
          Math.min(
            Math.abs(cos) < 1e-6 ? 1e9 : w / 2 / Math.abs(cos),
            Math.abs(sin) < 1e-6 ? 1e9 : h / 2 / Math.abs(sin),
          );
        const box = { x: at[0] + cos * reach - w / 2, y: at[1] + sin * reach - h / 2, w, h };
        const ink = room.inkIn(box, most);
        if (ink > most || cheap + ink * 5 >= least || !room.free(box, air)) continue;
        const cost = cheap + ink * 5 + (leader === undefined ? 0 : leaderCost(room, box, leader, at));
        if (cost < least) [best, least] = [box, cost];
      }
    }
  }
  return best;
}

type Size = Pick<Box, 'w' | 'h'>;

/** What a leader crosses; no leader crosses a label, its own included. */
function leaderCost(room: Room, box: Box, { x, w }: NonNullable<Search['leader']>, at: Point): number {
  const head = { ...box, x: box.x + x, w };
  const rim = rimOf(head, at);
  const behind = box.w - x - w;
  if (x > 0 && lineMeets(rim, at, { ...box, w: x })) return Number.POSITIVE_INFINITY;
  if (behind > 0 && lineMeets(rim, at, { ...box, x: head.x + head.w, w: behind }))
    return Number.POSITIVE_INFINITY;
  return room.open(rim, at) ? room.inkAlong(rim, at) * 5 : Number.POSITIVE_INFINITY;
}

/** Any free place at all, the one nearest to a point: the last resort of what must stand. */
export function anyBox(room: Room, at: Point, { w, h }: Size): Box | undefined {
  const { bounds } = room;
  let best: { readonly box: Box; readonly cost: number } | undefined;
  for (let y = bounds.y; y + h <= bounds.y + bounds.h; y += 8) {
    for (let x = bounds.x; x + w <= bounds.x + bounds.w; x += 8) {
      const box = { x, y, w, h };
      const away = Math.hypot(x + w / 2 - at[0], y + h / 2 - at[1]);
      if (best !== undefined && away >= best.cost) continue;
      const ink = room.inkIn(box, 400);
      const cost = away + ink * 6;
      if ((best === undefined || cost < best.cost) && room.free(box, 2)) best = { box, cost };
    }
  }
  return best?.box;
}
