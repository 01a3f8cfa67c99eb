/** A numbered triangle on a sheet: look again, the number says why. */
import type { Plan } from './plan.ts';
import type { Box, Point } from './shapes.ts';

export const TRIANGLE = { w: 28, h: 25 };

/** Draws one in its box. @returns its middle */
export function drawTriangle(plan: Plan, { x, y, w, h }: Box, number: string): Point {
  const part = `triangle ${number}`;
  plan.polygon(
    [
      [x + w / 2, y + 1],
      [x + w - 1, y + h - 1],
      [x + 1, y + h - 1],
    ],
    { pen: 'mark', fill: 'sheet', part },
  );
  plan.text([x + w / 2, y + h - 4], number, { size: 13, weight: 750, colour: 'mark', part });
  return [x + w / 2, y + h / 2];
}
