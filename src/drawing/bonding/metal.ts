/** Signs of the bonding diagram: metal down the sheet, a jumper's loop, what the run meets. */
import type { Plan } from '../plan.ts';
import type { Point } from '../shapes.ts';

/** Width of the line of metal. */
export const METAL = 10;
/** From a jumper's middle to the metal at either side. */
export const GAP = 9;

/** Channel down the sheet: two edges and a face. */
export function metal(plan: Plan, x: number, from: number, to: number): void {
  if (to <= from) return;
  plan.rect({ x: x - METAL / 2, y: from, w: METAL, h: to - from }, { fill: 'galv', part: 'metal' });
  for (const side of [x - METAL / 2, x + METAL / 2]) plan.line('thin', [side, from], [side, to], 'metal');
}

/** The metal ends, or a joint stands, across it. */
export function across(plan: Plan, pen: 'edge' | 'thin', x: number, y: number): void {
  plan.line(pen, [x - METAL / 2, y], [x + METAL / 2, y], 'metal');
}

/** Equipment, ladder or tray that the run begins or ends at. */
export function terminal(plan: Plan, x: number, y: number, way: 1 | -1): void {
  plan.line('edge', [x - 12, y], [x + 12, y], 'terminal');
  for (const by of [-10, -3, 4]) plan.line('hatch', [x + by, y + way * 8], [x + by + 8, y], 'terminal');
}

/** A jumper round a place: a loop with slack, a lug at either end. */
export function loop(plan: Plan, x: number, middle: number): void {
  const left = x - METAL / 2 + 1;
  const reach = GAP + 7;
  const points = Array.from({ length: 13 }, (_, i): Point => {
    const turn = Math.PI / 2 + (Math.PI * i) / 12;
    return [left + Math.cos(turn) * 13, middle + Math.sin(turn) * reach];
  });
  plan.polygon(points, { pen: 'edge', open: true, part: 'jumper' });
  for (const y of [middle - reach, middle + reach]) plan.circle([left, y], 2.8, { fill: 'ink', part: 'lug' });
}

/** The line goes on elsewhere. */
export function breakAcross(plan: Plan, x: number, y: number): void {
  plan.polygon(
    [
      [x - 13, y],
      [x - 5, y],
      [x - 3, y - 5],
      [x + 3, y + 5],
      [x + 5, y],
      [x + 13, y],
    ],
    { pen: 'dimension', open: true },
  );
}
