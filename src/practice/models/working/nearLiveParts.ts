/** Near live parts (W7): the boundary that a qualified person has set, and everything long or loose beside it. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  boundary: ['42', '48', '60'],
  reach: 'whole',
  stand: 'whole',
  rod: 'whole',
  line: 'whole',
} as const;
type D = Drawn<typeof wants>;
/** 29 CFR 1910.333(c)(3)(iii)(A): anything with parts that can be raised, an aerial lift too, near a line up to 50 kV. */
const LINE_FT = 10;

const boundary: Scene<D> = heldAgainst({
  seen: (d) => d.reach,
  limit: (d) => Number(d.boundary),
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'in',
  habits: { leastOfTheTable: () => 42, armsLength: () => 20 },
});
/** The end of the rod counts, not the feet of the one who carries it. */
const rod: Scene<D> = {
  reply: ({ stand, rod: long, boundary: limit }, habit) =>
    stand - (habit === 'feetNotRod' ? 0 : long) < Number(limit) ? 'stop' : 'go',
  habits: ['feetNotRod'],
  against: ({ stand, rod: long, boundary: limit }) => [`${stand} - ${long} in`, `${limit} in`],
};
const line: Scene<D> = heldAgainst({
  seen: (d) => d.line,
  limit: () => LINE_FT,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'ft',
  habits: { sixFeetFromLine: () => 6, watchesTheLine: () => 0 },
});

export const nearLiveParts = scenesModel({
  wants,
  asks: 4,
  beside: () => ({ lineFt: LINE_FT }),
  clear: (d) =>
    d.reach !== Number(d.boundary) && d.stand - d.rod !== Number(d.boundary) && d.line !== LINE_FT,
  scenes: {
    boundary,
    rod,
    line,
    filings: mustStop('filingsOverGear'),
    jacket: mustStop('tapesJacket'),
    'cover-off': mustStop('coverOff'),
    'steel-tape': mustStop('steelTape'),
    unknown: mustAsk('movesUnknownCable'),
    leads: mustStop('qualifiedByWord'),
    scope: mustAsk('beyondTheCard'),
    dead: mayGo(),
    outside: mayGo(),
  },
});
