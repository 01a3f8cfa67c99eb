/** A run over its supports: spans to scale, weights as arrows down, what each support carries as arrows up. */
import { textWidth } from '../../../drawing/glyphs.ts';
import type { Drawing } from '../../../drawing/types.ts';
import type { BeamResult } from '../../../trade/beam/beam.ts';
import { inches, type Ticks } from '../../../trade/length.ts';
import { measure, tape } from '../measure.ts';
import type { FigureHow } from '../sum.ts';
import { across, framed, Plan, roomOf, SIZES } from './canvas.ts';

interface BeamForm {
  readonly spans: readonly { readonly length: Ticks; readonly lbPerFt: number }[];
  readonly points: readonly {
    readonly place: 'span' | 'left' | 'right';
    readonly span?: number | undefined;
    readonly at: Ticks;
    readonly lb: number;
  }[];
  readonly overhangLeft?: Ticks | undefined;
  readonly overhangRight?: Ticks | undefined;
}

export function drawBeam(
  { reactionsLb }: BeamResult,
  { spans, points, overhangLeft, overhangRight }: BeamForm,
  how: FigureHow,
): Drawing {
  const { form, letter, tell } = how;
  const { left, right, top } = roomOf(form);
  const plan = new Plan();
  const [before, behind] = [overhangLeft, overhangRight].map((l) => (l === undefined ? 0 : inches(l)));
  const lengths = spans.map(({ length }) => inches(length));
  const whole = lengths.reduce((sum, length) => sum + length, (before ?? 0) + (behind ?? 0));
  const [begin, end] = [left + 26, right - 26];
  const scale = (end - begin) / whole;
  const supports = [begin + (before ?? 0) * scale];
  for (const length of lengths) supports.push((supports.at(-1) ?? begin) + length * scale);
  const y = top + 92;
  const high = 16;

  // The load along each span: a hatched band, as tall as its share of the heaviest.
  const heaviest = Math.max(...spans.map(({ lbPerFt }) => lbPerFt));
  const reach = (i: number): readonly [number, number] => [
    i === 0 ? begin : (supports[i] ?? begin),
    i === spans.length - 1 ? end : (supports[i + 1] ?? end),
  ];
  for (const [i, { lbPerFt }] of spans.entries()) {
    if (lbPerFt === 0) continue;
    const [a, b] = reach(i);
    const tall = 6 + (16 * lbPerFt) / heaviest;
    plan.hatch({ x: a, y: y - tall - 3, w: b - a, h: tall }, 'up', 9);
    plan.rect({ x: a, y: y - tall - 3, w: b - a, h: tall }, { pen: 'dimension', part: `load ${i + 1}` });
  }
  plan.rect({ x: begin, y, w: end - begin, h: high }, { fill: 'galv', pen: 'edge', part: 'channel' });

  for (const { place, span = 1, at, lb } of points) {
    const from = { left: begin, right: supports.at(-1) ?? begin, span: supports[span - 1] ?? begin }[place];
    const x = from + inches(at) * scale;
    plan.line('edge', [x, y - 52], [x, y - 10]);
    plan.arrow([x, y - 1], 90, 14);
    const text = letter(measure('lb', lb));
    const wide = textWidth(text, SIZES.note) / 2;
    plan.text([Math.min(Math.max(x, left + wide), right - wide), y - 60], text, {
      size: SIZES.note,
      ground: 'sheet',
      part: 'weight',
    });
  }

  // Names and loads of supports: two rows, so that near ones stand apart.
  for (const [k, x] of supports.entries()) {
    const lb = reactionsLb[k] ?? 0;
    const foot = y + high;
    plan.polygon(
      [
        [x, foot],
        [x - 10, foot + 17],
        [x + 10, foot + 17],
      ],
      { fill: 'sheet', pen: 'thin', part: `support ${k}` },
    );
    plan.text([x, foot + 33], String(k), { size: SIZES.note });
    const row = foot + (form === 'phone' && k % 2 === 1 ? 112 : 90);
    plan.line('edge', [x, foot + 66], [x, foot + 46]);
    plan.arrow([x, lb < 0 ? foot + 68 : foot + 42], lb < 0 ? 90 : -90, 13);
    const text = letter(measure('lb', lb));
    const wide = textWidth(text, SIZES.note) / 2;
    plan.text([Math.min(Math.max(x, left + wide), right - wide), row], text, {
      size: SIZES.note,
      part: 'reaction',
    });
  }
  const under = y + high + (form === 'phone' && supports.length > 1 ? 136 : 114);
  for (const [i, length] of lengths.entries()) {
    const [a, b] = [supports[i] ?? begin, supports[i + 1] ?? end];
    const text = letter(tape(length));
    if (b - a < textWidth(text, SIZES.note) + 34) continue;
    across(plan, a, b, under, text, { size: SIZES.note });
  }
  const loads = spans.map(({ lbPerFt }, i) =>
    tell('beamSum.noteLoad', { span: i + 1, load: letter(measure('lbPerFt', lbPerFt)) }),
  );
  return framed(
    plan,
    under + 10,
    loads.length > 4 ? loads.slice(0, 4) : loads,
    [
      tell('beamSum.words', { supports: supports.length }),
      ...spans.map(({ length, lbPerFt }, i) =>
        tell('beamSum.wordsSpan', {
          span: i + 1,
          length: letter(tape(inches(length))),
          load: letter(measure('lbPerFt', lbPerFt)),
        }),
      ),
      ...points.map(({ lb }) => tell('beamSum.wordsPoint', { lb: letter(measure('lb', lb)) })),
      ...reactionsLb.map((lb, support) =>
        tell('beamSum.wordsReaction', { support, lb: letter(measure('lb', lb)) }),
      ),
    ],
    how,
  );
}
