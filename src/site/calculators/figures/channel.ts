/** The channel across, legs up: outline, the axis it bends about, its holes as gaps in the metal. */
import type { Sheet } from '../../../drawing/svg.ts';
import type { SectionGiven, SectionResult } from '../../../trade/section.ts';
import { measure } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { across, behindRoom, besideLeft, besideRoom, framed, Plan, roomOf } from './canvas.ts';

/** Metal is never drawn thinner, px. */
const least = 4;

export function drawChannel(
  { centroidIn }: SectionResult,
  { widthIn, depthIn, thicknessIn, lipIn, holes = [] }: SectionGiven,
  how: FigureHow,
): Sheet {
  const { form, letter, tell } = how;
  const { left, right, top } = roomOf(form);
  const plan = new Plan();
  const leg = letter(measure('inches', depthIn));
  const from = left + besideRoom(leg);
  const scale = Math.min((right - from - 20) / widthIn, (form === 'phone' ? 130 : 170) / depthIn);
  const [w, h] = [widthIn * scale, depthIn * scale];
  const width = letter(measure('inches', widthIn));
  const x = Math.min(from + (right - from - w) / 2, right - w - behindRoom(w, width));
  const y = top + 46;
  const t = Math.max(least, thicknessIn * scale);
  const lip = lipIn === undefined ? 0 : Math.max(t, lipIn * scale);
  const walls = [
    { x, y, w: t, h },
    { x: x + w - t, y, w: t, h },
    { x: x + t, y: y + h - t, w: w - 2 * t, h: t },
    ...(lip > t
      ? [
          { x: x + t, y, w: lip - t, h: t },
          { x: x + w - lip, y, w: lip - t, h: t },
        ]
      : []),
  ];
  for (const wall of walls) {
    plan.rect(wall, { fill: 'galv' });
    plan.hatch(wall, 'up');
  }
  const inner = lip > t ? [x + lip, y, x + lip, y + t, x + t, y + t] : [x + t, y];
  const mirror = lip > t ? [x + w - t, y + t, x + w - lip, y + t, x + w - lip, y] : [x + w - t, y];
  const flat = [
    x,
    y,
    ...inner,
    x + t,
    y + h - t,
    x + w - t,
    y + h - t,
    ...mirror,
    x + w,
    y,
    x + w,
    y + h,
    x,
    y + h,
  ];
  plan.polygon(
    flat.flatMap((value, i) => (i % 2 === 0 ? [[value, flat[i + 1] ?? 0] as const] : [])),
    { pen: 'edge', part: 'channel' },
  );
  for (const { in: where, diameterIn, count, heightIn = 0 } of holes) {
    const d = diameterIn * scale;
    if (where === 'web') {
      // In the middle of each of as many equal parts of the floor.
      for (let k = 0; k < count; k++) {
        const at = x + t + ((w - 2 * t) * (k + 0.5)) / count;
        plan.rect(
          { x: at - d / 2, y: y + h - t - 1, w: d, h: t + 2 },
          { fill: 'sheet', pen: 'thin', part: 'hole' },
        );
      }
    } else
      for (const at of count === 1 ? [x] : [x, x + w - t])
        plan.rect(
          { x: at - 1, y: y + h - (heightIn + diameterIn / 2) * scale, w: t + 2, h: d },
          { fill: 'sheet', pen: 'thin', part: 'hole' },
        );
  }
  const axis = y + h - centroidIn * scale;
  plan.line('centre', [x - 14, axis], [x + w + 14, axis], 'axis');
  across(plan, x, x + w, y - 26, width, { from: y });
  besideLeft(plan, y, y + h, x, leg);
  return framed(
    plan,
    y + h + 14,
    [
      tell('sectionSum.noteAxis'),
      tell('sectionSum.noteCentroid', { centroid: letter(measure('inches', centroidIn)) }),
      ...(t > thicknessIn * scale ? [tell('sectionSum.noteHeavier')] : []),
    ],
    [
      tell('sectionSum.words', {
        width: letter(measure('inches', widthIn)),
        depth: letter(measure('inches', depthIn)),
        thickness: letter(measure('inches', thicknessIn)),
        centroid: letter(measure('inches', centroidIn)),
      }),
    ],
    how,
  );
}
