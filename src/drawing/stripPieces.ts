/** Numbers and lengths of the pieces of a strip. */

import type { Piece } from '../run/straight.ts';
import { shortLength } from '../trade/shortLength.ts';
import { MARGIN } from './frame.ts';
import { textWidth } from './glyphs.ts';
import { meets } from './meets.ts';
import { boxOf, type Plan, SIZES } from './plan.ts';
import { type Box, overlaps, type Point } from './shapes.ts';
import type { StripGiven } from './stripGiven.ts';
import { STRIP_LAYOUT } from './stripScale.ts';
import type { Form } from './types.ts';

/**
 * Number in the bar, length beside it; what does not fit goes above the bar, where there is room.
 *
 * @returns whether every whole length is lettered
 */
export function letterPieces(
  plan: Plan,
  { leg, stock }: StripGiven,
  form: Form,
  x: (at: number) => number,
  bar: number,
  high: number,
): boolean {
  const big = form === 'phone' ? SIZES.text : SIZES.big;
  const fills = new Map(
    plan.shapes.flatMap((s) => (s.kind === 'rect' && s.part ? [[s.part, s.fill] as const] : [])),
  );
  const outside: Piece[] = [];
  for (const piece of leg.pieces) {
    // Splices cover the ends of the piece: lettering keeps to what is seen of it.
    const covered = STRIP_LAYOUT[form].splice / 2;
    const [a, b] = piece.ends.map((end) => (meets(leg, end).joint === undefined ? 1 : covered)) as [
      number,
      number,
    ];
    const [seenFrom, seenTo] = [x(piece.from) + a, x(piece.to) - b];
    const room = seenTo - seenFrom - 4;
    const middle = (seenFrom + seenTo) / 2;
    const part = `piece ${piece.number}`;
    const ground = fills.get(part);
    const name = String(piece.number);
    const length = shortLength(piece.cut);
    const [wn, wl] = [textWidth(name, big), textWidth(length, SIZES.text)];
    const base = bar + high / 2;
    if (wn + 16 + wl <= room) {
      const start = middle - (wn + 14 + wl) / 2;
      plan.text([start, base + big * 0.34], name, { size: big, weight: 700, anchor: 'start', ground, part });
      plan.text([start + wn + 14, base + 5.5], length, { anchor: 'start', ground, part });
      continue;
    }
    outside.push(piece);
    const small = wn > room ? SIZES.note : big;
    if (textWidth(name, small) <= room + 3) {
      plan.text([middle, base + small * 0.34], name, { size: small, weight: 700, part });
    }
  }
  // Whole lengths are all lettered or none; where they leave no room for a cut piece they give way to it.
  const cut = outside.filter((p) => p.cut !== stock);
  const whole = outside.filter((p) => p.cut === stock);
  const inOrder = lettersAbove([...whole, ...cut], form, x, bar);
  const fits = !inOrder.includes(undefined);
  const all = (fits ? inOrder : lettersAbove(cut, form, x, bar)).filter((t) => t !== undefined);
  for (const { at, text, part } of all) plan.text(at, text, { size: SIZES.note, ground: 'sheet', part });
  return fits || whole.length === 0;
}

type Above = { readonly at: Point; readonly text: string; readonly part: string; readonly box: Box };

/** Lengths over the bar, each where its piece is and clear of the others; `undefined` where there is no room. */
function lettersAbove(
  pieces: readonly Piece[],
  form: Form,
  x: (at: number) => number,
  bar: number,
): readonly (Above | undefined)[] {
  const [least, most] = [MARGIN[form] + 4, STRIP_LAYOUT[form].width - MARGIN[form] - 4];
  const full: Box[] = [];
  return pieces.map(({ number, from, to, cut }) => {
    const text = shortLength(cut);
    const half = textWidth(text, SIZES.note) / 2;
    const middle = Math.min(Math.max((x(from) + x(to)) / 2, least + half), most - half);
    // Two rows over the bar, the lower one first.
    for (const y of [bar - 16, bar - 34]) {
      const at: Point = [middle, y];
      const box = boxOf({ at, text, size: SIZES.note, anchor: 'middle' });
      const air = { ...box, x: box.x - 6, w: box.w + 12 };
      if (full.some((b) => overlaps(b, air))) continue;
      full.push(box);
      return { at, text, part: `piece ${number}`, box };
    }
    return undefined;
  });
}
