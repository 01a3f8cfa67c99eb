/** Bolts, washers, nuts, clamps by themselves, for exploded views. Sizes in inches of the usual shapes, not a maker's. */
import type { Plan } from '../plan.ts';
import type { Box, Point } from '../shapes.ts';

/** Where a loose part is drawn: the middle of its top, px to the inch. */
export interface Loose {
  readonly plan: Plan;
  readonly x: number;
  readonly y: number;
  readonly px: number;
}

const box = ({ x, px }: Loose, w: number, y: number, h: number): Box => ({
  x: x - (w * px) / 2,
  y,
  w: w * px,
  h: h * px,
});
const solid = ({ plan }: Loose, b: Box, part: string) => plan.rect(b, { fill: 'sheet', pen: 'thin', part });

interface Bolt {
  readonly diameter: number;
  readonly length: number;
  readonly head: 'round' | 'hex';
}

/** Head above, thread below. */
export function bolt(at: Loose, { diameter, length, head }: Bolt, part: string): Box {
  const { plan, x, y, px } = at;
  const [w, h] = [Math.max(diameter * 1.8, 0.5), Math.max(diameter * 0.65, 0.24)];
  if (head === 'round') {
    const points = Array.from({ length: 11 }, (_, i): Point => {
      const a = Math.PI + (Math.PI * i) / 10;
      return [x + (Math.cos(a) * w * px) / 2, y + h * px + Math.sin(a) * h * px];
    });
    plan.polygon(points, { fill: 'sheet', pen: 'thin', part });
  } else {
    solid(at, box(at, w, y, h), part);
    for (const k of [-0.25, 0.25]) plan.line('thin', [x + k * w * px, y], [x + k * w * px, y + h * px]);
  }
  const shank = box(at, diameter, y + h * px, length);
  solid(at, shank, part);
  // The thread: a dozen short lines at most.
  const step = Math.max(3, 0.14 * px);
  for (let t = shank.y + shank.h - 3; t > shank.y + shank.h * 0.35; t -= step) {
    plan.line('dimension', [shank.x, t], [shank.x + shank.w, t - 1.5]);
  }
  const size = { x: x - (w * px) / 2, y, w: w * px, h: (h + length) * px };
  plan.keep(size);
  return size;
}

export function washer(at: Loose, outside: number, part: string): Box {
  const b = { ...box(at, outside, at.y, 0.1), h: Math.max(3.5, 0.1 * at.px) };
  solid(at, b, part);
  at.plan.keep(b);
  return b;
}

/** A hexagon nut; with a flange below or above it where it has one. */
export function nut(at: Loose, diameter: number, part: string, flange: 'none' | 'above' = 'none'): Box {
  const { plan, x, px } = at;
  const [w, h] = [Math.max(diameter * 1.7, 0.5), Math.max(diameter * 0.85, 0.3)];
  const b = box(at, w, at.y, h);
  solid(at, b, part);
  for (const k of [-0.25, 0.25]) plan.line('thin', [x + k * w * px, b.y], [x + k * w * px, b.y + b.h]);
  if (flange === 'above') solid(at, { ...box(at, w * 1.5, at.y, 0.08), h: 3.5 }, part);
  plan.keep(b);
  return b;
}

/** The nut that turns home in the slot of a strut: corners cut, two grooves above. */
export function channelNut(at: Loose, part: string): Box {
  const { plan, x, y, px } = at;
  const [w, h, c] = [0.65 * px, 0.42 * px, 0.14 * px];
  plan.polygon(
    [
      [x - w, y],
      [x + w, y],
      [x + w, y + h - c],
      [x + w - c, y + h],
      [x - w + c, y + h],
      [x - w, y + h - c],
    ],
    { fill: 'sheet', pen: 'thin', part },
  );
  for (const k of [-0.72, 0.72]) plan.line('edge', [x + k * w, y], [x + k * w, y + 0.12 * px]);
  const b = { x: x - w, y, w: 2 * w, h };
  plan.keep(b);
  return b;
}

/** Clamp or guide beside a channel, its hook towards it; `y` is the hook's top. */
export function clampAlone(
  at: Loose,
  side: -1 | 1,
  { high, reach, thick, hook }: Readonly<Record<'high' | 'reach' | 'thick' | 'hook', number>>,
  part: string,
): Box {
  const { plan, x, y } = at;
  // x is the riser's inner face.
  const p = (k: number, d: number): Point => [x + side * k, y + d];
  plan.polygon(
    [
      p(-hook, 0),
      p(thick, 0),
      p(thick, high - thick),
      p(reach, high - thick),
      p(reach, high),
      p(0, high),
      p(0, thick),
      p(-hook, thick),
    ],
    { fill: 'sheet', pen: 'thin', part },
  );
  const b = { x: Math.min(x - side * hook, x + side * reach), y, w: hook + reach, h: high };
  plan.keep(b);
  return b;
}
