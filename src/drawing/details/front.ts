/** A vertical support from before: steel behind, strut on it, the channel going down before the strut, open side to the viewer. */

import type { Tray } from '../../run/catalogue.ts';
import type { PlacedSupport } from '../../run/resolved.ts';
import { inches } from '../../trade/length.ts';
import type { Target } from '../balloon.ts';
import type { Plan } from '../plan.ts';
import type { Point } from '../shapes.ts';
import { STRUT, seatSize } from './seat.ts';
import { zigzag } from './zigzag.ts';

interface Front {
  readonly tray: Tray;
  readonly support: Pick<PlacedSupport, 'hold'>;
  readonly centreBolt: boolean;
  readonly px: number;
  /** Middle of the upper break. */
  readonly at: Point;
  /** Half the strut's length, px. */
  readonly half: number;
}

/** Inches of channel seen. */
const SEEN = 8.6;
export const frontHigh = (px: number): number => SEEN * px;

export function drawFront(plan: Plan, { tray, support, centreBolt, px, at, half }: Front) {
  const [cx, top] = at;
  const bottom = top + frontHigh(px);
  const middle = (top + bottom) / 2;
  const strut = { x: cx - half, y: middle - (STRUT * px) / 2, w: 2 * half, h: STRUT * px };
  const post = 1.5 * px;
  for (const side of [-1, 1]) {
    const x = cx + side * (half - post / 2 - 0.2 * px) - post / 2;
    plan.rect({ x, y: top + 8, w: post, h: bottom - top - 16 }, { fill: 'galv2', part: 'steel' });
    for (const k of [0, post]) plan.line('edge', [x + k, top + 8], [x + k, bottom - 8]);
    zigzag(plan, [x, top + 8], [x + post, top + 8], [0, -1]);
    zigzag(plan, [x, bottom - 8], [x + post, bottom - 8], [0, 1]);
    plan.keep({ x, y: top, w: post, h: bottom - top });
  }
  plan.rect(strut, { fill: 'galv', pen: 'edge', part: 'strut' });
  // The slot of the strut looks to the viewer.
  for (const k of [-0.42, 0.42])
    plan.line('thin', [strut.x, middle + k * px], [strut.x + strut.w, middle + k * px]);

  const wide = seatSize(tray, null, px).half;
  const metal = wide - (inches(tray.width) * px) / 2;
  const [l, r] = [cx - wide, cx + wide];
  plan.rect({ x: l, y: top, w: r - l, h: bottom - top }, { fill: 'sheet', part: 'channel' });
  for (const x of [l, r]) plan.line('edge', [x, top], [x, bottom]);
  for (const x of [l + metal, r - metal]) plan.line('thin', [x, top], [x, bottom]);
  zigzag(plan, [l, top], [r, top], [0, -1]);
  zigzag(plan, [l, bottom], [r, bottom], [0, 1]);
  for (const y of [strut.y, strut.y + strut.h]) plan.line('hidden', [l + metal, y], [r - metal, y]);
  plan.keep({ x: l, y: top - 8, w: r - l, h: bottom - top + 16 });
  plan.keep(strut);

  // Small holes of the floor to their pitch; the centre bolt goes through one.
  const radius = Math.max(3.5, (inches(tray.webHoles.width) * px) / 2);
  const pitch = inches(tray.webHoles.pitch) * px;
  const holes: number[] = [];
  const off = centreBolt ? 0 : pitch / 2;
  for (let k = -2; k <= 2; k++) {
    const y = middle + k * pitch + off;
    if (y > top + 14 && y < bottom - 14) holes.push(y);
  }
  for (const y of holes) plan.circle([cx, y], radius, { fill: 'sheet', pen: 'thin', part: 'floor hole' });
  plan.line('centre', [cx, top - 12], [cx, bottom + 12]);

  const air = support.hold === 'guide' ? 5 : 0;
  const high = 1.3 * px;
  for (const side of [-1, 1] as const) {
    const x = (k: number) => cx + side * (wide + k);
    const box = (from: number, to: number) => ({
      x: Math.min(x(from), x(to)),
      y: middle - high / 2,
      w: Math.abs(to - from),
      h: high,
    });
    plan.rect(box(-metal - 4, 1.7 * px), {
      fill: 'sheet',
      pen: 'thin',
      part: support.hold === 'guide' ? 'guide' : 'clamp',
    });
    plan.line('thin', [x(air), middle - high / 2], [x(air), middle + high / 2]);
    plan.line('hidden', [x(0), middle - high / 2], [x(0), middle + high / 2]);
    hex(plan, [x(0.95 * px), middle], px);
  }
  if (centreBolt) hex(plan, [cx, middle], px);
  plane(plan, strut.x - 4, strut.x + strut.w + 4, middle);

  const targets: Record<string, Target> = {
    channel: { at: [r - metal / 2, bottom - 22], likes: 20 },
    strut: { at: [cx - wide - 2.2 * px, strut.y + strut.h - 4], likes: 110 },
    clamp: { at: [cx - wide - 1.4 * px, middle - high / 2 + 3], likes: 230 },
    steel: { at: [cx - half + 0.2 * px + post / 2, top + 24], likes: 160 },
    ...(centreBolt ? { 'centre-bolt': { at: [cx, middle - 0.2 * px] as const, likes: -60 } } : {}),
    hole: { at: [cx + radius * 0.7, (holes[0] ?? middle) - radius * 0.7], likes: -30 },
  };
  return { targets };
}

/** A hexagon head on its washer, seen from before. */
function hex(plan: Plan, at: Point, px: number): void {
  const r = 0.36 * px;
  plan.circle(at, 0.5 * px, { fill: 'sheet', pen: 'thin', part: 'washer' });
  const points = Array.from({ length: 6 }, (_, i): Point => {
    const a = (Math.PI * i) / 3;
    return [at[0] + r * Math.cos(a), at[1] + r * Math.sin(a)];
  });
  plan.polygon(points, { fill: 'sheet', pen: 'thin', part: 'bolt' });
  plan.line('dimension', [at[0] - 0.62 * px, at[1]], [at[0] + 0.62 * px, at[1]]);
  plan.line('dimension', [at[0], at[1] - 0.62 * px], [at[0], at[1] + 0.62 * px]);
}

/** Where section A–A is taken: across the strut, looked at from above. */
function plane(plan: Plan, x1: number, x2: number, y: number): void {
  for (const [x, way] of [
    [x1, -1],
    [x2, 1],
  ] as const) {
    // Outside the strut, so that its edge runs through neither arrow nor letter.
    const out = x + way * 7;
    plan.polygon(
      [
        [x - way * 2, y],
        [out, y],
        [out, y + 12],
      ],
      { pen: 'plane', open: true },
    );
    plan.arrow([out, y + 24], 90, 13);
    plan.text([out, y - 8], 'A', { part: 'plane' });
    plan.keep({ x: out - 6, y: y - 20, w: 12, h: 46 });
  }
}
