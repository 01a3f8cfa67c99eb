/** A route of three legs drawn by its working points, as an isometric: what is cut is not on it. */
import type { Drawing, How } from '../../../drawing/types.ts';
import { drawRun } from '../../../drawing/views.ts';
import { resolveRun } from '../../../run/resolve.ts';
import type { ResolvedRun } from '../../../run/resolved.ts';
import type { Direction, Leg, Start } from '../../../run/types.ts';
import { TRADE_USUAL } from '../../../run/usual.ts';
import type { Ticks } from '../../../trade/length.ts';
import type { World } from '../../model.ts';

/** How far each fitting turns the route, in degrees; a tee by its branch. */
const TURN = { 'elbow-90': 90, 'elbow-45': 45, tee: 90 } as const;
type Flat = keyof typeof TURN;

export interface FlatRoute {
  readonly width: string;
  readonly start: Start;
  readonly lengths: readonly [Ticks, Ticks, Ticks];
  /** East at first; left at the first fitting, right or down at the second. */
  readonly fittings: readonly [Flat, Flat | 'outside-90'];
}

const COMPASS: Readonly<Record<number, Direction>> = { 0: 'N', 90: 'E', 180: 'S', 270: 'W' };
const heading = (azimuthDeg: number): Direction => COMPASS[azimuthDeg] ?? { azimuthDeg, slopeDeg: 0 };

export function resolvedRoute(
  { width, start, lengths, fittings: [first, second] }: FlatRoute,
  world: World,
): ResolvedRun {
  const middle = 90 - TURN[first];
  const last = second === 'outside-90' ? 'D' : heading(middle + TURN[second]);
  const [one, two, three] = lengths;
  const arm = (from: string, azimuthDeg: number, length: Ticks): Leg => ({
    id: `L${from === 'L1:right' ? 4 : 5}`,
    from,
    fitting: `${width}-tee`,
    dir: heading(azimuthDeg),
    length,
  });
  // The other arm of a tee, so that it is seen to be one.
  const arms = [
    ...(first === 'tee' ? [arm('L1:right', middle + 180, one)] : []),
    ...(second === 'tee' ? [arm('L2:left', (middle + 270) % 360, three)] : []),
  ];
  return resolveRun(
    {
      v: 1,
      tray: width,
      start,
      legs: [
        { id: 'L1', from: 'start', fitting: null, dir: 'E', length: one },
        {
          id: 'L2',
          from: first === 'tee' ? 'L1:left' : 'L1',
          fitting: `${width}-${first}`,
          dir: heading(middle),
          length: two,
        },
        {
          id: 'L3',
          from: second === 'tee' ? 'L2:right' : 'L2',
          fitting: `${width}-${second}`,
          dir: last,
          length: three,
        },
        ...arms,
      ],
      ends: ['L3', ...arms.map(({ id }) => id)].map((leg) => ({ leg, kind: 'free', joint: 'free' })),
    },
    world.catalogue,
    // Draws and keys are fixed for ever: no paper of a site may change them.
    TRADE_USUAL,
  );
}

export function drawRoute(route: FlatRoute, world: World, how: How): readonly Drawing[] {
  const { tables, catalogue } = world;
  return drawRun(resolvedRoute(route, world), { tables, catalogue, views: ['isometric'] }, how);
}
