/** Support before opening (T15): a splice is to be opened; what hangs on it, who stands below, whose leave it takes. */
import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  free: 'whole',
  freeMost: ['12', '18', '24'],
  stand: 'whole',
  feet: 'whole',
  tray: 'decimal',
  cables: 'decimal',
} as const;
type D = Drawn<typeof wants>;

/** What is left to hang when the joint is open. */
const hangs: Scene<D> = heldAgainst({
  seen: (d) => d.free,
  limit: (d) => Number(d.freeMost),
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'in',
  habits: { holdsByItself: () => Infinity },
});
/** Half of the span's weight, channel and cables, comes on the stand. */
const onStand = (d: D, cables: number) => ((d.tray + cables) * d.feet) / 2;
const stand: Scene<D> = {
  reply: (d, habit) => (onStand(d, habit === 'cablesForgotten' ? 0 : d.cables) > d.stand ? 'stop' : 'go'),
  habits: ['cablesForgotten'],
  against: (d) => [`${Number(onStand(d, d.cables).toFixed(1))} lb`, `${d.stand} lb`],
};

export const supportBeforeOpening = scenesModel({
  wants,
  asks: 5,
  clear: (d) => d.free !== Number(d.freeMost) && Math.abs(onStand(d, d.cables) - d.stand) > 1.5,
  scenes: {
    hangs,
    stand,
    'one-side': mustStop('oneSideHeld'),
    shoulder: mustStop('heldByHand'),
    below: mustStop('peopleBelow'),
    drop: mustStop('dropReleased'),
    rail: mustAsk('railUnasked'),
    live: mustAsk('cablesUnasked'),
    own: mustAsk('closesOwn'),
    widen: mustStop('jointsWidened'),
    'both-sides': mayGo(),
    'seen-by-other': mayGo(),
    'to-inspector': mayGo(),
    'rail-allowed': mayGo(),
  },
});
