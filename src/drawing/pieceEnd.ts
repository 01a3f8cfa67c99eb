/** The end of a piece and what it meets: sleeve, plate, socket, wall, or nothing. Each is told apart by its lines. */
import type { ResolvedJoint } from '../run/straight.ts';
import type { Meets } from './meets.ts';
import type { Plan } from './plan.ts';

interface Place {
  /** Where the tape stops. */
  readonly edge: number;
  /** Towards what the piece meets. */
  readonly way: -1 | 1;
  readonly bar: number;
  readonly high: number;
  readonly stub: number;
  readonly px: (length: number) => number;
}

export function drawPieceEnd(plan: Plan, meets: Meets, place: Place): void {
  const { joint, face, end } = meets;
  if (joint?.kind === 'socketed') sleeve(plan, meets, place);
  else if (joint?.kind === 'butt') plate(plan, meets, place);
  else if (end.kind === 'socketed') socket(plan, meets, place);
  else if (end.kind === 'butt') wall(plan, place);
  else {
    plan.line('edge', [place.edge, place.bar], [place.edge, place.bar + place.high], 'free end');
    if (face?.kind === 'instrument') instrument(plan, place);
  }
}

const between = (a: number, b: number) => ({ x: Math.min(a, b), w: Math.abs(b - a) });

/** The channel beyond a joint, going on past a break. */
function neighbour(plan: Plan, from: number, { way, bar, high, stub }: Place): void {
  const to = from + way * stub;
  plan.rect({ ...between(from, to), y: bar, h: high }, { fill: 'sheet', part: 'neighbour' });
  for (const y of [bar, bar + high]) plan.line('edge', [from, y], [to, y]);
  plan.breakLine(to, bar, bar + high);
}

/** Where the middle of a sleeve stands, from the edge that the piece meets; its gap is drawn larger than it is. */
export function sleeveMiddle(
  { joint, end }: Meets,
  { edge, way, px }: Pick<Place, 'edge' | 'way' | 'px'>,
): number {
  if (joint?.kind !== 'socketed') return edge;
  return edge + way * (px(end.insertion) + drawnGap(joint, px) / 2);
}

const drawnGap = ({ opening }: ResolvedJoint, px: Place['px']) =>
  Math.max(opening === 0 ? 0 : 3, px(opening));

function sleeve(plan: Plan, meets: Meets, place: Place): void {
  const { joint, end } = meets;
  const { edge, way, bar, high, px } = place;
  if (joint === undefined) return;
  const far = edge + way * px(joint.length);
  neighbour(plan, far, place);
  plan.rect(
    { ...between(edge, far), y: bar - 6, h: high + 12 },
    { fill: 'sheet', pen: 'edge', part: 'sleeve' },
  );
  const own = edge + way * px(end.insertion);
  const other = own + way * drawnGap(joint, px);
  for (const y of [bar, bar + high]) {
    plan.line('hidden', [edge, y], [own, y]);
    plan.line('hidden', [other, y], [far, y]);
  }
  plan.line('hidden', [own, bar], [own, bar + high], 'channel end');
  plan.line('hidden', [other, bar], [other, bar + high]);
  const middle = sleeveMiddle(meets, place);
  plan.line('centre', [middle, bar - 16], [middle, bar + high + 16]);
}

/** Two channel ends, a plate under both seen by its edge. */
function plate(plan: Plan, { joint }: Meets, place: Place): void {
  const { edge, way, bar, high, px } = place;
  if (joint === undefined) return;
  const gap = joint.opening === 0 ? 0 : Math.max(4, px(joint.opening));
  neighbour(plan, edge + way * gap, place);
  plan.line('edge', [edge, bar - 1], [edge, bar + high], 'channel end');
  if (gap > 0) plan.line('edge', [edge + way * gap, bar], [edge + way * gap, bar + high]);
  const half = px(joint.length) / 2;
  const middle = edge + (way * gap) / 2;
  plan.rect(
    { x: middle - half, y: bar + high + 1.5, w: 2 * half, h: 5 },
    { fill: 'galv2', pen: 'thin', part: 'plate' },
  );
}

/** The socket of a ladder tray, tray or instrument: the channel goes in, its end hidden. */
function socket(plan: Plan, { end }: Meets, place: Place): void {
  const { edge, way, bar, high, px, stub } = place;
  const own = edge + way * px(end.insertion);
  const far = own + way * (stub * 0.6 + 8);
  plan.rect({ ...between(edge, far), y: bar - 9, h: high + 18 }, { fill: 'galv2', part: 'socket' });
  plan.line('edge', [edge, bar - 9], [edge, bar + high + 9]);
  for (const y of [bar - 9, bar + high + 9]) plan.line('edge', [edge, y], [far, y]);
  plan.breakLine(far, bar - 9, bar + high + 9);
  for (const y of [bar, bar + high]) plan.line('hidden', [edge, y], [own, y]);
  plan.line('hidden', [own, bar], [own, bar + high], 'channel end');
}

/** The channel stands against a face. */
function wall(plan: Plan, { edge, way, bar, high }: Place): void {
  plan.line('edge', [edge, bar], [edge, bar + high], 'channel end');
  const box = { ...between(edge + way * 2, edge + way * 14), y: bar - 16, h: high + 32 };
  plan.hatch(box, 'up');
  plan.line('edge', [edge + way * 2, box.y], [edge + way * 2, box.y + box.h], 'wall');
}

function instrument(plan: Plan, { edge, way, bar, high, stub }: Place): void {
  const r = Math.min(12, stub * 0.5);
  plan.circle([edge + way * (r + 4), bar + high / 2], r, { pen: 'thin', fill: 'sheet', part: 'instrument' });
}
