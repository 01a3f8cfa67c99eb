/** Saw and drill (W2): blade, guard, clamp, hands, and what the blade is told to turn at. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  teeth: ['14', '18', '24', '32'],
  wall: 'decimal',
  rpm: 'whole',
  most: 'whole',
  free: 'whole',
  freeMost: 'whole',
} as const;
type D = Drawn<typeof wants>;
/** At least so many teeth stand in the wall that is cut: common practice, no source. */
const LEAST_TEETH = 2;

const blade: Scene<D> = heldAgainst({
  seen: (d) => Number(d.teeth) * d.wall,
  limit: () => LEAST_TEETH,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'teeth',
  habits: { anyBlade: () => 0 },
});
const speed: Scene<D> = heldAgainst({
  seen: (d) => d.rpm,
  limit: (d) => d.most,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'rpm',
  habits: { fasterCuts: () => Infinity },
});
const overhang: Scene<D> = heldAgainst({
  seen: (d) => d.free,
  limit: (d) => d.freeMost,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'ft',
  habits: { handForStand: () => Infinity },
});

export const sawAndDrill = scenesModel({
  wants,
  asks: 5,
  beside: () => ({ leastTeeth: LEAST_TEETH }),
  clear: (d) => Math.abs(Number(d.teeth) * d.wall - LEAST_TEETH) > 0.1,
  scenes: {
    blade,
    speed,
    overhang,
    guard: mustStop('guardTied'),
    knee: mustStop('kneeForClamp'),
    coasting: mustStop('reachesIn'),
    cord: mustStop('tapedCord'),
    'one-hand': mustStop('oneHand'),
    stainless: mustStop('carbonOnStainless'),
    'wall-behind': mustAsk('drillsBlind'),
    structure: mustAsk('drillsSteel'),
    vise: mayGo(),
    stopped: mayGo(),
    'two-clamps': mayGo(),
    scanned: mayGo(),
  },
});
