/** A QR code (ISO/IEC 18004) of a text, as a picture. Fetched once a page stands. */
import { encodeQR } from 'qr';

/**
 * The longest text that is put in one code, more than twice the answers to the longest sheet: version 25, 117 modules a side, at the lowest correction. On a phone 360 px
 * wide that is 2.6 px a module, which a phone still reads off a screen; a longer text goes by link or file.
 */
export const LONGEST_CODE = 1200;
/** Up to this length the same 117 modules hold it at correction "medium": a scratch or a drop on the glass is made good. */
const LONGEST_MEDIUM = 950;
/** Modules left white on every side, as the standard demands. */
const QUIET = 4;

/**
 * The code as SVG, black on white in any look, with presentation attributes alone: the policy of the pages allows no
 * styles. `undefined` when the text is too long for one.
 */
export function codeSvg(text: string): string | undefined {
  const bytes = new TextEncoder().encode(text).length;
  if (bytes > LONGEST_CODE) return undefined;
  const rows = encodeQR(text, 'raw', { ecc: bytes > LONGEST_MEDIUM ? 'low' : 'medium', border: QUIET });
  const side = rows.length;
  const path = rows.map((row, y) =>
    runsOf(row)
      .map(([x, long]) => `M${x} ${y}h${long}v1h-${long}z`)
      .join(''),
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" width="${side}" height="${side}"`,
    ' shape-rendering="crispEdges" aria-hidden="true" focusable="false">',
    `<rect width="${side}" height="${side}" fill="#fff"/><path fill="#000" d="${path.join('')}"/></svg>`,
  ].join('');
}

/** Stretches of black in a row: where each begins, and how long it is. */
function runsOf(row: readonly boolean[]): readonly (readonly [number, number])[] {
  const runs: (readonly [number, number])[] = [];
  for (let x = 0; x < row.length; x++) {
    if (row[x] !== true) continue;
    const end = row.indexOf(false, x);
    runs.push([x, (end === -1 ? row.length : end) - x]);
    x = end === -1 ? row.length : end;
  }
  return runs;
}
