/** Hazardous (classified) areas (W8): gas, alarm, what may be carried in, and which area it is. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';
import { gas } from '../parts/sharedScenes.ts';

const wants = {
  gas: 'decimal',
  gasLimit: ['5', '10'],
  ago: 'whole',
  every: ['30', '45', '60'],
  inch: ['1', '2', '3'],
} as const;
type D = Drawn<typeof wants>;

const tested: Scene<D> = heldAgainst({
  seen: (d) => d.ago,
  limit: (d) => Number(d.every),
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'min',
  habits: { testedThisMorning: () => Infinity },
});

export const classifiedArea = scenesModel({
  wants,
  asks: 5,
  clear: (d) => Math.abs(d.gas - Number(d.gasLimit)) > 0.4 && Math.abs(d.ago - Number(d.every)) > 1,
  scenes: {
    gas: gas<D>(),
    tested,
    alarm: mustStop('finishFirst'),
    phone: mustStop('phoneInArea'),
    grinder: mustStop('grinderQuick'),
    lamp: mustStop('unmarkedLamp'),
    silent: mustAsk('walksBackIn'),
    sign: mustAsk('takesTheDrawing'),
    cable: mustAsk('anyCable'),
    drill: mustStop('drillsHere'),
    'hand-saw': mayGo(),
    marked: mayGo(),
    locker: mayGo(),
    'given-free': mayGo(),
  },
});
