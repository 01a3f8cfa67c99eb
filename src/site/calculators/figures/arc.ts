/** A curved fitting from above: two walls, centre line, and the corner where the centre lines meet. */
import type { Sheet } from '../../../drawing/svg.ts';
import type { ArcGiven, ArcResult } from '../../../trade/arc.ts';
import { measure, tape } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { arc, curve, framed, Plan, type Point, roomOf, round, sloped } from './canvas.ts';

export function drawArc(
  { insideIn, centreIn, outsideIn, tangentIn }: ArcResult,
  { insideRadiusIn, widthIn, turnDeg }: ArcGiven,
  how: FigureHow,
): Sheet | undefined {
  const { form, letter, tell } = how;
  const { left, right, top } = roomOf(form);
  const middle = insideRadiusIn + widthIn / 2;
  const outer = insideRadiusIn + widthIn;
  // One face stands straight up over the centre of the circle; the fitting turns to the right.
  const [first, last] = [-90, -90 + turnDeg];
  const corner = round([0, 0], Math.hypot(middle, tangentIn), first + turnDeg / 2);
  const ends = [round([0, 0], outer, last), round([0, 0], insideRadiusIn, last)];
  // Past a sharp turn the corner stands far off; then it is left to the list.
  const near = tangentIn <= 1.6 * outer;
  const xs = [
    0,
    ...(near ? [corner[0]] : []),
    ...ends.map(([x]) => x),
    ...arc([0, 0], outer, first, last).map(([x]) => x),
  ];
  const ys = [-outer, ...(near ? [corner[1]] : []), 0, ...ends.map(([, y]) => y)];
  const [w, h] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  const most = form === 'phone' ? 190 : 250;
  const scale = Math.min((right - left - 110) / w, most / h);
  if (widthIn * scale < 10) return undefined;
  const plan = new Plan();
  const centre: Point = [
    (left + right - w * scale) / 2 - Math.min(...xs) * scale,
    top + 44 - Math.min(...ys) * scale,
  ];
  const [r, m, R] = [insideRadiusIn * scale, middle * scale, outer * scale];
  const inside = r > 0.5 ? arc(centre, r, first, last) : [centre];
  const outside = arc(centre, R, first, last);
  plan.polygon([...outside, ...[...inside].reverse()], { fill: 'galv' });
  curve(plan, 'edge', outside, 'outer wall');
  if (r > 0.5) curve(plan, 'edge', inside, 'inner wall');
  for (const at of [first, last]) plan.line('edge', round(centre, r, at), round(centre, R, at), 'face');
  curve(plan, 'centre', arc(centre, m, first, last), 'centre line');
  for (const at of [first, last]) plan.line('phantom', centre, round(centre, r, at));
  const meet = round(centre, Math.hypot(middle, tangentIn) * scale, first + turnDeg / 2);
  if (near) {
    const begin = round(centre, m, first);
    for (const at of [first, last]) plan.line('phantom', round(centre, m, at), meet);
    sloped(plan, begin, meet, R - m + 20, letter(tape(tangentIn)));
  }
  if (r >= 30) {
    const at = round(centre, r, first + turnDeg * 0.5);
    plan.line('dimension', centre, at);
    plan.arrow(at, first + turnDeg * 0.5);
    const [x, y] = round(centre, r * 0.5, first + turnDeg * 0.5);
    plan.text([x, y + 5.5], letter(measure('inches', insideRadiusIn)), { ground: 'sheet' });
  }
  plan.circle(centre, 3, { fill: 'ink' });
  const lengths = {
    inside: letter(tape(insideIn)),
    centre: letter(tape(centreIn)),
    outside: letter(tape(outsideIn)),
  };
  return framed(
    plan,
    centre[1] + Math.max(0, ...ys) * scale + 18,
    [
      tell('arcSum.noteInner', { inside: lengths.inside }),
      tell('arcSum.noteCentre', { centre: lengths.centre }),
      tell('arcSum.noteOuter', { outside: lengths.outside }),
    ],
    [
      tell('arcSum.words', {
        ...lengths,
        turn: letter(measure('degrees', turnDeg)),
        tangent: letter(tape(tangentIn)),
      }),
    ],
    how,
  );
}
