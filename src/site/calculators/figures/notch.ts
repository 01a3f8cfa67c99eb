/** A leg from the side with the V that is cut out of it. */
import type { Sheet } from '../../../drawing/svg.ts';
import type { NotchGiven, NotchResult } from '../../../trade/notch.ts';
import { measure, tape } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import {
  across,
  angle,
  behindRoom,
  besideLeft,
  besideRoom,
  curve,
  framed,
  Plan,
  type Point,
  roomOf,
} from './canvas.ts';

export function drawNotch(
  { edgeWidthIn }: NotchResult,
  { depthIn, bendDeg }: NotchGiven,
  how: FigureHow,
): Sheet | undefined {
  const { form, letter, tell } = how;
  const { left, right, top } = roomOf(form);
  const plan = new Plan();
  const leg = letter(measure('inches', depthIn));
  const from = left + besideRoom(leg);
  const deep = Math.min(110, ((right - from - 60) * depthIn) / edgeWidthIn);
  if (deep < 26) return undefined;
  const open = (edgeWidthIn * deep) / depthIn;
  const y = top + 50;
  const bottom = y + deep;
  const width = letter(tape(edgeWidthIn));
  const x = Math.min((from + right) / 2, right - open / 2 - behindRoom(open, width));
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
  across(plan, a[0], b[0], y - 28, width, { from: y });
  besideLeft(plan, y, bottom, from, leg);
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
