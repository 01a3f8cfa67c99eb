/**
 * Small drawn signs without any text, each a whole `<svg>` that says nothing by itself. Apart from marks.ts, so that a
 * page with a button loads nothing that sets letters.
 */
import type { Palette } from './types.ts';

/** A whole picture; `spoken` are the attributes that say what it is, or that it is nothing. */
export function whole(width: number, height: number, spoken: string, body: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" ${spoken}>${body}</svg>`;
}

/** A picture that is left out of what is spoken. */
export function decoration(width: number, height: number, body: string): string {
  return whole(width, height, 'aria-hidden="true" focusable="false"', body);
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
