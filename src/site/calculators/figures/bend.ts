/** A cable in a quarter bend of its smallest radius. */
import type { Sheet } from '../../../drawing/svg.ts';
import type { RadiusResult } from '../../../trade/radius.ts';
import { measure, tapeAtLeast } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { arc, curve, framed, Plan, type Point, roomOf, round } from './canvas.ts';

export function drawBend(
  { radiusIn }: RadiusResult,
  { odIn }: { readonly odIn: number },
  how: FigureHow,
): Sheet | undefined {
  if (radiusIn === null) return undefined;
  const { form, letter, tell } = how;
  const { left, top } = roomOf(form);
  const plan = new Plan();
  const most = form === 'phone' ? 150 : 190;
  const stub = 46;
  const scale = most / (radiusIn + odIn);
  const [r, R] = [radiusIn * scale, (radiusIn + odIn) * scale];
  const centre: Point = [left + (form === 'phone' ? 84 : 190), top + 22 + R];
  // From the left along the top, then down.
  const walls = ([radius, part]: readonly [number, string]): readonly Point[] => {
    const [begin, end] = [round(centre, radius, -90), round(centre, radius, 0)];
    const points = [
      [begin[0] - stub, begin[1]] as const,
      ...arc(centre, radius, -90, 0),
      [end[0], end[1] + stub] as const,
    ];
    curve(plan, 'edge', points, part);
    return points;
  };
  plan.polygon(
    [
      [centre[0] - stub, centre[1] - R],
      ...arc(centre, R, -90, 0),
      [centre[0] + R, centre[1] + stub],
      [centre[0] + r, centre[1] + stub],
      ...arc(centre, r, 0, -90),
      [centre[0] - stub, centre[1] - r],
    ],
    { fill: 'galv' },
  );
  walls([R, 'outer edge']);
  walls([r, 'inner edge']);
  plan.breakLine(centre[0] - stub, centre[1] - R, centre[1] - r);
  const at = round(centre, r, -45);
  plan.circle(centre, 3, { fill: 'ink' });
  plan.line('dimension', centre, at);
  plan.arrow(at, -45);
  const [x, y] = round(centre, r * 0.5, -45);
  plan.text([x, y + 5.5], letter(tapeAtLeast(radiusIn)), { ground: 'sheet', part: 'radius' });
  return framed(
    plan,
    centre[1] + stub + 6,
    [tell('radiusSum.noteInner')],
    [tell('radiusSum.words', { od: letter(measure('inches', odIn)), radius: letter(tapeAtLeast(radiusIn)) })],
    how,
  );
}
