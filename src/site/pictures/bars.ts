/** Stock lengths as bars, to scale: what is cut from each, the saw line, what is left over. */
import { textWidth } from '../../drawing/glyphs.ts';
import { face, lettering, line, picture } from './line.ts';

export interface Bar {
  readonly label: string;
  /** Words on the piece, and on the left-over when there is one. */
  readonly piece: string;
  readonly left: string;
  /** Share of the stock length that the piece takes, 0 to 1. */
  readonly share: number;
}

function bar({ piece, left, share }: Bar, x: number, y: number, width: number, size: number): string {
  const cut = Math.max(14, width * share);
  const parts = [
    face(
      [
        [x, y],
        [x + cut, y],
        [x + cut, y + 26],
        [x, y + 26],
      ],
      'var(--galv)',
      2.5,
    ),
  ];
  if (share < 1) {
    parts.push(
      line(
        [
          [x + cut + 4, y],
          [x + width, y],
          [x + width, y + 26],
          [x + cut + 4, y + 26],
        ],
        1.25,
        '18 3.5 3 3.5 3 3.5',
      ),
      `<path d="M${x + cut + 2} ${y - 8}V${y + 34}" stroke="var(--mark)" stroke-width="2.5" fill="none"/>`,
    );
    const room = width - cut;
    if (room > textWidth(left, size) + 8) {
      parts.push(lettering([x + cut + room / 2, y + 18.5], left, size, 'middle'));
    }
  }
  if (cut > textWidth(piece, size) + 8) parts.push(lettering([x + cut / 2, y + 19], piece, size, 'middle'));
  return parts.join('');
}

/** Desk: label left of its bar. */
export function barsDesk(bars: readonly Bar[], words: string): string {
  const body = bars.map(
    (one, k) => lettering([0, k * 44 + 25], one.label, 14) + bar(one, 94, k * 44 + 7, 594, 15),
  );
  return picture(690, bars.length * 44 + 4, body.join(''), words);
}

/** Phone: label above its bar. */
export function barsPhone(bars: readonly Bar[], words: string): string {
  const body = bars.map(
    (one, k) => lettering([0, k * 62 + 14], one.label, 14) + bar(one, 1.5, k * 62 + 22, 325, 15),
  );
  return picture(328, bars.length * 62, body.join(''), words);
}
