/** Between working points (T05): one piece between two fittings that are drawn by the points where centre lines cross. */
import type { CutEnd } from '../../../run/pieces.ts';
import type { Step } from '../../../trade/answer.ts';
import { formatLength, fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { drawRoute, type FlatRoute, resolvedRoute } from '../parts/flatRoute.ts';
import {
  type Between,
  cutOf,
  cutSteps,
  endSays,
  endSlips,
  NONE,
  type Pair,
  withEnds,
  worthCutting,
} from '../parts/pieceEnds.ts';
import { courses } from '../parts/placing.ts';
import { read } from '../parts/reads.ts';

const FITTINGS = ['elbow-90', 'elbow-45', 'tee'] as const;
const WIDTHS = ['card-2', 'card-4', 'card-6'] as const;
const wants = { width: WIDTHS, first: FITTINGS, second: FITTINGS, distance: 'length' } as const;
type Fitting = (typeof FITTINGS)[number];

/** Of the legs to both sides: for the picture alone. */
const BESIDE = fromInches(36);

interface Plan extends Between {
  readonly width: (typeof WIDTHS)[number];
  readonly fittings: Pair<Fitting>;
  /** The elbow of each width, as the learner's table shows it. */
  readonly elbows: readonly Ticks[];
  readonly elbow45: Ticks;
  readonly tee: Ticks;
}

const routeOf = ({ width, fittings, distance }: Plan): FlatRoute => ({
  width,
  start: { kind: 'free', joint: 'free' },
  lengths: [BESIDE, distance, BESIDE],
  fittings,
});

function endOf(width: string, fitting: Fitting, world: World): CutEnd {
  const { takeOut, insertion } = read(world, `${width}-${fitting}`, fitting === 'tee' ? 'tee' : 'elbow');
  return { takeOut, insertion, share: NONE };
}

function plan({ width, first, second, distance }: Drawn<typeof wants>, world: World): Plan | null {
  const made: Plan = {
    width,
    fittings: [first, second],
    distance,
    ends: [endOf(width, first, world), endOf(width, second, world)],
    extra: NONE,
    elbows: WIDTHS.map((one) => endOf(one, 'elbow-90', world).takeOut),
    elbow45: endOf(width, 'elbow-45', world).takeOut,
    tee: endOf(width, 'tee', world).takeOut,
  };
  return worthCutting(cutOf(made), read(world, width, 'tray').length) ? made : null;
}

/** Faces: the distance less both take-outs, before anything goes in. */
const faces = (plan: Plan): Ticks => cutOf(withEnds(plan, (end) => ({ ...end, insertion: NONE })));
const insertions = ({ ends }: Plan) => ticks(ends[0].insertion + ends[1].insertion);

/** The 90° elbow's take-out is read in the line of another width: the next wider one, or for the widest the next below. */
const otherWidth: Slip<Plan> = (plan, world) => {
  const at = WIDTHS.indexOf(plan.width);
  const other = WIDTHS[at === WIDTHS.length - 1 ? at - 1 : at + 1] as string;
  if (!plan.fittings.includes('elbow-90')) return null;
  return withEnds(plan, (end, i) =>
    plan.fittings[i] === 'elbow-90'
      ? { ...end, takeOut: read(world, `${other}-elbow-90`, 'elbow').takeOut }
      : end,
  );
};

const steps = (plan: Plan): readonly Step[] => [
  ...cutSteps(plan).slice(0, -1),
  { say: 'measuring.faces', values: { length: formatLength(faces(plan)) } },
];

export const betweenWorkingPoints = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, fittings, ends, distance, elbows, elbow45, tee }) => ({
    width: { kind: 'word', value: width },
    first: { kind: 'word', value: fittings[0] },
    second: { kind: 'word', value: fittings[1] },
    distance: { kind: 'length', ticks: distance },
    insertion: { kind: 'length', ticks: ends[0].insertion },
    elbow45: { kind: 'length', ticks: elbow45 },
    tee: { kind: 'length', ticks: tee },
    elbow2: { kind: 'length', ticks: elbows[0] ?? NONE },
    elbow4: { kind: 'length', ticks: elbows[1] ?? NONE },
    elbow6: { kind: 'length', ticks: elbows[2] ?? NONE },
  }),
  asks: {
    faces: { kind: 'number', answer: (plan) => inches(faces(plan)), steps },
    cut: {
      kind: 'number',
      answer: (plan) => inches(cutOf(plan)),
      steps: (plan) => [
        {
          say: 'measuring.facesToCut',
          values: { insertion: shortLength(insertions(plan)), length: formatLength(cutOf(plan)) },
        },
      ],
      follows: {
        asks: ['faces'],
        answer: (plan, _, { faces: earlier }) =>
          inches(ticks(fromInches(earlier as number) + insertions(plan))),
      },
    },
  },
  slips: { ...endSlips, otherWidth },
  figures: (plan, world, how) => drawRoute(routeOf(plan), world, how),
  figured: (plan, world) => [
    { kind: 'lengths', ticks: [plan.distance] },
    courses(resolvedRoute(routeOf(plan), world)),
  ],
  says: [...endSays, 'measuring.faces', 'measuring.facesToCut'],
});
