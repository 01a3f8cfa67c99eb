/**
 * From the ladder's rail (T05, T09): the first piece of a run, from a ladder tray to the first elbow. The drawing
 * goes from the rail's face or from the ladder's centre line; the piece begins at the face.
 */
import { SOCKET } from '../../../trade/habits.ts';
import { fromInches, type Ticks, ticks } from '../../../trade/length.ts';
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
  worthCutting,
} from '../parts/pieceEnds.ts';
import { read } from '../parts/reads.ts';

const FITTINGS = ['elbow-90', 'elbow-45', 'outside-90'] as const;
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  ladder: ['w9', 'w12', 'w18', 'w24'],
  from: ['rail', 'centre'],
  start: ['butt', 'socket'],
  fitting: FITTINGS,
  distance: 'length',
} as const;

/** Over its rails: a training value. */
const LADDER: Readonly<Record<string, number>> = { w9: 9, w12: 12, w18: 18, w24: 24 };

interface Plan extends Between {
  readonly drawn: Drawn<typeof wants>;
  readonly half: Ticks;
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { takeOut, insertion } = read(world, `${drawn.width}-${drawn.fitting}`, 'elbow');
  const half = fromInches((LADDER[drawn.ladder] ?? 0) / 2);
  const first = drawn.start === 'socket' ? { ...PLAIN, insertion: SOCKET.length } : PLAIN;
  const made: Plan = {
    drawn,
    half,
    distance: drawn.distance,
    // From a centre line, half of the ladder comes off as a take-out does.
    ends: [
      { ...first, takeOut: drawn.from === 'centre' ? half : NONE },
      { takeOut, insertion, share: NONE },
    ],
    extra: NONE,
  };
  return worthCutting(cutOf(made), read(world, drawn.width, 'tray').length) ? made : null;
}

/** The piece is made to reach the centre line of the ladder. */
const toCentre: Slip<Plan> = (plan) => ({ ...plan, extra: ticks(plan.extra + plan.half) });

/** Half the ladder comes off, though the drawing goes to the rail's face. */
const halfTakenOff: Slip<Plan> = (plan) =>
  plan.drawn.from === 'rail' ? { ...plan, extra: ticks(plan.extra - plan.half) } : null;

/** The whole ladder comes off. */
const wholeLadder: Slip<Plan> = (plan) =>
  plan.drawn.from === 'centre' ? { ...plan, extra: ticks(plan.extra - plan.half) } : null;

/** The elbow's take-out stays on. */
const noElbow: Slip<Plan> = ({ ends: [a, b], ...plan }) => ({ ...plan, ends: [a, { ...b, takeOut: NONE }] });

export const fromLadderRail = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, ends, half, distance }) => ({
    width: { kind: 'word', value: drawn.width },
    from: { kind: 'word', value: drawn.from },
    start: { kind: 'word', value: drawn.start },
    fitting: { kind: 'word', value: drawn.fitting },
    ladder: { kind: 'length', ticks: ticks(2 * half) },
    distance: { kind: 'length', ticks: distance },
    takeOut: { kind: 'length', ticks: ends[1].takeOut },
    insertion: { kind: 'length', ticks: ends[1].insertion },
  }),
  asks: { ends: endsAsk, cut: cutAsk },
  slips: { ...endSlips, toCentre, halfTakenOff, wholeLadder, noElbow },
  figures: () => [],
  figured: () => [],
  says: endSays,
});
