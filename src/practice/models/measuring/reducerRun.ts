/** Reducer run (T05, T01): a straight run between two faces that changes its width; a piece to each side of the reducer. */
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import {
  type Between,
  cutOf,
  insertionAtBoth,
  insertionTakenOff,
  NONE,
  noInsertion,
  PLAIN,
  worthCutting,
} from '../parts/pieceEnds.ts';
import { read } from '../parts/reads.ts';

const REDUCERS = ['card-6-4-reducer', 'card-4-2-reducer'] as const;
const wants = {
  reducer: REDUCERS,
  hand: ['left', 'right', 'straight'],
  run: 'length',
  toFace: 'length',
} as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  readonly faceToFace: Ticks;
  readonly insertion: Ticks;
  readonly wide: Between;
  readonly narrow: Between;
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { faceToFace, insertion } = read(world, `${drawn.reducer}-${drawn.hand}`, 'reducer');
  const stock = read(world, drawn.reducer.slice(0, 'card-6'.length), 'tray').length;
  const rest = ticks(drawn.run - drawn.toFace - faceToFace);
  const goesIn = { ...PLAIN, insertion };
  const made: Plan = {
    drawn,
    faceToFace,
    insertion,
    wide: { distance: drawn.toFace, ends: [PLAIN, goesIn], extra: NONE },
    narrow: { distance: rest, ends: [goesIn, PLAIN], extra: NONE },
  };
  return rest > 0 && worthCutting(cutOf(made.wide), stock) && worthCutting(cutOf(made.narrow), stock)
    ? made
    : null;
}

/** The same slip on both pieces. */
const onBoth =
  (slip: (piece: Between) => Between | null): Slip<Plan> =>
  (plan) => {
    const [wide, narrow] = [slip(plan.wide), slip(plan.narrow)];
    return wide === null || narrow === null ? null : { ...plan, wide, narrow };
  };
const longer = (plan: Plan, by: number): Plan => ({
  ...plan,
  narrow: { ...plan.narrow, distance: ticks(plan.narrow.distance + by) },
});

const steps = (piece: Between, head: readonly [string, Record<string, string>], insertion: Ticks) => [
  { say: `measuring.${head[0]}`, values: head[1] },
  {
    say: 'measuring.reducerIn',
    values: { insertion: shortLength(insertion), length: formatLength(cutOf(piece)) },
  },
];

export const reducerRun = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, faceToFace, insertion }) => ({
    reducer: { kind: 'word', value: drawn.reducer },
    hand: { kind: 'word', value: drawn.hand },
    run: { kind: 'length', ticks: drawn.run },
    toFace: { kind: 'length', ticks: drawn.toFace },
    faceToFace: { kind: 'length', ticks: faceToFace },
    insertion: { kind: 'length', ticks: insertion },
  }),
  asks: {
    wide: {
      kind: 'number',
      answer: ({ wide }) => inches(cutOf(wide)),
      steps: ({ wide, insertion }) =>
        steps(wide, ['toReducer', { length: formatLength(wide.distance) }], insertion),
    },
    narrow: {
      kind: 'number',
      answer: ({ narrow }) => inches(cutOf(narrow)),
      steps: ({ narrow, insertion, drawn, faceToFace }) =>
        steps(
          narrow,
          [
            'behindReducer',
            {
              run: formatLength(drawn.run),
              wide: formatLength(drawn.toFace),
              reducer: shortLength(faceToFace),
              length: formatLength(narrow.distance),
            },
          ],
          insertion,
        ),
    },
  },
  slips: {
    noInsertion: onBoth(noInsertion),
    insertionAtBoth: onBoth(insertionAtBoth),
    insertionTakenOff: onBoth(insertionTakenOff),
    /** The place of the reducer's face is taken for its middle: half of it stays on the narrow piece. */
    toReducerMiddle: (plan) => longer(plan, plan.faceToFace / 2),
    reducerForgotten: (plan) => longer(plan, plan.faceToFace),
  },
  figures: () => [],
  figured: () => [],
  says: ['toReducer', 'behindReducer', 'reducerIn'].map((key) => `measuring.${key}`),
});
