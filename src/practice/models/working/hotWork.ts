/** Hot work (W3): what burns within 35 ft, the watch and its minutes, the permit, the filings. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  bare: 'whole',
  covered: 'whole',
  watch: ['30', '45', '60'],
  stood: 'whole',
  left: 'whole',
  cut: 'whole',
} as const;
type D = Drawn<typeof wants>;
/** Washington WAC 296-307-49503; 29 CFR 1915.504 and NFPA 51B have the same distance. */
export const SPARK_FT = 35;

/** What burns and lies open. Distances near the limit are not drawn: nobody paces them out so well. */
export const bareSacks = <T extends { readonly bare: number }>(): Scene<T> =>
  heldAgainst({
    seen: (d) => d.bare,
    limit: () => SPARK_FT,
    beyond: 'below',
    atLimit: 'fails',
    right: 'stop',
    unit: 'ft',
    habits: { twentyIsEnough: () => 20, sparksLandNear: () => 0 },
  });
/** The watch stays as long as this job's permit says, whatever another permit said. */
export const watchLeaves = <T extends { readonly watch: string; readonly stood: number }>(): Scene<T> =>
  heldAgainst({
    seen: (d) => d.stood,
    limit: (d) => Number(d.watch),
    beyond: 'below',
    atLimit: 'holds',
    right: 'stop',
    unit: 'min',
    habits: { halfHourAlways: () => 30, nothingGlows: () => 0 },
  });
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
  asks: 4,
  beside: () => ({ sparkFt: SPARK_FT }),
  clear: ({ bare, cut, left }) => Math.abs(bare - SPARK_FT) > 1 && Math.abs(cut - left) > 1,
  scenes: {
    'bare-sacks': bareSacks<D>(),
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
  },
});
