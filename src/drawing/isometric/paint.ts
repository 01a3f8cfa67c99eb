/** A scene onto the sheet: its plates in order, and ink in the room for labels. */
import type { Vec } from '../../run/vector.ts';
import type { Plan } from '../plan.ts';
import type { Room } from '../room.ts';
import type { Point } from '../shapes.ts';
import type { Break, Scene } from './scene.ts';
import type { Plate } from './solids.ts';

export type Place = (p: Vec) => Point;

export function paint(
  plan: Plan,
  room: Room,
  { solids, supports }: Pick<Scene, 'solids' | 'supports'>,
  place: Place,
): void {
  for (const { plates, axis, radius, breaks } of solids) {
    for (const one of breaks) breakBehind(plan, one, place);
    for (const plate of plates) paintPlate(plan, plate, place);
    room.ink(place(axis[0]), place(axis[1]), radius * 0.85, 2);
  }
  for (const { ends } of supports) room.ink(place(ends[0]), place(ends[1]), 2);
}

function paintPlate(plan: Plan, { points, fill, edges, pen = 'thin', part }: Plate, place: Place): void {
  const [first] = edges;
  // One line all round is drawn with the face itself.
  const round = first !== undefined && edges.length === 1 && first.length === points.length + 1;
  if (points.length > 0 && fill !== undefined) {
    plan.polygon(points.map(place), {
      fill,
      ...(round ? { pen } : {}),
      ...(part === undefined ? {} : { part }),
    });
  }
  if (round) return;
  for (const edge of edges)
    plan.polygon(edge.map(place), { pen, open: true, ...(part === undefined ? {} : { part }) });
}

function breakBehind(plan: Plan, { from, to, radius }: Break, place: Place): void {
  const [a, b] = [place(from), place(to)];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (long < 1) return;
  const [x, y] = [((a[1] - b[1]) / long) * radius, ((b[0] - a[0]) / long) * radius];
  plan.polygon(
    [
      [a[0] + x, a[1] + y],
      [b[0] + x, b[1] + y],
      [b[0] - x, b[1] - y],
      [a[0] - x, a[1] - y],
    ],
    { fill: 'sheet', part: 'break' },
  );
}
