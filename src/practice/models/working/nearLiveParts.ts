/** Near live parts (W7): the boundary that a qualified person has set, and everything long or loose beside it. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  boundary: ['42', '48', '60'],
  flash: ['36', '72', '84'],
  reach: 'whole',
  stand: 'whole',
  rod: 'whole',
  line: 'whole',
} as const;
type D = Drawn<typeof wants>;
/** 29 CFR 1910.333(c)(3)(iii)(A): anything with parts that can be raised, an aerial lift too, near a line up to 50 kV. */
const LINE_FT = 10;
/** NFPA 70E, table 130.4: limited approach to fixed parts of 151 V to 750 V (from memory). */
const LEAST_IN = 42;
/** Nobody tells distances so near the limit by eye: they are not drawn. */
const CLEAR_IN = 3;

/** The farther of the two boundaries holds. */
const farther = (d: D) => Math.max(Number(d.boundary), Number(d.flash));

/**
 * Beside open live gear: inside the farther boundary it is stopped, and outside it a qualified person is asked, who
 * closes the gear or shows the place. Each habit goes on from a distance of its own.
 */
const besideOpen = (
  nearest: (drawn: D) => number,
  seen: (drawn: D) => string,
  from: Readonly<Record<string, (drawn: D) => number>>,
): Scene<D> => ({
  reply: (drawn, habit) => {
    const own = habit === null ? undefined : from[habit];
    if (own !== undefined && nearest(drawn) >= own(drawn)) return 'go';
    return nearest(drawn) < farther(drawn) ? 'stop' : 'ask';
  },
  habits: Object.keys(from),
  against: (drawn) =>
    nearest(drawn) < farther(drawn) ? [`${seen(drawn)} in`, `${farther(drawn)} in`] : null,
});
const boundary = besideOpen(
  (d) => d.reach,
  (d) => `${d.reach}`,
  {
    ownSum: farther,
    flashForgotten: (d) => Number(d.boundary),
    leastOfTheTable: () => LEAST_IN,
    armsLength: () => 20,
  },
);
/** The end of the rod counts, not the feet of the one who carries it. */
const rod = besideOpen(
  (d) => d.stand - d.rod,
  (d) => `${d.stand} - ${d.rod}`,
  {
    ownSum: farther,
    flashForgotten: (d) => Number(d.boundary),
    feetNotRod: (d) => farther(d) - d.rod,
  },
);
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
  asks: 5,
  beside: () => ({ lineFt: LINE_FT }),
  clear: (d) =>
    [d.reach, d.stand - d.rod].every((inch) => Math.abs(inch - farther(d)) >= CLEAR_IN) &&
    Math.abs(d.line - LINE_FT) > 1,
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
    print: mayGo(),
    covered: mayGo(),
    shown: mayGo(),
    carried: mayGo(),
  },
});
