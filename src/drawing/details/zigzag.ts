import type { Plan } from '../plan.ts';
import type { Point } from '../shapes.ts';

/** A break across a part that lies any way, from edge to edge; `way` is where the part goes on. */
export function zigzag(plan: Plan, a: Point, b: Point, way: Point): void {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const t: Point = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const on = (k: number, off: number): Point => [
    a[0] + t[0] * k + way[0] * off,
    a[1] + t[1] * k + way[1] * off,
  ];
  const m = length / 2;
  plan.polygon([on(-7, 0), on(m - 8, 0), on(m - 4, -5), on(m + 4, 5), on(m + 8, 0), on(length + 7, 0)], {
    pen: 'dimension',
    open: true,
  });
}
