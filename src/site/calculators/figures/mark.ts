/** The floor of the channel from above: the holes, where no cut may stand, the mark, the nearest clear places. */
import { textWidth } from '../../../drawing/glyphs.ts';
import { boxOf } from '../../../drawing/plan.ts';
import { overlaps } from '../../../drawing/shapes.ts';
import type { Sheet } from '../../../drawing/svg.ts';
import { inches } from '../../../trade/length.ts';
import type { MarkGiven, MarkResult } from '../../../trade/mark.ts';
import { tape, tapeAtLeast, tapeAtMost } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { across, framed, Plan, roomOf, SIZES } from './canvas.ts';

/** Most holes that the figure shows to either side of the mark. */
const shown = 1.3;

export function drawMark(result: MarkResult, given: MarkGiven, how: FigureHow): Sheet | undefined {
  const { form, tell, letter } = how;
  const { left, right, top } = roomOf(form);
  const plan = new Plan();
  const at = inches(given.at);
  const pitch = inches(given.pitch);
  const width = inches(given.holeWidth);
  const clearance = inches(given.clearance ?? given.holeWidth);
  const first = inches(given.firstHole);
  const reach = width / 2 + clearance;
  const half = Math.max(shown * pitch, 2 * reach);
  const begin = Math.max(0, at - half);
  const end = begin + 2 * half;
  const scale = (right - left) / (end - begin);
  const x = (inch: number) => left + (inch - begin) * scale;
  const [y, high] = [top + 58, Math.min(54, Math.max(30, width * scale + 20))];
  const middle = y + high / 2;

  plan.rect({ x: left, y, w: right - left, h: high }, { fill: 'galv' });
  for (const edge of [y, y + high]) plan.line('edge', [left, edge], [right, edge], 'channel');
  if (begin === 0) plan.line('edge', [left, y], [left, y + high], 'end');
  else plan.breakLine(left, y, y + high);
  plan.breakLine(right, y, y + high);

  const from = Math.max(0, Math.ceil((begin - first - reach) / pitch));
  const holes: number[] = [];
  for (let k = from; first + k * pitch <= end + reach; k++) holes.push(first + k * pitch);
  for (const centre of holes) {
    const [a, b] = [Math.max(begin, centre - reach), Math.min(end, centre + reach)];
    if (b > a) plan.hatch({ x: x(a), y, w: (b - a) * scale, h: high }, 'up', 8);
  }
  for (const centre of holes) {
    const r = (width * scale) / 2;
    if (x(centre) - r < left || x(centre) + r > right) continue;
    const look = { fill: 'sheet', pen: 'thin', part: `hole ${centre}` } as const;
    if (2 * r <= high - 10) plan.circle([x(centre), middle], r, look);
    // A hole wider than the tray is drawn stands as a slot.
    else plan.rect({ x: x(centre) - r, y: y + 7, w: 2 * r, h: high - 14 }, look);
  }
  const pair = holes.filter((centre) => x(centre) >= left && x(centre) <= right);
  const [one, two] = pair;
  const apart = letter(tape(pitch, 64));
  if (one !== undefined && two !== undefined && x(two) - x(one) > textWidth(apart, SIZES.note) + 32)
    across(plan, x(one), x(two), y + high + 80, apart, {
      from: y + high,
      size: SIZES.note,
    });

  plan.line('mark', [x(at), y - 14], [x(at), y + high + 6], 'mark');
  plan.polygon(
    [
      [x(at) - 7, y - 26],
      [x(at) + 7, y - 26],
      [x(at), y - 13],
    ],
    { fill: 'mark', part: 'mark' },
  );
  const said = letter(tape(at, 64));
  const keep = (centre: number, text: string) =>
    Math.min(
      Math.max(centre, left + textWidth(text, SIZES.text) / 2),
      right - textWidth(text, SIZES.text) / 2,
    );
  plan.text([keep(x(at), said), y - 34], said, { colour: 'mark', part: 'mark' });
  for (const [place, side] of [
    [result.shorterIn, -1],
    [result.longerIn, 1],
  ] as const) {
    if (place === null || result.clear || x(place) < left || x(place) > right) continue;
    plan.line('edge', [x(place), y - 4], [x(place), y + high + 18], 'clear place');
    const text = letter(side < 0 ? tapeAtMost(place, 64) : tapeAtLeast(place, 64));
    const wide = textWidth(text, SIZES.text);
    const begins = Math.min(Math.max(side < 0 ? x(place) + 6 - wide : x(place) - 6, left), right - wide);
    const row = y + high + 36;
    const taken = plan.texts.some((other) =>
      overlaps(boxOf(other), boxOf({ at: [begins, row], text, size: SIZES.text, anchor: 'start' }), 3),
    );
    plan.text([begins, taken ? row + 20 : row], text, {
      anchor: 'start',
      ground: 'sheet',
      part: 'clear place',
    });
  }
  return framed(
    plan,
    y + high + 96,
    [tell('markSum.noteHatched', { clearance: letter(tape(clearance, 64)) }), tell('markSum.noteScale')],
    [
      tell('markSum.words', { at: said, width: letter(tape(width, 64)), pitch: letter(tape(pitch, 64)) }),
      ...(result.clear ? [tell('markSum.wordsClear')] : []),
      ...(result.clear || result.shorterIn === null
        ? []
        : [tell('markSum.wordsShorter', { place: letter(tapeAtMost(result.shorterIn, 64)) })]),
      ...(result.clear || result.longerIn === null
        ? []
        : [tell('markSum.wordsLonger', { place: letter(tapeAtLeast(result.longerIn, 64)) })]),
    ],
    how,
  );
}
