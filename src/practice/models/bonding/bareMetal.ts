/** Bare metal (T11, T09): what lies between two faces that must carry a fault. NFPA 70, 2023, 250.96: coatings come off. */
import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = { wide: 'whole', bared: 'whole', movement: 'whole', slack: 'whole', bolts: 'whole' } as const;
type D = Drawn<typeof wants>;

/** The lug lies on bare metal all over, in sixteenths of an inch. */
const halfBared: Scene<D> = heldAgainst({
  seen: (d) => d.bared,
  limit: (d) => d.wide,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'sixteenths',
  habits: { halfIsEnough: () => 0 },
});
/** A jumper across a joint that moves has slack for the whole movement, in sixteenths of an inch. */
const slack: Scene<D> = heldAgainst({
  seen: (d) => d.slack,
  limit: (d) => d.movement,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'sixteenths',
  habits: { tightAsString: () => 0 },
});

export const bareMetal = scenesModel({
  wants,
  asks: 5,
  sixteenths: ['wide', 'bared', 'movement', 'slack'],
  clear: ({ wide, bared, movement, slack: free }) =>
    Math.abs(wide - bared) > 2 && Math.abs(movement - free) > 2,
  scenes: {
    'half-bared': halfBared,
    'slack-over-gap': slack,
    'over-paint': mustStop('overPaint'),
    'toothed-washer': mustAsk('washerBites'),
    'large-hole': mustStop('largeHole'),
    'lug-turns': mustStop('turnsByHand'),
    'carbon-brush': mustStop('anyBrush'),
    'copper-on-zinc': mustAsk('metalsMixed'),
    'not-tested': mustStop('notTested'),
    'plain-splice': mayGo(),
    'listed-device': mayGo(),
    'bare-and-tight': mayGo(),
    'bared-wide': mayGo(),
  },
});
