/** Lines and small parts that every picture of the site uses; weights as on the sheets. */

import { frameShapes, MARGIN } from '../../drawing/frame.ts';
import { pagePalette } from '../../drawing/palette.ts';
import type { Point } from '../../drawing/shapes.ts';
import { escapeXml, shapeSvg } from '../../drawing/svg.ts';

export type { Point } from '../../drawing/shapes.ts';

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

export const lettering = (
  [x, y]: Point,
  text: string,
  size = 14,
  anchor: 'start' | 'middle' | 'end' = 'start',
  fill = 'var(--ink)',
): string =>
  `<text x="${round(x)}" y="${round(y)}" font-size="${size}" text-anchor="${anchor}" fill="${fill}">${escapeXml(text)}</text>`;

/** Filled arrowhead with its tip at `tip`, pointing along `degrees` (0 = right, 90 = down). */
export const arrowhead = ([x, y]: Point, degrees: number): string =>
  `<path d="M0 0L-11 1.83L-11 -1.83Z" fill="var(--ink)" transform="translate(${round(x)} ${round(y)}) rotate(${degrees})"/>`;

/** The frame of a sheet, as every drawing has it: border, zone numbers along the top, letters down the left. */
export function frame(width: number, height: number, across: number, down: number): string {
  const shapes = frameShapes({ width, height, margin: MARGIN.phone, across, down });
  const drawn = shapes.map((shape) => shapeSvg(shape, 'phone', pagePalette)).join('');
  return `<g text-anchor="middle">${drawn}</g>`;
}

/** A whole picture. With `words` it is an image that speaks; without, it is left out of what is spoken. */
export function picture(width: number, height: number, body: string, words = ''): string {
  const spoken =
    words === '' ? 'aria-hidden="true" focusable="false"' : `role="img" aria-label="${escapeXml(words)}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" ${spoken}>${body}</svg>`;
}
