/** The three door pictures of the home sheet, 112 by 84: a joint being measured, a drawing on the wall, a crew board. */
import { arrowhead, face, line, picture } from './line.ts';

const size = [112, 84] as const;

/** Two channel ends with the opening between them dimensioned, and the tape under one. */
export function installing(): string {
  const ticks = Array.from({ length: 8 }, (_, k) =>
    line(
      [
        [k * 8, 61],
        [k * 8, k % 4 === 0 ? 74 : 68],
      ],
      1.25,
    ),
  );
  return picture(
    ...size,
    [
      face(
        [
          [-4, 33],
          [62, 33],
          [62, 61],
          [-4, 61],
        ],
        'var(--galv)',
        2.5,
      ),
      face(
        [
          [116, 33],
          [74, 33],
          [74, 61],
          [116, 61],
        ],
        'var(--sheet)',
        2.5,
      ),
      line([
        [62, 33],
        [62, 8],
      ]),
      line([
        [74, 33],
        [74, 8],
      ]),
      line([
        [36, 15],
        [62, 15],
      ]),
      line([
        [74, 15],
        [100, 15],
      ]),
      arrowhead([62, 15], 0),
      arrowhead([74, 15], 180),
      line(
        [
          [0, 47],
          [112, 47],
        ],
        1.25,
        '20 3.5 3 3.5',
      ),
      ...ticks,
    ].join(''),
  );
}

/** A sheet on the wall with its title block and a pointer. */
export function teaching(): string {
  return picture(
    ...size,
    [
      face(
        [
          [3, 5],
          [87, 5],
          [87, 66],
          [3, 66],
        ],
        'var(--sheet)',
        2.5,
      ),
      face(
        [
          [52, 52],
          [87, 52],
          [87, 66],
          [52, 66],
        ],
        'var(--sheet)',
        1.75,
      ),
      face(
        [
          [13, 24],
          [61, 24],
          [61, 38],
          [13, 38],
        ],
        'var(--galv)',
        1.75,
      ),
      line(
        [
          [37, 17],
          [37, 45],
        ],
        1.25,
        '14 3 3 3',
      ),
      line(
        [
          [110, 82],
          [68, 40],
        ],
        2.5,
      ),
      '<path d="M0 0L-15 2.8L-15 -2.8Z" fill="var(--ink)" transform="translate(61 33) rotate(225)"/>',
      line([
        [3, 77],
        [58, 77],
      ]),
    ].join(''),
  );
}

/** Nine cells of a crew board in its four marks. */
export function assigning(): string {
  const cells = ['shown', 'not', 'shown', 'practice', 'shown', 'not', 'shown', 'shown', 'again'];
  const draw: Record<string, (x: number, y: number) => string> = {
    shown: (x, y) => `<rect x="${x}" y="${y}" width="32" height="22" fill="var(--ink)"/>`,
    not: (x, y) =>
      `<rect x="${x + 0.7}" y="${y + 0.7}" width="30.6" height="20.6" fill="none" stroke="var(--line)" stroke-width="1.4" stroke-dasharray="5 3"/>`,
    practice: (x, y) =>
      `<rect x="${x + 0.6}" y="${y + 0.6}" width="30.8" height="20.8" fill="none" stroke="var(--ink)" stroke-width="1.25"/>` +
      line([
        [x, y + 12],
        [x + 12, y],
      ]) +
      line([
        [x + 2, y + 22],
        [x + 24, y],
      ]) +
      line([
        [x + 14, y + 22],
        [x + 32, y + 4],
      ]),
    again: (x, y) =>
      `<path d="M${x + 16} ${y + 1}L${x + 29} ${y + 22}H${x + 3}Z" fill="none" stroke="var(--ink)" stroke-width="2.25"/>`,
  };
  return picture(
    ...size,
    cells.map((cell, k) => draw[cell]?.(2 + (k % 3) * 38, 3 + Math.floor(k / 3) * 28) ?? '').join(''),
  );
}
