/** An offset seen square to the plane of its bends: the run, its centre line, travel, advance, angle. */
import { textWidth } from '../../../drawing/glyphs.ts';
import type { Sheet } from '../../../drawing/svg.ts';
import type { OffsetGiven, OffsetResult } from '../../../trade/offset.ts';
import { measure, tape } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { across, arc, curve, down, framed, Plan, type Point, roomOf, SIZES, sloped } from './canvas.ts';

/** Half the width of the channel as it is drawn, px. */
const half = 13;
/** Straight channel beyond each bend, px. */
const stub = { phone: 40, desk: 100, paper: 100 } as const;
const tallest = { phone: 150, desk: 200, paper: 200 } as const;

export function drawOffset(
  { trueOffsetIn, travelIn, advanceIn, shrinkIn }: OffsetResult,
  { angleDeg, roll }: OffsetGiven,
  how: FigureHow,
): Sheet | undefined {
  const { form, letter, tell } = how;
  const { left, right, top } = roomOf(form);
  const scale = Math.min((right - left - 2 * stub[form] - 84) / advanceIn, tallest[form] / trueOffsetIn);
  const [run, rise] = [advanceIn * scale, trueOffsetIn * scale];
  if (run < 26 || rise < 12) return undefined;
  const plan = new Plan();
  const x = (left + right - 84 - run) / 2;
  const y = top + 74;
  const [a, b]: [Point, Point] = [
    [x, y + rise],
    [x + run, y],
  ];
  const ends: [Point, Point] = [
    [x - stub[form], y + rise],
    [x + run + stub[form], y],
  ];
  // The walls keep their distance from the centre line; at a bend they meet on its bisector.
  const lean = half * Math.tan(((angleDeg / 2) * Math.PI) / 180);
  const wall = (side: 1 | -1): readonly Point[] => [
    [ends[0][0], ends[0][1] - side * half],
    [a[0] - side * lean, a[1] - side * half],
    [b[0] - side * lean, b[1] - side * half],
    [ends[1][0], ends[1][1] - side * half],
  ];
  plan.polygon([...wall(1), ...[...wall(-1)].reverse()], { fill: 'galv' });
  for (const side of [1, -1] as const) curve(plan, 'edge', wall(side), 'channel');
  for (const [at, line] of ends) plan.breakLine(at, line - half, line + half);
  curve(plan, 'centre', [ends[0], a, b, ends[1]], 'centre line');
  const turn = letter(measure('degrees', angleDeg));
  const wide = textWidth(turn, SIZES.text);
  curve(plan, 'phantom', [a, [a[0] + 58, a[1]]]);
  curve(plan, 'dimension', arc(a, 48, 0, -angleDeg));
  // Under the line of the run, where no wall comes.
  plan.text([a[0] + 34 + wide / 2, a[1] + 19], turn);
  sloped(plan, a, b, 34, letter(tape(travelIn)));
  across(plan, a[0], b[0], y + rise + 46, letter(tape(advanceIn)), { from: y + rise + half });
  const over = letter(tape(trueOffsetIn));
  // A low offset has its text beside the line.
  const beside = rise < 42 ? textWidth(over, SIZES.text) + 10 : textWidth(over, SIZES.text) / 2;
  down(plan, y, y + rise, right - beside, over, { from: ends[1][0] + 8 });
  const values = { travel: letter(tape(travelIn)), shrink: letter(tape(shrinkIn)) };
  return framed(
    plan,
    y + rise + 58,
    [
      tell('offsetSum.note', values),
      ...(roll === undefined || roll === 0
        ? []
        : [tell('offsetSum.noteTrue', { offset: letter(tape(trueOffsetIn)) })]),
    ],
    [
      tell('offsetSum.words', {
        ...values,
        offset: letter(tape(trueOffsetIn)),
        angle: letter(measure('degrees', angleDeg)),
        advance: letter(tape(advanceIn)),
      }),
    ],
    how,
  );
}
