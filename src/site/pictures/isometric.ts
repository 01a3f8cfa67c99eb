/**
 * The home sheet's isometric: a channel leaves a ladder tray, rests on two struts hung from rods, passes a splice and
 * turns down to a transmitter. Worked from points in space; x runs right and down the sheet, y right and up, z up.
 * Not a run and not to scale: it shows what the parts are.
 */
import { dot, face, frame, lettering, line, type Point, picture } from './line.ts';

type Space = readonly [x: number, y: number, z: number];

const COS = Math.sqrt(3) / 2;

export interface IsometricWords {
  readonly whole: string;
  readonly ladder: string;
  readonly rod: string;
  readonly elbow: string;
  readonly splice: string;
  readonly tag: string;
  readonly loop: string;
  readonly north: string;
}

/** Channel: clear width and wall height; the straight part's length; the bend's inner radius; the drop below it. */
const wide = 34;
const wall = 15;
const straight = 200;
const bend = 28;
const drop = 12;
const strutsAt = [76, 166] as const;
const spliceAt = 121;

function scene(project: (p: Space) => Point): string {
  const on = (points: readonly Space[]): Point[] => points.map(project);
  const arc = (y: number, radius: number, from: number, to: number): Space[] =>
    Array.from({ length: 9 }, (_, k) => {
      const turn = ((from + ((to - from) * k) / 8) * Math.PI) / 180;
      return [straight + radius * Math.sin(turn), y, -bend + radius * Math.cos(turn)] as const;
    });
  /** One wall: along, round the bend, down. Its root is the floor's edge, its lip stands `wall` off it. */
  const wallAt = (y: number): Space[] => [
    [0, y, wall],
    ...arc(y, bend + wall, 0, 90),
    [straight + bend + wall, y, -bend - drop],
    [straight + bend, y, -bend - drop],
    ...arc(y, bend, 90, 0),
    [0, y, 0],
  ];
  const floor: Space[] = [
    [0, 0, 0],
    ...arc(0, bend, 0, 90),
    [straight + bend, 0, -bend - drop],
    [straight + bend, wide, -bend - drop],
    ...arc(wide, bend, 90, 0),
    [0, wide, 0],
  ];
  const strut = (x: number): string => {
    const [near, far, half, deep] = [-13, wide + 13, 5, 10];
    return [
      line(
        on([
          [x, far - 4, 96],
          [x, far - 4, 0],
        ]),
        2,
      ),
      face(
        on([
          [x + half, near, 0],
          [x + half, far, 0],
          [x + half, far, -deep],
          [x + half, near, -deep],
        ]),
        'var(--sheet)',
      ),
      face(
        on([
          [x - half, near, 0],
          [x + half, near, 0],
          [x + half, near, -deep],
          [x - half, near, -deep],
        ]),
        'var(--sheet)',
      ),
      face(
        on([
          [x - half, near, 0],
          [x - half, far, 0],
          [x + half, far, 0],
          [x + half, near, 0],
        ]),
        'var(--sheet)',
      ),
    ].join('');
  };
  const nearRod = (x: number): string =>
    line(
      on([
        [x, -9, 96],
        [x, -9, 0],
      ]),
      2,
    );
  const [s0, s1] = [spliceAt - 22, spliceAt + 22];
  const sleeve = [
    face(
      on([
        [s0, -2, -2],
        [s0, -2, wall + 1],
        [s1, -2, wall + 1],
        [s1, -2, -2],
      ]),
      'var(--sheet)',
      2.25,
    ),
    ...[-13, -5, 5, 13].map((d) => dot(project([spliceAt + d, -2, wall / 2]), 1.9)),
    line(
      on([
        [s0, wide, wall],
        [s1, wide, wall],
      ]),
      3.5,
    ),
  ].join('');
  return [
    ...strutsAt.map(strut),
    face(on(floor), 'var(--sheet)'),
    face(on(wallAt(wide)), 'var(--galv2)'),
    // The cable lies on the floor, leaves over the drop's open end.
    line(on([[-20, 20, 3], ...arc(20, bend + 3, 0, 90), [straight + bend + 3, 20, -bend - drop - 14]]), 1.75),
    face(on(wallAt(0)), 'var(--galv)', 2.25),
    sleeve,
    ...strutsAt.map(nearRod),
    ladder(on),
  ].join('');
}

/** Ladder tray above the channel's beginning: two rails along y and the rungs between them. */
function ladder(on: (points: readonly Space[]) => Point[]): string {
  const [y0, y1, foot, head, left, right] = [-72, 82, wall + 5, wall + 23, -34, 24];
  const rail = (x: number) =>
    face(
      on([
        [x, y0, foot],
        [x, y1, foot],
        [x, y1, head],
        [x, y0, head],
      ]),
      'var(--galv)',
    );
  const rung = (y: number) =>
    face(
      on([
        [left, y, foot + 5],
        [right, y, foot + 5],
        [right, y + 6, foot + 5],
        [left, y + 6, foot + 5],
      ]),
      'var(--sheet)',
      1.25,
    );
  return [rail(left), ...[-58, -34, -10, 14, 38, 62].map(rung), rail(right)].join('');
}

const leader = (points: readonly Point[], text: string, anchor: 'start' | 'end' = 'start'): string => {
  const last = points[points.length - 1] ?? [0, 0];
  const first = points[0] ?? [0, 0];
  return (
    line(points) +
    dot(first) +
    lettering([last[0] + (anchor === 'start' ? 6 : -6), last[1] + 5], text, 14, anchor)
  );
};

function balloon([x, y]: Point, r: number, lines: readonly string[]): string {
  const lift = lines.length === 1 ? 5 : -1;
  return (
    `<circle cx="${x}" cy="${y}" r="${r}" fill="var(--sheet)" stroke="var(--ink)" stroke-width="2.25"/>` +
    lines.map((text, k) => lettering([x, y + lift + k * 14], text, 13, 'middle')).join('')
  );
}

function north([x, y]: Point, word: string): string {
  // North runs along y: right and up the sheet, at 30 degrees.
  return (
    `<g transform="translate(${x} ${y}) rotate(-30)"><circle r="14" fill="none" stroke="var(--ink)" stroke-width="1.25"/>` +
    '<path d="M23 0L-11 -6.5L-11 6.5Z" fill="var(--ink)"/></g>' +
    lettering([x + 26, y - 12], word, 15)
  );
}

/** Desk form, 620 by 334, four notes. */
export function isometricDesk(words: IsometricWords): string {
  const project = ([x, y, z]: Space): Point => [172 + 0.96 * (x + y) * COS, 115 + 0.97 * ((x - y) / 2 - z)];
  const body = [
    frame(620, 334, 6, 3),
    scene(project),
    leader([project([-5, 40, wall + 10]), [318, 46], [330, 46]], words.ladder),
    leader([project([strutsAt[1], wide + 9, 66]), [432, 104], [444, 104]], words.rod),
    leader([project([straight + 26, wide, -6]), [478, 190], [490, 190]], words.elbow),
    leader([project([spliceAt + 5, -2, 4]), [236, 276], [226, 276]], words.splice, 'end'),
    balloon([391, 290], 22, [words.tag, words.loop]),
    north([48, 62], words.north),
  ];
  return picture(620, 334, body.join(''), words.whole);
}

/** Phone form, 328 by 232, two notes. */
export function isometricPhone(words: IsometricWords): string {
  const project = ([x, y, z]: Space): Point => [86 + 0.62 * (x + y) * COS, 80 + 0.62 * ((x - y) / 2 - z)];
  const body = [
    frame(328, 232, 4, 3),
    scene(project),
    leader([project([-5, 40, wall + 10]), [190, 40], [198, 40]], words.ladder),
    leader([project([spliceAt + 5, -2, 4]), [126, 198], [118, 198]], words.splice, 'end'),
    balloon([226, 198], 13, [words.tag]),
  ];
  return picture(328, 232, body.join(''), words.whole);
}
