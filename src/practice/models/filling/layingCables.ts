/** Laying cables (T12): the run released first, radius, fastening, free length, what a tie and a curve do to a cable. */
import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  turn: 'whole',
  need: 'whole',
  free: 'decimal',
  spaced: 'whole',
  stated: 'whole',
  feet: 'whole',
} as const;
type D = Drawn<typeof wants>;
/** NFPA 70, 2023, 392.30(B)(3). */
const FREE_FT = 6;

const turn: Scene<D> = heldAgainst({
  seen: (d) => d.turn,
  limit: (d) => d.need,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'in',
  habits: { bendsAnyway: () => 0 },
});
const free: Scene<D> = heldAgainst({
  seen: (d) => d.free,
  limit: () => FREE_FT,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'ft',
  habits: { hangsFree: () => Number.POSITIVE_INFINITY },
});
const fastened: Scene<D> = heldAgainst({
  seen: (d) => d.spaced,
  limit: (d) => d.stated,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'in',
  habits: { everyOther: () => Number.POSITIVE_INFINITY },
});

export const layingCables = scenesModel({
  wants,
  asks: 5,
  beside: () => ({ limit: FREE_FT }),
  clear: (d) =>
    Math.abs(d.turn - d.need) > 1 && Math.abs(d.free - FREE_FT) > 0.4 && Math.abs(d.spaced - d.stated) > 2,
  scenes: {
    turn,
    free,
    fastened,
    'ten-feet-open': mustStop('reelWaits'),
    'not-bonded': mustStop('reelWaits'),
    'tie-bites': mustStop('crushed'),
    bowstring: mustStop('tightRound'),
    'over-rung': mustStop('dragged'),
    'live-cables': mustAsk('movesLive'),
    'other-number': mustAsk('closeEnough'),
    released: mayGo(),
    'as-listed': mayGo(),
    'slack-left': mayGo(),
    rollers: mayGo(),
  },
});
