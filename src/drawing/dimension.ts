/** Dimensions: extension lines, a line with arrowheads that breaks for its text, ticks where there is no room. */
import { textWidth } from './glyphs.ts';
import { type Plan, SIZES } from './plan.ts';
import type { Colour } from './shapes.ts';

/** Under this much room arrowheads give way to oblique ticks. */
export const ARROW_ROOM = 30;
const HEAD = 11;
/** Extension lines stand off the part and run past the dimension line. */
const OFF = 4;
const PAST = 6;

interface Look {
  /** Where the extension lines begin: the edge of the part; left out: no extension lines. */
  readonly from?: number | undefined;
  readonly size?: number | undefined;
  /** Which side the text goes to where the room between is too small. */
  readonly beside?: 'before' | 'behind' | undefined;
  readonly part?: string | undefined;
  readonly ground?: Colour | undefined;
}

/** Dimension along the sheet at height y; without a text the length is said elsewhere. */
export function across(plan: Plan, x1: number, x2: number, y: number, text: string, look: Look = {}): void {
  const { from, size = SIZES.text, beside = 'behind', part, ground = 'sheet' } = look;
  const way = from !== undefined && y < from ? -1 : 1;
  if (from !== undefined) {
    for (const x of [x1, x2]) plan.line('dimension', [x, from + way * OFF], [x, y + way * PAST], part);
  }
  const room = x2 - x1;
  const wide = textWidth(text, size);
  const fits = room >= wide + 2 * HEAD + 8;
  const reach = fits || text === '' ? 0 : wide + 12;
  const [left, right] = beside === 'before' ? [x1 - reach, x2] : [x1, x2 + reach];
  plan.line('dimension', [left, y], [right, y], part);
  plan.keep({ x: left, y: y - 4, w: right - left, h: 8 });
  if (room < ARROW_ROOM) {
    for (const x of [x1, x2]) plan.line('thin', [x - 5, y + 5], [x + 5, y - 5]);
  } else {
    plan.arrow([x1, y], 180, HEAD);
    plan.arrow([x2, y], 0, HEAD);
  }
  if (text === '') return;
  const middle = fits ? (x1 + x2) / 2 : beside === 'before' ? x1 - 12 - wide / 2 : x2 + 12 + wide / 2;
  plan.text([middle, y + size * 0.34], text, { size, weight: size > 16 ? 700 : 650, ground, part });
}

/** Dimension down the sheet at x; its text reads from the bottom of the sheet, beside or in the line. */
export function down(plan: Plan, y1: number, y2: number, x: number, text: string, look: Look = {}): void {
  const { from, size = SIZES.text, part, ground = 'sheet' } = look;
  const way = from !== undefined && x < from ? -1 : 1;
  if (from !== undefined) {
    for (const y of [y1, y2]) plan.line('dimension', [from + way * OFF, y], [x + way * PAST, y], part);
  }
  plan.line('dimension', [x, y1], [x, y2], part);
  const wide = textWidth(text, size);
  plan.keep({ x: x - 4, y: y1, w: 8, h: y2 - y1 });
  if (y2 - y1 < ARROW_ROOM) {
    for (const y of [y1, y2]) plan.line('thin', [x - 5, y + 5], [x + 5, y - 5]);
  } else {
    plan.arrow([x, y1], -90, HEAD);
    plan.arrow([x, y2], 90, HEAD);
  }
  const fits = y2 - y1 >= size + 2 * HEAD + 4;
  plan.text([fits ? x : x + way * (10 + wide / 2), (y1 + y2) / 2 + size * 0.34], text, {
    size,
    ground: fits ? ground : undefined,
    part,
  });
}

/** Dimension of a small opening: arrows from outside, the text behind the right one. */
export function opening(
  plan: Plan,
  x1: number,
  x2: number,
  y: number,
  text: string,
  from: number,
  part?: string,
): void {
  const way = y < from ? -1 : 1;
  const tail = 26;
  for (const x of [x1, x2]) plan.line('dimension', [x, from], [x, y + way * PAST], part);
  plan.line('dimension', [x1 - tail, y], [x1, y], part);
  plan.line('dimension', [x2, y], [x2 + tail, y], part);
  plan.arrow([x1, y], 0, HEAD);
  plan.arrow([x2, y], 180, HEAD);
  plan.keep({ x: x1 - tail, y: y - 5, w: 2 * tail + x2 - x1, h: 10 });
  plan.text([x2 + tail + 6, y + 5.5], text, { anchor: 'start', part });
}
