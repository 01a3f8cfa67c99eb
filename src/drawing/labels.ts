/** Labels under a strip: one to a splice, an arrow from the bar to each, in as few rows as hold them all. */
import { textWidth } from './glyphs.ts';
import { boxOf, type Plan, SIZES } from './plan.ts';
import { type Box, overlaps } from './shapes.ts';

interface Given {
  readonly datum: { readonly x: number; readonly text: string };
  readonly marks: readonly { readonly x: number; readonly full: string; readonly short: string }[];
  /** Bottom of the bar, where arrows begin; bottom of all that is drawn above the labels. */
  readonly from: number;
  readonly top: number;
  readonly bounds: readonly [number, number];
  readonly size: number;
}

const ROWS = 4;
const STEM = 46;

interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

interface Placed {
  readonly labels: readonly (Label | undefined)[];
  readonly datumRow: number;
}

/**
 * Draws the labels: in full where all fit, else the names alone, else as many names as fit (the words name all).
 *
 * @returns the base line of the lowest row
 */
export function layLabels(plan: Plan, given: Given): number {
  const { datum, from, marks, size } = given;
  const placed = arrange(given);
  const zero = rowAt(given, placed.datumRow);
  plan.circle([datum.x, zero - 5], 4, { fill: 'ink' });
  plan.line('dimension', [datum.x, from + 4], [datum.x, zero - 9]);
  plan.text([datum.x + 10, zero], datum.text, { size: SIZES.note, anchor: 'start', part: 'datum' });
  placed.labels.forEach((label, i) => {
    if (label === undefined) return;
    const x = marks[i]?.x ?? 0;
    const to = label.y - size * 0.72 - 4;
    plan.line('dimension', [x, from + 10], [x, to]);
    plan.arrow([x, to], 90);
    plan.keep({ x: x - 3, y: from, w: 6, h: to - from });
    plan.text([label.x, label.y], label.text, { size, ground: 'sheet', part: `label ${label.text}` });
  });
  return Math.max(zero, ...placed.labels.map((l) => l?.y ?? 0));
}

const rowAt = ({ top, size }: Given, i: number) => top + STEM + 20 + i * (size + 8);

/** The datum beside the first row, else on a row below; texts in full, else names. */
function arrange(given: Given): Placed {
  for (const form of ['full', 'short'] as const) {
    for (let datumRow = 0; datumRow <= ROWS; datumRow++) {
      const labels = place(given, datumRow, form, Math.max(1, datumRow));
      if (!labels.includes(undefined)) return { labels, datumRow };
    }
  }
  return { labels: place(given, ROWS, 'short', ROWS), datumRow: ROWS };
}

/** A row for each label, `undefined` for one that has no room. */
function place(
  given: Given,
  datumRow: number,
  form: 'full' | 'short',
  rows: number,
): readonly (Label | undefined)[] {
  const { marks, bounds, size, top, datum } = given;
  const zero = { at: [datum.x + 10, rowAt(given, datumRow)], text: datum.text, size: SIZES.note } as const;
  const texts: Box[] = [boxOf({ ...zero, anchor: 'start' })];
  const stems: Box[] = [];
  return marks.map((mark) => {
    const text = mark[form];
    const half = textWidth(text, size) / 2;
    const x = Math.min(Math.max(mark.x, bounds[0] + half), bounds[1] - half);
    for (let i = 0; i < rows; i++) {
      const y = rowAt(given, i);
      const box = boxOf({ at: [x, y], text, size, anchor: 'middle' });
      const clear = form === 'full' ? 8 : 2;
      const air = { x: box.x - clear, y: box.y, w: box.w + 2 * clear, h: box.h };
      const stem = { x: mark.x - 5, y: top, w: 10, h: box.y - top - 2 };
      if ([...texts, ...stems].some((b) => overlaps(b, air, 2)) || texts.some((b) => overlaps(b, stem)))
        continue;
      texts.push(box);
      stems.push(stem);
      return { x, y, text };
    }
    return undefined;
  });
}
