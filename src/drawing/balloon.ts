/** Numbered balloons: each finds a free place near its part, and says in which zone it stands. */
import { type Fault, GivenError } from '../trade/given.ts';
import { type Frame, inside, zoneOf } from './frame.ts';
import { boxOf, type Plan } from './plan.ts';
import { type Box, overlaps, type Point, within } from './shapes.ts';
import type { Balloon, Form } from './types.ts';

/** A part a balloon may point at: where its leader ends, and the side it likes to stand on (degrees, 0 right, 90 down). */
export interface Target {
  readonly at: Point;
  readonly likes: number;
}

const RADIUS: Readonly<Record<Form, number>> = { phone: 14, desk: 15, paper: 15 };

/**
 * Draws balloons with leaders that end in a dot on the part.
 *
 * @returns the zone of each balloon by its number
 * @throws {GivenError} a balloon at a part that this view does not show
 */
export function drawBalloons(
  plan: Plan,
  frame: Frame,
  form: Form,
  balloons: readonly Balloon[],
  targets: Readonly<Record<string, Target>>,
): Record<string, string> {
  const faults: Fault[] = balloons.flatMap(({ at }, i) =>
    Object.hasOwn(targets, at)
      ? []
      : [
          {
            field: `balloons[${i}].at`,
            value: at,
            message: 'the view shows no such part',
            todo: `point at one of ${Object.keys(targets).join(' ')}`,
          },
        ],
  );
  if (faults.length > 0) throw new GivenError(faults);
  const r = RADIUS[form];
  const zones: Record<string, string> = {};
  const leaders: [Point, Point][] = [];
  for (const { number, at } of balloons) {
    const target = targets[at] as Target;
    const centre = freePlace(plan, inside(frame), target, r, leaders);
    leaders.push([centre, target.at]);
    const [dx, dy] = [target.at[0] - centre[0], target.at[1] - centre[1]];
    const length = Math.hypot(dx, dy);
    const rim: Point = [centre[0] + (dx / length) * r, centre[1] + (dy / length) * r];
    plan.line('dimension', rim, target.at, `leader ${number}`);
    plan.circle(target.at, 2.8, { fill: 'ink' });
    plan.circle(centre, r, { fill: 'sheet', pen: 'thin', part: `balloon ${number}` });
    plan.text([centre[0], centre[1] + 5.5], number, { part: `balloon ${number}` });
    plan.keep({ x: centre[0] - r, y: centre[1] - r, w: 2 * r, h: 2 * r });
    zones[number] = zoneOf(frame, centre);
  }
  return zones;
}

/** The nearest place, on the side liked if it can be, that covers nothing and whose leader crosses no text. */
function freePlace(
  plan: Plan,
  room: Box,
  { at, likes }: Target,
  r: number,
  leaders: readonly (readonly [Point, Point])[],
): Point {
  const texts = plan.texts.map(boxOf);
  const full = [...texts, ...plan.taken];
  let best: { readonly place: Point; readonly cost: number } | undefined;
  for (let away = r + 18; away <= 190; away += 8) {
    for (let turn = 0; turn <= 180; turn += 10) {
      for (const side of [1, -1]) {
        const angle = ((likes + side * turn) * Math.PI) / 180;
        const place: Point = [at[0] + away * Math.cos(angle), at[1] + away * Math.sin(angle)];
        const cost = away + turn * 0.9;
        if (best !== undefined && cost >= best.cost) continue;
        const box = { x: place[0] - r, y: place[1] - r, w: 2 * r, h: 2 * r };
        if (!within(box, room, 4) || full.some((b) => overlaps(box, b, 4))) continue;
        if (texts.some((b) => crosses(place, at, b))) continue;
        if (leaders.some(([a, b]) => meet(place, at, a, b))) continue;
        best = { place, cost };
      }
    }
  }
  // With no free place left the balloon stands on its part: seen to be wrong, and the zone still holds.
  return best?.place ?? [at[0], at[1] - r];
}

function crosses(a: Point, b: Point, box: Box): boolean {
  const { x, y, w, h } = box;
  const corners: Point[] = [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
  return corners.some((c, i) => meet(a, b, c, corners[(i + 1) % 4] as Point));
}

/** Whether two segments cross. */
function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, s: Point) =>
    Math.sign((q[0] - p[0]) * (s[1] - p[1]) - (q[1] - p[1]) * (s[0] - p[0]));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}
