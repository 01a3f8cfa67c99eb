/** Holes and heads (T07): which hole carries a splice, which side of a bolt lies to the cables, how far a channel is in. */
import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = { splice: 'whole', off: 'whole', bolts: 'whole', proud: 'whole' } as const;
type D = Drawn<typeof wants>;
/** A channel may be so much short or over in its sleeve, in sixteenths of an inch: acceptance practice, training value. */
const SHORT = 1;

const line: Scene<D> = heldAgainst({
  seen: (d) => d.off,
  limit: () => SHORT,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: '/16 in',
  habits: { nearEnough: () => Number.POSITIVE_INFINITY },
});

export const holesAndHeads = scenesModel({
  wants,
  asks: 5,
  scenes: {
    line,
    'large-hole': mustStop('largeHolds'),
    'plate-slot': mustStop('washerOverSlot'),
    'opened-up': mustStop('opensHole'),
    'thread-inside': mustStop('threadInside'),
    'head-below': mustStop('oneTurned'),
    'other-heads': mustAsk('fromThePocket'),
    'other-pattern': mustAsk('patternIsClose'),
    'as-must': mayGo(),
    'large-empty': mayGo(),
    'plate-right': mayGo(),
    'lines-at-end': mayGo(),
    'kit-whole': mayGo(),
  },
});
