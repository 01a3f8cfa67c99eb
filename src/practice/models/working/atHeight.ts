/** Work at height (W4): from what height a fall is guarded, what one ties off to, what one climbs. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';
import { edge, FALL_FT } from '../parts/sharedScenes.ts';

const wants = {
  height: 'whole',
  site: ['4', '5', '6'],
  above: 'whole',
  wind: 'whole',
  plate: ['25', '28'],
} as const;
type D = Drawn<typeof wants>;
/** 29 CFR 1926.1053(b)(1): side rails so far above the landing (from memory). */
const RAILS_IN = 36;

const ladder: Scene<D> = heldAgainst({
  seen: (d) => d.above,
  limit: () => RAILS_IN,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'in',
  habits: { footIsEnough: () => 12, ladderShort: () => 0 },
});
const lift: Scene<D> = heldAgainst({
  seen: (d) => d.wind,
  limit: (d) => Number(d.plate),
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'mph',
  habits: { onlyGusts: () => Infinity },
});

export const atHeight = scenesModel({
  wants,
  asks: 5,
  beside: () => ({ fallFt: FALL_FT, railsIn: RAILS_IN }),
  scenes: {
    edge: edge<D>(),
    ladder,
    lift,
    'tray-anchor': mustStop('harnessToTray'),
    'tray-step': mustStop('standsOnTray'),
    cover: mustStop('looseCover'),
    webbing: mustStop('cutWebbing'),
    leaning: mustStop('leansOut'),
    'strut-anchor': mustAsk('hooksAnything'),
    scaffold: mustAsk('climbsUntagged'),
    named: mayGo(),
    railed: mayGo(),
    'fixed-cover': mayGo(),
    'lift-moved': mayGo(),
  },
});
