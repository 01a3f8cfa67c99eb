/** A run over its supports: spans to scale, weights as arrows down, what each support carries as arrows up. */
import { textWidth } from '../../../drawing/glyphs.ts';
import { boxOf } from '../../../drawing/plan.ts';
import { overlaps } from '../../../drawing/shapes.ts';
import type { Sheet } from '../../../drawing/svg.ts';
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
): Sheet {
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

  /** A text at its place in the first row that has room for it; in none, it is left to the list and the words. */
  const write = (at: number, rows: readonly number[], text: string, part: string) => {
    const wide = textWidth(text, SIZES.note) / 2;
    const x = Math.min(Math.max(at, left + wide), right - wide);
    for (const row of rows) {
      const box = boxOf({ at: [x, row], text, size: SIZES.note, anchor: 'middle' });
      if (plan.texts.some((other) => overlaps(boxOf(other), box, 3))) continue;
      plan.text([x, row], text, { size: SIZES.note, part });
      return;
    }
  };

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
    plan.rect({ x: a, y: y - tall - 3, w: b - a, h: tall }, { pen: 'dimension', part: `load ${i}` });
  }
  plan.rect({ x: begin, y, w: end - begin, h: high }, { fill: 'galv', pen: 'edge', part: 'channel' });

  for (const { place, span = 0, at, lb } of points) {
    const from = { left: begin, right: supports.at(-1) ?? begin, span: supports[span] ?? begin }[place];
    const x = from + inches(at) * scale;
    plan.line('edge', [x, y - 52], [x, y - 10]);
    plan.arrow([x, y - 1], 90, 14);
    write(x, [y - 60, y - 78], letter(measure('lb', lb)), 'weight');
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
    write(x, [foot + 33], String(k), 'support');
    plan.line('edge', [x, foot + 66], [x, foot + 46]);
    plan.arrow([x, lb < 0 ? foot + 68 : foot + 42], lb < 0 ? 90 : -90, 13);
    write(x, [foot + 88, foot + 108], letter(measure('lb', lb)), 'reaction');
  }
  const under = y + high + 132;
  for (const [i, length] of lengths.entries()) {
    const [a, b] = [supports[i] ?? begin, supports[i + 1] ?? end];
    const text = letter(tape(length));
    if (b - a < textWidth(text, SIZES.note) + 34) continue;
    across(plan, a, b, under, text, { size: SIZES.note });
  }
  const same = spans.every(({ lbPerFt }) => lbPerFt === heaviest);
  const loads = same
    ? [tell('beamSum.noteAll', { load: letter(measure('lbPerFt', heaviest)) })]
    : spans.map(({ lbPerFt }, i) =>
        tell('beamSum.noteLoad', { span: i, load: letter(measure('lbPerFt', lbPerFt)) }),
      );
  return framed(
    plan,
    under + 10,
    loads,
    [
      tell('beamSum.words', { supports: supports.length }),
      ...spans.map(({ length, lbPerFt }, i) =>
        tell('beamSum.wordsSpan', {
          span: i,
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
