/** A mitred turn from above: one end cut, the mating end dashed, the cut-back and the angle off square. */
import type { Sheet } from '../../../drawing/svg.ts';
import type { MitreGiven, MitreResult } from '../../../trade/mitre.ts';
import { measure, tape } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { across, angle, besideLeft, besideRoom, curve, framed, Plan, type Point, roomOf } from './canvas.ts';

export function drawMitre(
  { cutBackIn, angleDeg }: MitreResult,
  { widthIn, turnDeg }: MitreGiven,
  how: FigureHow,
): Sheet | undefined {
  const { form, letter, tell } = how;
  const { left, right, top } = roomOf(form);
  const plan = new Plan();
  const stub = form === 'phone' ? 96 : 190;
  const side = letter(measure('inches', widthIn));
  const from = left + besideRoom(side);
  const room = right - from - 20;
  const wide = Math.min(96, ((room - stub) * widthIn) / Math.max(cutBackIn, widthIn / 2));
  if (wide < 26) return undefined;
  const scale = wide / widthIn;
  const back = cutBackIn * scale;
  const turn = (turnDeg * Math.PI) / 180;
  const y = top + 46;
  const x = Math.min(from + stub + back, right - 70);
  // The long wall is the upper one; both walls of the mating end leave along the turn.
  const [outer, inner]: [Point, Point] = [
    [x, y],
    [x - back, y + wide],
  ];
  plan.polygon([[from, y], outer, inner, [from, y + wide]], { fill: 'galv' });
  plan.line('edge', [from, y], outer, 'long wall');
  plan.line('edge', [from, y + wide], inner, 'short wall');
  plan.line('edge', outer, inner, 'cut');
  plan.breakLine(from, y, y + wide);
  const away = Math.min(70, right - 20 - x + (turnDeg > 60 ? 60 : 0));
  const along = ([px, py]: Point): Point => [px + away * Math.cos(turn), py + away * Math.sin(turn)];
  curve(plan, 'hidden', [outer, along(outer)], 'mating end');
  curve(plan, 'hidden', [inner, along(inner)], 'mating end');
  const lowest = Math.max(y + wide, along(outer)[1], along(inner)[1]);
  // The line square to the wall, from which the cut is measured.
  plan.line('phantom', outer, [x, y + wide + 34]);
  plan.line('dimension', inner, [x - back, y + wide + 34]);
  across(plan, x - back, x, y + wide + 28, letter(tape(cutBackIn)), { beside: 'before' });
  besideLeft(plan, y, y + wide, from, side);
  angle(plan, outer, Math.min(54, wide * 0.62), [90, 90 + angleDeg], letter(measure('degrees', angleDeg)));
  return framed(
    plan,
    Math.max(lowest + 6, y + wide + 40),
    [tell('mitreSum.noteBoth', { angle: letter(measure('degrees', angleDeg)) })],
    [
      tell('mitreSum.words', {
        width: letter(measure('inches', widthIn)),
        turn: letter(measure('degrees', turnDeg)),
        back: letter(tape(cutBackIn)),
      }),
    ],
    how,
  );
}
