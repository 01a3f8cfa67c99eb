/** Channel in section on a strut, held from both sides: what a horizontal support shows, and section A–A of a vertical one. */
import type { Tray } from '../../run/catalogue.ts';
import type { Support } from '../../run/types.ts';
import type { Target } from '../balloon.ts';
import { channelWalls } from '../channelSection.ts';
import type { Plan } from '../plan.ts';
import type { Box, Point } from '../shapes.ts';

/** Side of the strut, inches: 1 5/8 (common practice, no source). */
export const STRUT = 1.625;

export interface Seat {
  readonly tray: Tray;
  readonly hold: Support['hold'];
  /** Which way the open side looks where the channel stands on edge; upright otherwise. */
  readonly edge: 'left' | 'right' | null;
  readonly centreBolt: boolean;
  readonly px: number;
  /** Middle of the strut's upper face. */
  readonly at: Point;
  /** Half the strut's length, px. */
  readonly half: number;
}

/** How far past the channel the clamp's bolt stands, inches. */
const BOLT_OFF = 0.95;

export interface Drawn {
  readonly channel: Box;
  readonly strut: Box;
  readonly targets: Readonly<Record<string, Target>>;
}

export function seatSize(
  tray: Tray,
  edge: Seat['edge'],
  px: number,
): { readonly half: number; readonly high: number } {
  const { outline } = channelWalls({ tray, at: [0, 0], scale: px });
  const xs = outline.map((p) => p[0]);
  const ys = outline.map((p) => p[1]);
  const [w, h] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  return edge === null ? { half: w / 2, high: h } : { half: h / 2, high: w };
}

export function drawSeat(plan: Plan, seat: Seat): Drawn {
  const { tray, edge, px, at, half, hold, centreBolt } = seat;
  const [cx, top] = at;
  const size = seatSize(tray, edge, px);
  const strut = { x: cx - half, y: top, w: 2 * half, h: STRUT * px };
  plan.rect(strut, { fill: 'galv', pen: 'edge', part: 'strut' });
  const lip = top + 0.28 * px;
  plan.line('hidden', [strut.x + 3, lip], [strut.x + strut.w - 3, lip]);

  const turn = ([x, y]: Point): Point => {
    if (edge === null) return [x, y];
    const away = (top - y - size.half) * (edge === 'right' ? 1 : -1);
    return [cx + away, top - size.high / 2 + (x - cx)];
  };
  const { outline, walls, metal } = channelWalls({ tray, at, scale: px });
  const points = outline.map(turn);
  plan.polygon(points, { fill: 'sheet' });
  for (const wall of walls) plan.hatch(turnBox(wall, turn), 'up');
  plan.polygon(points, { pen: 'edge', part: 'channel' });
  const channel = { x: cx - size.half, y: top - size.high, w: 2 * size.half, h: size.high };

  const targets: Record<string, Target> = {
    channel: { at: [channel.x + metal / 2, channel.y + channel.h * 0.35], likes: 200 },
    strut: { at: [strut.x + 8, strut.y + strut.h * 0.7], likes: 150 },
  };
  const air = hold === 'guide' ? 5 : 0;
  const t = Math.max(4, 0.2 * px);
  for (const side of [-1, 1] as const) {
    // On edge one side is the floor, the other the legs: there the clamp takes hold of the lower leg.
    const open = edge !== null && (edge === 'right') === (side === 1);
    const rise = edge === null ? size.high : open ? metal : size.high * 0.55;
    const edgeAt = cx + side * size.half;
    const hooks = edge === null || open;
    const x = (k: number) => edgeAt + side * k;
    const y = (k: number) => top - k;
    const [foot, riser] = [1.7 * px, air + t];
    plan.polygon(
      [
        [x(foot), y(0)],
        [x(foot), y(t)],
        [x(riser), y(t)],
        [x(riser), y(rise + (hooks ? air + t : 0))],
        ...(hooks
          ? ([
              [x(-metal - 4), y(rise + air + t)],
              [x(-metal - 4), y(rise + air)],
              [x(air), y(rise + air)],
            ] as Point[])
          : ([[x(air), y(rise)]] as Point[])),
        [x(air), y(0)],
      ],
      { fill: 'sheet', pen: 'thin', part: hold === 'guide' ? 'guide' : 'clamp' },
    );
    const bolt = x(BOLT_OFF * px);
    boltDown(plan, bolt, top - t, { px, lip, part: 'bolt' });
    const likes = side === -1 ? 215 : -35;
    targets[side === -1 ? 'clamp' : 'second-clamp'] = { at: [x(riser), y(rise * 0.75)], likes };
    if (side === 1) {
      targets['bolt'] = { at: [bolt + 2, top - t - 0.24 * px], likes: -40 };
      targets['washer'] = { at: [bolt + 0.46 * px, top - t - 1.5], likes: 5 };
    } else targets['nut'] = { at: [bolt - 2, lip + 0.2 * px], likes: 120 };
  }
  if (centreBolt) {
    boltDown(plan, cx, top - metal, { px, lip, part: 'centre bolt' });
    targets['centre-bolt'] = { at: [cx, top - metal - 0.2 * px], likes: -90 };
  }
  plan.keep({ x: strut.x, y: channel.y - t - air, w: strut.w, h: size.high + strut.h + t + air });
  return { channel, strut, targets };
}

function turnBox({ x, y, w, h }: Box, turn: (p: Point) => Point): Box {
  const [a, b] = [turn([x, y]), turn([x + w, y + h])];
  return {
    x: Math.min(a[0], b[0]),
    y: Math.min(a[1], b[1]),
    w: Math.abs(a[0] - b[0]),
    h: Math.abs(a[1] - b[1]),
  };
}

/** Head and washer above, the shank and the nut in the strut hidden. */
function boltDown(
  plan: Plan,
  x: number,
  seat: number,
  { px, lip, part }: { readonly px: number; readonly lip: number; readonly part: string },
): void {
  const bar = (w: number, y: number, h: number): Box => ({ x: x - (w * px) / 2, y, w: w * px, h });
  plan.rect(bar(1, seat - 3, 3), { fill: 'sheet', pen: 'thin', part: `${part} washer` });
  plan.rect(bar(0.68, seat - 3 - 0.3 * px, 0.3 * px), { fill: 'sheet', pen: 'thin', part });
  for (const side of [-1, 1]) {
    const edge = x + side * 0.19 * px;
    plan.line('hidden', [edge, seat], [edge, lip + 0.75 * px]);
  }
  const nut = bar(1.15, lip, 0.42 * px);
  const [l, r, d] = [nut.x, nut.x + nut.w, nut.y + nut.h];
  plan.line('hidden', [l, nut.y], [l, d], `${part} nut`);
  plan.line('hidden', [r, nut.y], [r, d]);
  plan.line('hidden', [l, d], [r, d]);
  plan.line('centre', [x, seat - 3 - 0.3 * px - 9], [x, lip + 0.75 * px + 7]);
}
