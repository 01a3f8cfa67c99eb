/**
 * Small drawn marks of the look, each a whole `<svg>` that says nothing by itself: the word stands beside it.
 * Presentation attributes only; colours by palette.
 */
import { textWidth } from './glyphs.ts';
import { escapeXml } from './svg.ts';
import type { Palette } from './types.ts';

const n = (v: number) => String(Math.round(v * 100) / 100);

function decoration(width: number, height: number, body: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" aria-hidden="true" focusable="false">${body}</svg>`;
}

function lettering(
  x: number,
  y: number,
  text: string,
  size: number,
  fill: string,
  { letter }: Palette,
): string {
  return `<text x="${n(x)}" y="${n(y)}" text-anchor="middle" font-family="${escapeXml(letter)}" font-size="${n(size)}" font-weight="750" fill="${fill}">${escapeXml(text)}</text>`;
}

/** The four states of a person and a task, 40 × 28. `text`: the witness's initials, or what a triangle says. */
export type StateMark =
  | { readonly state: 'not shown' }
  | { readonly state: 'practice only' }
  | { readonly state: 'shown'; readonly initials: string }
  | { readonly state: 'show again'; readonly sign: string };

export function stateMark(mark: StateMark, palette: Palette): string {
  return decoration(40, 28, STATES[mark.state](mark as never, palette));
}

const STATES: {
  readonly [K in StateMark['state']]: (mark: Extract<StateMark, { state: K }>, palette: Palette) => string;
} = {
  'not shown': (_, { ink2 }) =>
    `<rect x="2" y="2" width="36" height="24" fill="none" stroke="${ink2}" stroke-width="1.4" stroke-dasharray="5.2 3.4"/>`,
  'practice only': (_, { ink }) =>
    `<rect x="1.5" y="1.5" width="37" height="25" fill="none" stroke="${ink}" stroke-width="1.6"/><path d="M2 12L12 2M2 24L24 2M13 26L36 2.5M25 26L38 13" fill="none" stroke="${ink}" stroke-width="1.5"/>`,
  shown: ({ initials }, palette) =>
    `<rect width="40" height="28" fill="${palette.ink}"/>${lettering(20, 19.5, initials, initials.length > 2 ? 14 : 16, palette.sheet, palette)}`,
  'show again': ({ sign }, palette) =>
    `<path d="M20 2.6L36 26.6H4Z" fill="${palette.sheet}" stroke="${palette.ink}" stroke-width="2.4"/>${lettering(20, 24.4, sign, sign.length > 1 ? 13 : 15, palette.ink, palette)}`,
};

/** A triangle with a number: look again, the note of the same number says why. `size` is its width. */
export function numberedTriangle(number: string, palette: Palette, size = 28): string {
  const h = size * 0.88;
  const [w, tall] = [size + 4, h + 4];
  return decoration(
    w,
    tall,
    `<path d="M${n(w / 2)} 2L${n(w - 2)} ${n(tall - 2)}H2Z" fill="${palette.sheet}" stroke="${palette.mark}" stroke-width="2.5"/>${lettering(w / 2, tall - 2 - size * 0.13, number, Math.max(13, size * 0.5), palette.mark, palette)}`,
  );
}

const AROUND = { height: 34, size: 18, pad: 14 } as const;

/** A dimension that holds: ringed, as an inspected dimension is. */
export function ringedDimension(text: string, palette: Palette): string {
  const w = textWidth(text, AROUND.size) + 2 * AROUND.pad;
  const h = AROUND.height;
  return decoration(
    w + 4,
    h,
    `<rect x="2" y="2" width="${n(w)}" height="${h - 4}" rx="${n((h - 4) / 2)}" fill="${palette.sheet}" stroke="${palette.ink}" stroke-width="1.75"/>${lettering(w / 2 + 2, h / 2 + 6, text, AROUND.size, palette.ink, palette)}`,
  );
}

/** A dimension to rework, or near: clouded; with a number its triangle stands beside it. */
export function cloudedDimension(text: string, palette: Palette): string {
  const w = textWidth(text, AROUND.size) + 2 * AROUND.pad;
  const h = AROUND.height - 8;
  return decoration(
    w + 12,
    h + 12,
    `<path d="${cloudPath(6, 6, w, h)}" fill="${palette.sheet}" stroke="${palette.mark}" stroke-width="2.5"/>${lettering(w / 2 + 6, h / 2 + 12.2, text, AROUND.size, palette.ink, palette)}`,
  );
}

/** A revision cloud round a box: arcs bulging outwards, about 14 px each. */
export function cloudPath(x: number, y: number, w: number, h: number): string {
  const [across, down] = [Math.max(2, Math.round(w / 14)), Math.max(2, Math.round(h / 14))];
  const [dx, dy] = [w / across, h / down];
  const arc = (ex: number, ey: number) => {
    const r = Math.max(Math.abs(ex), Math.abs(ey)) * 0.56;
    return `a${n(r)} ${n(r)} 0 0 1 ${n(ex)} ${n(ey)}`;
  };
  return `M${n(x)} ${n(y)}${arc(dx, 0).repeat(across)}${arc(0, dy).repeat(down)}${arc(-dx, 0).repeat(across)}${arc(0, -dy).repeat(down)}Z`;
}

/** A dimension nobody answered: a dashed box. */
export function blankDimension(palette: Palette): string {
  return decoration(
    76,
    AROUND.height,
    `<rect x="2" y="2" width="72" height="${AROUND.height - 4}" fill="none" stroke="${palette.ink2}" stroke-width="1.4" stroke-dasharray="7 3.5"/>`,
  );
}

/** The alert triangle of a safety panel, solid with an exclamation bar; `ground` is the panel's colour. */
export function safetyTriangle(palette: Pick<Palette, 'ink'>, ground: string): string {
  return decoration(
    30,
    27,
    `<path d="M15 1L29.5 26H.5Z" fill="${palette.ink}"/><path d="M13.2 9h3.6l-.8 9h-2z" fill="${ground}"/><circle cx="15" cy="21.6" r="1.9" fill="${ground}"/>`,
  );
}

/** The arrow on a button: a dimension line with its head. It takes the colour of the button's words. */
export function buttonArrow(): string {
  return decoration(
    34,
    12,
    '<path d="M0 6H24" fill="none" stroke="currentColor" stroke-width="2.5"/><path d="M34 6L20 1.2V10.8Z" fill="currentColor"/>',
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
