import type { Plan } from './plan.ts';

/** The plane of section A–A across the sheet at x: thick ends with arrows the way one looks, thin between. */
export function cuttingPlane(plan: Plan, x: number, top: number, bottom: number): void {
  plan.line('planeBetween', [x, top], [x, bottom]);
  for (const [y, inner] of [
    [top - 6, top + 5],
    [bottom + 6, bottom - 5],
  ] as const) {
    plan.polygon(
      [
        [x, inner],
        [x, y],
        [x + 12, y],
      ],
      { pen: 'plane', open: true },
    );
    plan.arrow([x + 25, y], 0, 14);
    plan.text([x + 36, y + 5.5], 'A', { part: 'plane' });
    plan.keep({ x: x - 3, y: Math.min(y, inner) - 3, w: 30, h: 16 });
  }
}
