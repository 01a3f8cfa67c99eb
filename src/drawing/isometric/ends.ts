/** What stands at the run's ends: ladder or other tray, as a stub across the channel; a cap on a free end. */
import { cross, minus, UP, type Vec } from '../../run/vector.ts';
import { station } from './fittings.ts';
import type { DrawnLeg } from './route.ts';
import type { Sizes } from './sizes.ts';
import { channel, endPlate, type Plate, type Solid, type Station } from './solids.ts';
import { nearness, off, seen, unitOr } from './space.ts';

/** A ladder or tray that the channel leaves or meets: two rails, rungs or a floor between them. */
export function stub(
  kind: 'ladder' | 'tray',
  drawn: DrawnLeg,
  side: 'start' | 'end',
  { stub: size }: Sizes,
): Solid & { readonly label: Vec } {
  const { frame, plumb } = drawn.leg;
  const outwards = side === 'start' ? minus(frame.along) : frame.along;
  const at = station(drawn, side === 'start' ? 0 : drawn.length).at;
  // It runs level, across the channel; from a plumb leg it lies to the back of it.
  const axis = plumb ? unitOr(cross(frame.open, UP), frame.left) : unitOr(cross(frame.along, UP), frame.left);
  const across = plumb ? minus(frame.open) : unitOr([outwards[0], outwards[1], 0], outwards);
  const { half, wide, high } = size;
  const level = plumb && outwards[2] > 0 ? 0 : -high * 0.2;
  const corner = (a: number, x: number, z: number): Vec =>
    off(off(off(at, axis, a), across, x), UP, z + level);
  const rail = (x: number): Plate => {
    const points = [corner(-half, x, 0), corner(half, x, 0), corner(half, x, high), corner(-half, x, high)];
    return { points, fill: 'galv', edges: [[...points, points[0] as Vec]], part: side };
  };
  const bars: Plate[] = [];
  if (kind === 'ladder') {
    const step = half / 3.2;
    for (let a = -half + step * 0.7; a < half; a += step) {
      const t = step * 0.09 + 0.6;
      const points = [
        corner(a - t, 0, high * 0.35),
        corner(a - t, wide, high * 0.35),
        corner(a + t, wide, high * 0.35),
        corner(a + t, 0, high * 0.35),
      ];
      bars.push({ points, fill: 'sheet', edges: [[...points, points[0] as Vec]], part: side });
    }
  } else {
    const points = [corner(-half, 0, 0), corner(half, 0, 0), corner(half, wide, 0), corner(-half, wide, 0)];
    bars.push({
      points,
      fill: 'sheet',
      edges: [
        [points[3] as Vec, points[0] as Vec],
        [points[1] as Vec, points[2] as Vec],
      ],
      part: side,
    });
  }
  const [first, second] = [rail(0), rail(wide)];
  const farther = nearness(across) > 0 ? [first, second] : [second, first];
  const [a, b] = farther as [Plate, Plate];
  return {
    plates: [a, ...bars, b],
    axis: [corner(-half, wide / 2, high / 2), corner(half, wide / 2, high / 2)],
    radius: wide * 0.55 + high * 0.4,
    label: corner(-half * 0.6, wide / 2, high),
  };
}

/** Plates at a face of the first or a last leg: a cap, a flange, the sleeve of an expansion joint. */
export function facePlates(
  drawn: DrawnLeg,
  side: 'start' | 'end',
): { readonly behind: readonly Plate[]; readonly front: readonly Plate[] } {
  const face = drawn.leg[side];
  const at = side === 'start' ? 0 : drawn.length;
  const here = station(drawn, at);
  const outwards = side === 'start' ? minus(drawn.leg.frame.along) : drawn.leg.frame.along;
  const none = { behind: [], front: [] };
  if (face.joint === 'expansion') {
    const inwards = side === 'start' ? 7 : -7;
    return {
      behind: [],
      front: sleeve(station(drawn, Math.min(at, at + inwards)), station(drawn, Math.max(at, at + inwards))),
    };
  }
  if (face.kind !== 'free') return none;
  const plate = { ...endPlate(here, face.joint === 'butt' ? 4 : 0.5), part: `${side} cap` };
  return seen(outwards) ? { behind: [], front: [plate] } : { behind: [plate], front: [] };
}

/** A sleeve round the channel between two stations. */
export function sleeve(a: Station, b: Station, part?: string): Plate[] {
  const grown = (s: Station): Station => ({
    ...s,
    at: off(s.at, s.frame.open, -1),
    half: s.half + 1.2,
    deep: s.deep + 1.8,
  });
  return channel(grown(a), grown(b), { ends: [true, true], fill: 'sheet', part });
}
