/**
 * An offset drawn: channel along, up a slope between two fittings, and along again, its angle as it is and its lengths not
 * to scale. What the learner is to find stands as a question mark.
 */
import { aligned } from '../../../drawing/details/aligned.ts';
import { Plan, SIZES } from '../../../drawing/plan.ts';
import type { Point } from '../../../drawing/shapes.ts';
import { spoken } from '../../../drawing/spoken.ts';
import { render } from '../../../drawing/svg.ts';
import type { Drawing, Form, How } from '../../../drawing/types.ts';
import { tangent } from '../../../trade/degrees.ts';
import { formatLength, type Ticks } from '../../../trade/length.ts';

export interface Sketch {
  /** As it is drawn; lettered only where `angle` says so. */
  readonly angleDeg: number;
  readonly angle: 'given' | 'asked';
  /** From centre line to centre line. */
  readonly offset: Ticks;
  /** Along the run, from working point to working point; left out, it is not shown. */
  readonly run?: Ticks;
}

const WIDTH: Readonly<Record<Form, number>> = { phone: 328, desk: 480, paper: 480 };
/** Half the channel, the fitting from its working point to its face, the room at the edge, px. */
const [HALF, FACE, EDGE] = [11, 34, 16];
const TALLEST = 112;
/** Room for the offset's dimension. */
const RIGHT = 80;

export function offsetSketch({ angleDeg, angle, offset, run }: Sketch, how: How): Drawing {
  const { form, speak } = how;
  const width = WIDTH[form];
  const rise = Math.min(TALLEST, 0.4 * width * tangent(angleDeg));
  const across = rise / tangent(angleDeg);
  const top = 40;
  const low = top + rise;
  const x1 = (width - RIGHT - across) / 2;
  const points: readonly Point[] = [
    [EDGE, low],
    [x1, low],
    [x1 + across, top],
    [width - RIGHT, top],
  ];
  const plan = new Plan();
  const [, first, second, end] = points as readonly [Point, Point, Point, Point];
  const slope = unit(first, second);
  band(plan, points);
  for (const [from, to] of pairs(points)) plan.line('centre', from, to);
  for (const [point, way] of [
    [first, [-1, 0]],
    [first, slope],
    [second, [-slope[0], -slope[1]]],
    [second, [1, 0]],
  ] as const)
    face(plan, along(point, way, FACE), way);
  for (const point of [first, second]) plan.circle(point, 3.5, { fill: 'ink', part: 'working point' });

  // The offset at the right, its lower line drawn out to it.
  plan.line('thin', [first[0] + FACE + 30, low], [end[0] + 8, low]);
  aligned(plan, [end[0], low], [end[0], top], formatLength(offset), {
    normal: [1, 0],
    off: 32,
    from: 0,
    part: 'offset',
  });
  if (run !== undefined)
    aligned(plan, [first[0], low], [second[0], low], formatLength(run), {
      normal: [0, 1],
      off: 40,
      from: HALF,
      part: 'run',
    });
  const middle = along(first, slope, Math.hypot(across, rise) / 2);
  plan.text([middle[0] - 16, middle[1] - 18], speak({ say: 'offsets.cutTo' }), {
    anchor: 'end',
    ground: 'sheet',
  });
  // Far enough along to stand clear below the slope.
  if (angle === 'given')
    plan.text([first[0] + 16 + 38 / tangent(angleDeg), low - 14], `${angleDeg}°`, {
      anchor: 'start',
      size: SIZES.text,
    });
  const words = speak({
    say: run === undefined ? 'offsets.sketchWords' : 'offsets.slopeWords',
    values: {
      offset: spoken(offset, speak),
      ...(angle === 'given' ? { angle: String(angleDeg) } : {}),
      ...(run === undefined ? {} : { run: spoken(run, speak) }),
    },
  });
  const height = low + (run === undefined ? 32 : 76);
  return render({ view: 'piece', width, height, plan, words, zones: {} }, how);
}

export const sketchSays = ['offsets.cutTo'];

const along = ([x, y]: Point, [dx, dy]: Point, by: number): Point => [x + dx * by, y + dy * by];
function unit([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(bx - ax, by - ay);
  return [(bx - ax) / length, (by - ay) / length];
}
const pairs = (points: readonly Point[]) =>
  points.slice(1).map((to, i): readonly [Point, Point] => [points[i] as Point, to]);

/** The two walls along the centre line, mitred where it turns. */
function band(plan: Plan, points: readonly Point[]): void {
  const ways = pairs(points).map(([a, b]) => unit(a, b));
  const normal = (i: number): Point => {
    const [dx, dy] = ways[Math.max(0, Math.min(i, ways.length - 1))] as Point;
    return [dy, -dx];
  };
  const wall = (side: 1 | -1) =>
    points.map(([x, y], i): Point => {
      const [before, behind] = [normal(i - 1), normal(i)];
      const k = (side * HALF) / (1 + before[0] * behind[0] + before[1] * behind[1]);
      return [x + (before[0] + behind[0]) * k, y + (before[1] + behind[1]) * k];
    });
  plan.polygon([...wall(1), ...wall(-1).reverse()], { pen: 'edge', fill: 'galv', part: 'channel' });
}

/** Where a fitting ends and channel goes in: a line square across. */
function face(plan: Plan, at: Point, [dx, dy]: Point): void {
  plan.line(
    'edge',
    [at[0] - dy * (HALF + 4), at[1] + dx * (HALF + 4)],
    [at[0] + dy * (HALF + 4), at[1] - dx * (HALF + 4)],
    'face',
  );
}
