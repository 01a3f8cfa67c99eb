/**
 * Small drawn marks that carry letters or a number, each a whole `<svg>` that says nothing by itself: the word stands
 * beside it. Presentation attributes only; colours by palette.
 */
import { decoration } from './signs.ts';
import { escapeXml } from './svg.ts';
import type { Palette } from './types.ts';

const n = (v: number) => String(Math.round(v * 100) / 100);

/** A heavy text about a middle. */
function lettering(
  [x, y]: readonly [number, number],
  text: string,
  size: number,
  fill: string,
  { letter }: Palette,
): string {
  return `<text x="${n(x)}" y="${n(y)}" text-anchor="middle" font-family="${escapeXml(letter)}" font-size="${n(size)}" font-weight="750" fill="${fill}">${escapeXml(text)}</text>`;
}

/** How a person stands in a task. */
export type MarkedState = 'shown' | 'show again' | 'practice only' | 'not shown';

/** Letters in the box: two stand large, a longer mark becomes smaller and still fits. */
const sizeOf = (text: string) => (text.length <= 2 ? 15 : Math.min(13, 50 / text.length));

/** 45° lines inside the box, sparse. */
const HATCH = 'M1.5 12.5L12.5 1.5M1.5 22.5L22.5 1.5M7.5 26.5L32.5 1.5M17.5 26.5L38.5 5.5M27.5 26.5L38.5 15.5';

const STATES: Readonly<Record<MarkedState, (text: string, palette: Palette) => string>> = {
  shown: (text, palette) =>
    `<rect x="0" y="0" width="40" height="28" fill="${palette.ink}"/>${lettering([20, 19.5], text, sizeOf(text), palette.sheet, palette)}`,
  'show again': (text, palette) =>
    `<path d="M20 2L38.2 26.5H1.8Z" fill="${palette.sheet}" stroke="${palette.ink}" stroke-width="2.2"/>${lettering([20, 23.8], text, 14, palette.ink, palette)}`,
  'practice only': (_, { ink, sheet }) =>
    `<rect x="1.5" y="1.5" width="37" height="25" fill="${sheet}" stroke="${ink}" stroke-width="1.4"/><path d="${HATCH}" fill="none" stroke="${ink}" stroke-width="1.4"/>`,
  'not shown': (_, { line }) =>
    `<rect x="1.5" y="1.5" width="37" height="25" fill="none" stroke="${line}" stroke-width="1.6" stroke-dasharray="5 3.5"/>`,
};

/**
 * The mark of a state, 40 by 28: only line and fill differ, so it copies well in black and white.
 *
 * @param text  the witness's initials where it is shown, the reason's sign where it is to be shown again, else unused
 */
export function stateMark(state: MarkedState, text: string, palette: Palette): string {
  return decoration(40, 28, STATES[state](text, palette));
}

/** In a line of words, or beside a note of the same number. */
const TRIANGLES = {
  line: { size: [28, 26], path: 'M14 1.3L27 24.2H1Z', text: [14, 21], letters: 13 },
  note: { size: [40, 36], path: 'M20 1.4L38 33H2Z', text: [20, 28.7], letters: 18 },
} as const;

/** A triangle with a number: a revision where the text changed, or what to look at again. */
export function numberedTriangle(number: number, where: keyof typeof TRIANGLES, palette: Palette): string {
  const { size, path, text, letters } = TRIANGLES[where];
  return decoration(
    size[0],
    size[1],
    `<path d="${path}" fill="${palette.sheet}" stroke="${palette.mark}" stroke-width="2.5"/>${lettering(text, String(number), letters, palette.mark, palette)}`,
  );
}
