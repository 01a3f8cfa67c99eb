/** Dropped objects (W6): tethers, pouches, the ground below, and the count of what went up. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  tool: 'decimal',
  tether: 'whole',
  zone: 'whole',
  person: 'whole',
  load: 'whole',
  sling: 'whole',
  up: 'whole',
  missing: ['0', '0', '1', '2'],
} as const;
type D = Drawn<typeof wants>;

const tether: Scene<D> = heldAgainst({
  seen: (d) => d.tool,
  limit: (d) => d.tether,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'lb',
  habits: { anyTether: () => Infinity },
});
const zone: Scene<D> = heldAgainst({
  seen: (d) => d.person,
  limit: (d) => d.zone,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'ft',
  habits: { tenFeetClear: () => 10, onlyShouts: () => 0 },
});
/** What the tag says is what may hang; that the sling breaks later is nobody's to use up. */
const sling: Scene<D> = heldAgainst({
  seen: (d) => d.load,
  limit: (d) => d.sling,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'lb',
  habits: { usesUpTheReserve: (d) => 5 * d.sling },
});
const count: Scene<D> = heldAgainst({
  seen: (d) => d.up - Number(d.missing),
  limit: (d) => d.up,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'tools',
  habits: { oneTurnsUp: (d) => d.up - 1, countsNot: () => 0 },
});

export const droppedObjects = scenesModel({
  wants,
  asks: 5,
  beside: (d) => ({ back: d.up - Number(d.missing) }),
  clear: (d) => Math.abs(d.person - d.zone) > 1,
  scenes: {
    tether,
    zone,
    sling,
    count,
    bucket: mustStop('openBucket'),
    plates: mustStop('looseInTray'),
    thrown: mustStop('throwsTool'),
    tape: mustStop('tapeDown'),
    strap: mustStop('strapLoose'),
    above: mustAsk('worksBelow'),
    pouch: mayGo(),
    barred: mayGo(),
    bagged: mayGo(),
    'sent-up': mayGo(),
  },
});
