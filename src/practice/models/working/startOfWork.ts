/** Start of work (W1): what is worn, read and heard before a tool is powered. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  noise: 'whole',
  noiseFrom: ['85', '88', '90'],
  bundle: 'whole',
  each: ['40', '45', '50'],
} as const;
type D = Drawn<typeof wants>;
/** 29 CFR 1926.52, table D-2: eight hours at most at this noise without protection (from memory). */
const LAW_NOISE_DBA = 90;

const noise: Scene<D> = heldAgainst({
  seen: (d) => d.noise,
  limit: (d) => Number(d.noiseFrom),
  beyond: 'above',
  atLimit: 'fails',
  right: 'stop',
  unit: 'dBA',
  habits: { lawNotSite: () => LAW_NOISE_DBA, onlyWhenItHurts: () => Infinity },
});
/** Two people carry it, so half of it is held against what one may lift. */
const lift: Scene<D> = heldAgainst({
  seen: (d) => d.bundle / 2,
  limit: (d) => Number(d.each),
  beyond: 'above',
  atLimit: 'holds',
  right: 'ask',
  unit: 'lb',
  habits: { liftsAnyway: () => Infinity, weightNotShared: (d) => Number(d.each) / 2 },
});

export const startOfWork = scenesModel({
  wants,
  asks: 5,
  beside: () => ({ lawNoise: LAW_NOISE_DBA }),
  scenes: {
    noise,
    lift,
    gloves: mustStop('glovesAtDrill'),
    sunglasses: mustStop('eyesBare'),
    strap: mustStop('strapLoose'),
    partner: mustStop('looksAway'),
    yesterday: mustStop('oldPermit'),
    card: mustAsk('doesItUnshown'),
    talk: mustAsk('skipsTalk'),
    dressed: mayGo(),
    handling: mayGo(),
    hoop: mayGo(),
    talked: mayGo(),
  },
});
