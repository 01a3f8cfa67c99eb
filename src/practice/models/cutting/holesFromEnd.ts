/** Holes from an end (T05, T06): a piece keeps its factory holes at one end, and the other is drilled for a plate. */
import { KERF } from '../../../trade/habits.ts';
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { drawHoles, holesSays } from '../parts/markedLength.ts';
import { read } from '../parts/reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  kept: ['end-a', 'end-b'],
  length: 'length',
} as const;

/** Where the two holes come, from the end with the factory holes. */
interface Plan {
  readonly width: string;
  readonly kept: 'end-a' | 'end-b';
  readonly length: Ticks;
  /** Centres of plate holes from an end, the outer one first. */
  readonly holes: readonly [Ticks, Ticks];
  readonly outer: Ticks;
  readonly inner: Ticks;
}

function plan({ width, kept, length }: Drawn<typeof wants>, world: World): Plan {
  const [first, second] = read(world, width, 'tray').plateHoles;
  if (first === undefined || second === undefined) throw new Error(`${width} has no two plate holes`);
  const [outer, inner] = [ticks(length - first), ticks(length - second)];
  return { width, kept, length, holes: [first, second], outer, inner };
}

type HoleSlip = Slip<Plan>;
const both =
  (change: (at: Ticks, hole: Ticks, plan: Plan) => number): HoleSlip =>
  (taken) => ({
    ...taken,
    outer: ticks(change(taken.outer, taken.holes[0], taken)),
    inner: ticks(change(taken.inner, taken.holes[1], taken)),
  });

const ask = (which: 'outer' | 'inner', i: 0 | 1) =>
  ({
    kind: 'number',
    answer: (taken: Plan) => inches(taken[which]),
    steps: ({ length, holes, ...taken }: Plan) => [
      {
        say: 'cutting.hole',
        values: {
          length: formatLength(length),
          hole: shortLength(holes[i]),
          at: formatLength(taken[which]),
        },
      },
    ],
  }) as const;

export const holesFromEnd = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, kept, length, holes }) => ({
    width: { kind: 'word', value: width },
    kept: { kind: 'word', value: kept },
    drilled: { kind: 'word', value: kept === 'end-a' ? 'end-b' : 'end-a' },
    length: { kind: 'length', ticks: length },
    first: { kind: 'length', ticks: holes[0] },
    second: { kind: 'length', ticks: holes[1] },
    kerf: { kind: 'length', ticks: KERF.length },
  }),
  asks: { outer: ask('outer', 0), inner: ask('inner', 1) },
  slips: {
    kerfTakenOff: both((at) => at - KERF.length),
    /** The second hole is measured from the first, not from the end. */
    secondFromFirst: (taken) => ({ ...taken, inner: ticks(taken.outer - taken.holes[1]) }),
    wrongEnd: both((_, hole) => hole),
    exchanged: ({ outer, inner, ...taken }) => ({ ...taken, outer: inner, inner: outer }),
    added: both((at, hole) => at + 2 * hole),
  },
  figures: ({ kept, length, holes: [first, second] }, _, how) => [
    drawHoles(
      { kept, length: formatLength(length), first: shortLength(first), second: shortLength(second) },
      how,
    ),
  ],
  figured: ({ kept, length, holes }) => [
    { kind: 'lengths', ticks: [length] },
    { kind: 'said', ticks: [length, ...holes] },
    { kind: 'holes', end: kept === 'end-a' ? 'left' : 'right', count: holes.length },
  ],
  says: ['cutting.hole', ...holesSays],
});
