/** A leg down the page: the bar of the unfolded run, turned; struts, cables, and what was set down on it. */
import type { ResolvedLeg } from '../../run/resolved.ts';
import type { ResolvedJoint } from '../../run/straight.ts';
import { inches } from '../../trade/length.ts';
import { Plan } from '../plan.ts';
import type { Point, Shape } from '../shapes.ts';
import { drawBar } from '../unfolded/bar.ts';
import type { TapChosen } from './given.ts';
import { type Across, PX_PER_INCH } from './sizes.ts';

/** Turned so that what ran across runs down: about the diagonal, the bar's axis at `x`, its beginning at `y`. */
function turned(shape: Shape, x: number, y: number): Shape {
  const at = ([along, over]: Point): Point => [x + over, y + along];
  switch (shape.kind) {
    case 'line':
      return { ...shape, from: at(shape.from), to: at(shape.to) };
    case 'polygon':
      return { ...shape, points: shape.points.map(at) };
    case 'rect':
    case 'cloud':
      return { ...shape, x: x + shape.y, y: y + shape.x, w: shape.h, h: shape.w };
    case 'circle':
      return { ...shape, at: at(shape.at) };
    case 'arrow':
      return { ...shape, at: at(shape.at), towardsDeg: 90 - shape.towardsDeg };
    case 'text':
      return { ...shape, at: at(shape.at) };
  }
}

/** The channel with its joints and what it meets, its axis at 0 and its beginning at 0. */
export function channelShapes(
  leg: ResolvedLeg,
  wide: number,
  names: ReadonlyMap<ResolvedJoint, string>,
): readonly Shape[] {
  const flat = new Plan();
  const to = inches(leg.length);
  const bar = {
    leg,
    row: 0,
    cell: { x: 0, w: to * PX_PER_INCH },
    from: 0,
    to,
    first: true,
    last: true,
    x: (at: number) => at * PX_PER_INCH,
  };
  drawBar({ plan: flat, bar, top: -wide / 2, high: wide, pxPerInch: PX_PER_INCH, names });
  return flat.shapes.map((shape) => turned(shape, 0, 0));
}

export const moved = (shape: Shape, x: number, y: number): Shape => {
  const at = ([px, py]: Point): Point => [px + x, py + y];
  switch (shape.kind) {
    case 'line':
      return { ...shape, from: at(shape.from), to: at(shape.to) };
    case 'polygon':
      return { ...shape, points: shape.points.map(at) };
    case 'rect':
    case 'cloud':
      return { ...shape, x: shape.x + x, y: shape.y + y };
    case 'circle':
    case 'arrow':
    case 'text':
      return { ...shape, at: at(shape.at) };
  }
};

interface Stands {
  readonly plan: Plan;
  readonly across: Across;
  /** Axis of the channel, and px of a place along the leg. */
  readonly x: number;
  readonly y: (at: number) => number;
}

/** Struts of the run as it stands: clamped filled, guided open, bearing a plumb leg crossed. */
export function drawSupports(leg: ResolvedLeg, { plan, across, x, y }: Stands): void {
  for (const { at, name, hold } of leg.supports) {
    const part = `support ${name}`;
    strut({ plan, across, x, y }, inches(at), 'thin', part);
    for (const side of [-1, 1]) {
      const edge = x + side * (across.wide / 2 + 4);
      const fill = hold === 'guide' ? 'sheet' : 'ink';
      plan.rect({ x: edge - 3, y: y(inches(at)) - 7, w: 6, h: 14 }, { pen: 'thin', fill, part });
      if (hold === 'load')
        plan.line('thin', [edge - 5, y(inches(at)) + 10], [edge + 5, y(inches(at)) + 10], part);
    }
  }
}

function strut({ plan, across, x, y }: Stands, at: number, pen: 'thin' | 'mark', part: string): void {
  plan.rect({ x: x - across.strut, y: y(at) - 4, w: 2 * across.strut, h: 8 }, { pen, fill: 'sheet', part });
}

/** What lies in the channel: a thin line a cable, no more than find room, and the barrier in a heavier one. */
export function drawCables(leg: ResolvedLeg, cables: number, { plan, across, x, y }: Stands): void {
  const shown = Math.min(cables, 3);
  const [top, foot] = [inches(leg.start.takeOut), inches(leg.length) - inches(leg.end.takeOut)].map(y) as [
    number,
    number,
  ];
  if (foot - top < 4) return;
  const barrier = leg.given.barrier === true;
  for (let i = 0; i < shown; i++) {
    const off = ((i + 1) / (shown + 1) - 0.5) * (across.wide - 4);
    plan.line('dimension', [x + off, top + 1], [x + off, foot - 1], `cables ${leg.leg}`);
  }
  if (barrier) plan.line('edge', [x, top + 1], [x, foot - 1], `barrier ${leg.leg}`);
}

/** What was set down on the leg, in paint. */
export const paint: Readonly<Record<string, (stands: Stands, at: number, part: string) => void>> = {
  support: (stands, at, part) => strut(stands, at, 'mark', part),
  splice: ({ plan, across, x, y }, at, part) => {
    const [w, h] = [across.wide + 12, 5 * 2 * PX_PER_INCH];
    plan.rect({ x: x - w / 2, y: y(at) - h / 2, w, h }, { pen: 'mark', part });
    plan.line('mark', [x - w / 2, y(at)], [x + w / 2, y(at)], part);
  },
  jumper: ({ plan, across, x, y }, at, part) => {
    const edge = x + across.wide / 2;
    const points: Point[] = [
      [edge - 4, y(at) - 13],
      [edge + 8, y(at) - 9],
      [edge + 11, y(at)],
      [edge + 8, y(at) + 9],
      [edge - 4, y(at) + 13],
    ];
    plan.polygon(points, { pen: 'mark', open: true, part });
    for (const end of [points[0], points.at(-1)] as Point[]) plan.circle(end, 3, { fill: 'mark', part });
  },
  anchor: ({ plan, across, x, y }, at, part) => {
    for (const side of [-1, 1]) {
      const edge = x + side * (across.wide / 2 + 5);
      plan.rect({ x: edge - 5, y: y(at) - 9, w: 10, h: 18 }, { fill: 'mark', part });
    }
  },
};

/** A fault is a paint mark across the channel at the part. */
const fault = ({ plan, across, x, y }: Stands, at: number, part: string) =>
  plan.line('mark', [x - across.wide / 2 - 8, y(at)], [x + across.wide / 2 + 8, y(at)], part);

export function drawChosen(chosen: readonly TapChosen[], stands: Stands): void {
  for (const { at, what } of chosen) {
    if (at !== null) (paint[what] ?? fault)(stands, at, `chosen ${what} ${at}`);
  }
}
