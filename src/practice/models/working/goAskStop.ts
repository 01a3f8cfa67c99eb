/** Go, ask or stop: eight scenes from every kind of work on the tray. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';
import { barePlanks, edge, FALL_FT, gas, SPARK_FT, watchLeaves } from '../parts/sharedScenes.ts';

const wants = {
  height: 'whole',
  site: ['4', '5', '6'],
  bare: 'whole',
  watch: ['30', '45', '60'],
  stood: 'whole',
  gas: 'decimal',
  gasLimit: ['5', '10'],
  off: 'whole',
  torque: 'whole',
  stated: 'whole',
  span: 'whole',
  spanMost: ['6', '8'],
} as const;
type D = Drawn<typeof wants>;

/** Within a foot-pound it counts as met: common practice, no source. */
const torque: Scene<D> = heldAgainst({
  seen: (d) => d.torque,
  limit: (d) => d.stated,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'ft-lb',
  habits: { tightByFeel: () => 0 },
});
const span: Scene<D> = heldAgainst({
  seen: (d) => d.span,
  limit: (d) => Number(d.spanMost),
  beyond: 'above',
  atLimit: 'holds',
  right: 'ask',
  unit: 'ft',
  habits: { ladderSpan: () => 8, spanByEye: () => Infinity },
});

export const goAskStop = scenesModel({
  wants,
  asks: 8,
  beside: () => ({ fallFt: FALL_FT, sparkFt: SPARK_FT }),
  clear: (d) =>
    Math.abs(d.bare - SPARK_FT) > 1 &&
    Math.abs(d.gas - Number(d.gasLimit)) > 0.4 &&
    d.torque <= d.stated + 2 &&
    d.torque !== d.stated - 1,
  scenes: {
    edge: edge<D>(),
    'bare-planks': barePlanks<D>(),
    'watch-leaves': watchLeaves<D>(),
    gas: gas<D>(),
    torque,
    span,
    alarm: mustStop('finishFirst'),
    'tray-anchor': mustStop('harnessToTray'),
    'tray-step': mustStop('standsOnTray'),
    guard: mustStop('guardTied'),
    unknown: mustAsk('movesUnknownCable'),
    conflict: mustAsk('bendsRound'),
    revision: mustAsk('takesNewer'),
    'air-tube': mustStop('tubeInTray'),
    dead: mayGo(),
    pouch: mayGo(),
    named: mayGo(),
  },
});
