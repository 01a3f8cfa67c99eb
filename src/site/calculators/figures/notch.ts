/** A leg from the side with the V that is cut out of it. */
import type { Drawing } from '../../../drawing/types.ts';
import type { NotchGiven, NotchResult } from '../../../trade/notch.ts';
import { measure, tape } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { across, angle, curve, down, framed, Plan, type Point, roomOf } from './canvas.ts';

export function drawNotch(
  { edgeWidthIn }: NotchResult,
  { depthIn, bendDeg }: NotchGiven,
  how: FigureHow,
): Drawing | undefined {
  const { form, letter, tell } = how;
  const { left, right, top } = roomOf(form);
  const plan = new Plan();
  const from = left + 40;
  const deep = Math.min(110, ((right - from - 60) * depthIn) / edgeWidthIn);
  if (deep < 26) return undefined;
  const open = (edgeWidthIn * deep) / depthIn;
  const y = top + 50;
  const bottom = y + deep;
  const x = (from + right) / 2;
  const [a, b, point]: [Point, Point, Point] = [
    [x - open / 2, y],
    [x + open / 2, y],
    [x, bottom],
  ];
  plan.polygon([[from, y], a, point, b, [right, y], [right, bottom], [from, bottom]], { fill: 'galv' });
  curve(plan, 'edge', [[from, y], a, point, b, [right, y]], 'leg');
  plan.line('edge', [from, bottom], [right, bottom], 'floor');
  for (const end of [from, right]) plan.breakLine(end, y, bottom);
  plan.line('centre', [x, y - 14], [x, bottom + 14], 'bend line');
  across(plan, a[0], b[0], y - 28, letter(tape(edgeWidthIn)), { from: y });
  down(plan, y, bottom, from - 22, letter(measure('inches', depthIn)), { from });
  if (deep > 60)
    angle(
      plan,
      point,
      deep * 0.5,
      [-90 - bendDeg / 2, -90 + bendDeg / 2],
      letter(measure('degrees', bendDeg)),
      {
        outside: true,
      },
    );
  const side = letter(tape(edgeWidthIn / 2, 32));
  return framed(
    plan,
    bottom + 18,
    [tell('notchSum.notePoint'), tell('notchSum.noteEach', { side })],
    [
      tell('notchSum.words', {
        depth: letter(measure('inches', depthIn)),
        width: letter(tape(edgeWidthIn)),
      }),
    ],
    how,
  );
}
