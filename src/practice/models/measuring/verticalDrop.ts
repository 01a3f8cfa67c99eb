/**
 * Vertical drop (T05, T04): the piece from an elbow that turns down to some way above an instrument's stand, where it
 * ends free or goes into a box.
 */
import { SOCKET } from '../../../trade/habits.ts';
import type { Ticks } from '../../../trade/length.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import {
  type Between,
  cutAsk,
  cutOf,
  endSays,
  endSlips,
  endsAsk,
  NONE,
  PLAIN,
  withEnds,
  worthCutting,
} from '../parts/pieceEnds.ts';
import { read } from '../parts/reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  lower: ['free', 'socket'],
  distance: 'length',
  above: 'length',
} as const;

interface Plan extends Between {
  readonly drawn: Drawn<typeof wants>;
  readonly stock: Ticks;
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { takeOut, insertion } = read(world, `${drawn.width}-outside-90`, 'elbow');
  const stock = read(world, drawn.width, 'tray').length;
  const made: Plan = {
    drawn,
    stock,
    distance: drawn.distance,
    ends: [
      { takeOut, insertion, share: NONE },
      // It stops short of the stand: that comes off as a share of an opening does.
      { ...PLAIN, insertion: drawn.lower === 'socket' ? SOCKET.length : NONE, share: drawn.above },
    ],
    extra: NONE,
  };
  return worthCutting(cutOf(made), stock) ? made : null;
}

/** The piece runs on to the stand. */
const toStand: Slip<Plan> = (plan) => withEnds(plan, (end) => ({ ...end, share: NONE }));

export const verticalDrop = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, ends: [first] }) => ({
    width: { kind: 'word', value: drawn.width },
    lower: { kind: 'word', value: drawn.lower },
    distance: { kind: 'length', ticks: drawn.distance },
    above: { kind: 'length', ticks: drawn.above },
    takeOut: { kind: 'length', ticks: first.takeOut },
    insertion: { kind: 'length', ticks: first.insertion },
  }),
  asks: { ends: endsAsk, cut: cutAsk },
  slips: { ...endSlips, toStand },
  figures: () => [],
  figured: () => [],
  says: endSays,
});
