/** Lines and small parts that every picture of the site uses; weights as on the sheets. */

export type Point = readonly [x: number, y: number];

const round = (n: number): number => Math.round(n * 100) / 100;
const at = ([x, y]: Point): string => `${round(x)} ${round(y)}`;

/** Path data through points, closed when `closed`. */
export const through = (points: readonly Point[], closed = false): string =>
  `M${points.map(at).join('L')}${closed ? 'Z' : ''}`;

/** A face: filled, with a visible edge. */
export const face = (points: readonly Point[], fill: string, width = 1.75): string =>
  `<path d="${through(points, true)}" fill="${fill}" stroke="var(--ink)" stroke-width="${width}" stroke-linejoin="round"/>`;

export const line = (points: readonly Point[], width = 1.25, dash = ''): string =>
  `<path d="${through(points)}" fill="none" stroke="var(--ink)" stroke-width="${width}"${dash === '' ? '' : ` stroke-dasharray="${dash}"`}/>`;

export const dot = ([x, y]: Point, r = 3): string =>
  `<circle cx="${round(x)}" cy="${round(y)}" r="${r}" fill="var(--ink)"/>`;

export const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

export const lettering = (
  [x, y]: Point,
  text: string,
  size = 14,
  anchor: 'start' | 'middle' | 'end' = 'start',
  fill = 'var(--ink)',
): string =>
  `<text x="${round(x)}" y="${round(y)}" font-size="${size}" text-anchor="${anchor}" fill="${fill}">${escaped(text)}</text>`;

/** Filled arrowhead with its tip at `tip`, pointing along `degrees` (0 = right, 90 = down). */
export const arrowhead = ([x, y]: Point, degrees: number): string =>
  `<path d="M0 0L-11 1.83L-11 -1.83Z" fill="var(--ink)" transform="translate(${round(x)} ${round(y)}) rotate(${degrees})"/>`;

/** Letters for zones skip I, O and Q, which read as figures. */
const letters = 'ABCDEFGHJKLMNPRSTUVWXYZ';

/** The frame of a sheet: border, zone numbers along the top, letters down the left. */
export function frame(width: number, height: number, across: number, down: number): string {
  const m = 17;
  const parts = [
    `<rect x="1.5" y="1.5" width="${width - 3}" height="${height - 3}" fill="none" stroke="var(--line)" stroke-width="1.25"/>`,
    `<rect x="${m}" y="${m}" width="${width - 2 * m}" height="${height - 2 * m}" fill="none" stroke="var(--ink)" stroke-width="2"/>`,
  ];
  const stepX = (width - 2 * m) / across;
  const stepY = (height - 2 * m) / down;
  for (let k = 0; k < across; k += 1) {
    parts.push(lettering([m + (k + 0.5) * stepX, 13], String(k + 1), 13, 'middle', 'var(--ink2)'));
    if (k > 0)
      parts.push(
        line([
          [m + k * stepX, 1.5],
          [m + k * stepX, m],
        ]),
      );
  }
  for (let k = 0; k < down; k += 1) {
    parts.push(lettering([9, m + (k + 0.5) * stepY + 4.5], letters.charAt(k), 13, 'middle', 'var(--ink2)'));
    if (k > 0)
      parts.push(
        line([
          [1.5, m + k * stepY],
          [m, m + k * stepY],
        ]),
      );
  }
  return parts.join('');
}

/** A whole picture. With `words` it is an image that speaks; without, it is left out of what is spoken. */
export function picture(width: number, height: number, body: string, words = ''): string {
  const spoken =
    words === '' ? 'aria-hidden="true" focusable="false"' : `role="img" aria-label="${escaped(words)}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" ${spoken}>${body}</svg>`;
}
