/** Hot work (W3): what burns within 35 ft, the watch and its minutes, the permit, the filings. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';
import { barePlanks, SPARK_FT, watchLeaves } from '../parts/sharedScenes.ts';

const wants = {
  bare: 'whole',
  covered: 'whole',
  watch: ['30', '45', '60'],
  stood: 'whole',
  left: 'whole',
  cut: 'whole',
} as const;
type D = Drawn<typeof wants>;

const permitEnds: Scene<D> = heldAgainst({
  seen: (d) => d.cut,
  limit: (d) => d.left,
  beyond: 'above',
  atLimit: 'holds',
  right: 'ask',
  unit: 'min',
  habits: { pastThePermit: () => Infinity },
});
/** Covered without a gap, it counts as shielded however near it is. */
const covered: Scene<D> = {
  reply: (d, habit) => (habit === 'coverNotCounted' && d.covered < SPARK_FT ? 'stop' : 'go'),
  habits: ['coverNotCounted'],
};

export const hotWork = scenesModel({
  wants,
  asks: 5,
  beside: () => ({ sparkFt: SPARK_FT }),
  clear: ({ bare, cut, left }) => Math.abs(bare - SPARK_FT) > 1 && Math.abs(cut - left) > 4,
  scenes: {
    'bare-planks': barePlanks<D>(),
    'watch-leaves': watchLeaves<D>(),
    'permit-ends': permitEnds,
    covered,
    grinder: mustAsk('grinderUnasked'),
    'other-side': mustAsk('otherSideUnseen'),
    grating: mustStop('sparksBelow'),
    extinguisher: mustStop('emptyExtinguisher'),
    'watch-called': mustStop('noWatch'),
    smell: mustStop('finishFirst'),
    blow: mustStop('blowsFilings'),
    swept: mayGo(),
    'new-permit': mayGo(),
    vacuum: mayGo(),
  },
});
