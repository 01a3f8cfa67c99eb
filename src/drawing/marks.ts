/**
 * Small drawn marks of the look, each a whole `<svg>`: pages set them as they are. Presentation attributes only; colours
 * by palette. All but the cloud say nothing by themselves: the word stands beside them.
 */
import { textWidth } from './glyphs.ts';
import { escapeXml } from './svg.ts';
import type { Palette } from './types.ts';

const n = (v: number) => String(Math.round(v * 100) / 100);

function svg(width: number, height: number, spoken: string, body: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" ${spoken}>${body}</svg>`;
}

const decoration = (width: number, height: number, body: string) =>
  svg(width, height, 'aria-hidden="true" focusable="false"', body);

/** A text about a middle, heavy unless it is a measure. */
function lettering(
  [x, y]: readonly [number, number],
  text: string,
  size: number,
  fill: string,
  { letter }: Palette,
  weight = ' font-weight="750"',
): string {
  return `<text x="${n(x)}" y="${n(y)}" text-anchor="middle" font-family="${escapeXml(letter)}" font-size="${n(size)}"${weight} fill="${fill}">${escapeXml(text)}</text>`;
}

/** How a person stands in a task. */
export type MarkedState = 'shown' | 'show again' | 'practice only' | 'not shown';

/** 45° lines inside the box, sparse. */
const HATCH = 'M1.5 12.5L12.5 1.5M1.5 22.5L22.5 1.5M7.5 26.5L32.5 1.5M17.5 26.5L38.5 5.5M27.5 26.5L38.5 15.5';

const STATES: Readonly<Record<MarkedState, (text: string, palette: Palette) => string>> = {
  shown: (text, palette) =>
    `<rect x="0" y="0" width="40" height="28" fill="${palette.ink}"/>${lettering([20, 19.5], text, text.length > 2 ? 13 : 15, palette.sheet, palette)}`,
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

/** A dimension to rework, or near: in a revision cloud, its words the dimension itself. */
export function cloudedDimension(text: string, palette: Palette): string {
  const [edge, size, height] = [7, 17, 40];
  const width = Math.round(textWidth(text, size) + 44);
  const path = cloudPath(edge, edge, width - 2 * edge, height - 2 * edge);
  return svg(
    width,
    height,
    `role="img" aria-label="${escapeXml(text)}"`,
    `<path d="${path}" fill="${palette.sheet}" stroke="${palette.mark}" stroke-width="2.5" stroke-linejoin="round"/>${lettering([width / 2, 26], text, size, palette.ink, palette, '')}`,
  );
}

/** A revision cloud round a box: half circles bulging outwards, about 15 px each, two a side at least. */
export function cloudPath(x: number, y: number, w: number, h: number): string {
  const bump = 15.3;
  const [across, down] = [Math.max(2, Math.round(w / bump)), Math.max(2, Math.round(h / bump))];
  const [dx, dy] = [w / across, h / down];
  const arc = (ex: number, ey: number) => {
    const r = Math.max(Math.abs(ex), Math.abs(ey)) / 2;
    return `a${n(r)} ${n(r)} 0 0 1 ${n(ex)} ${n(ey)}`;
  };
  return `M${n(x)} ${n(y)}${arc(dx, 0).repeat(across)}${arc(0, dy).repeat(down)}${arc(-dx, 0).repeat(across)}${arc(0, -dy).repeat(down)}Z`;
}

/** The alert triangle of a safety panel, in the colour of the panel's words; `ground` shows through its bar. */
export function safetyTriangle(ground: string): string {
  return decoration(
    30,
    27,
    `<path d="M15 1L29.5 26H.5Z" fill="currentColor"/><path d="M13.2 9h3.6l-.8 9h-2z" fill="${ground}"/><circle cx="15" cy="21.6" r="1.9" fill="${ground}"/>`,
  );
}

/** The arrow on a button: a dimension line with its head. It takes the colour of the button's words. */
export function buttonArrow(): string {
  return decoration(
    34,
    12,
    '<path d="M0 6H24" fill="none" stroke="currentColor" stroke-width="2.5"/><path d="M34 6L20 1V11Z" fill="currentColor"/>',
  );
}

/** The channel from its end, and its centre line. */
export function logo({ mark }: Pick<Palette, 'mark'>): string {
  return decoration(
    34,
    26,
    `<path d="M4 3V20H30V3" fill="none" stroke="currentColor" stroke-width="4"/><path d="M17 0V26" fill="none" stroke="${mark}" stroke-width="1.6" stroke-dasharray="8 2.5 2.5 2.5"/>`,
  );
}
