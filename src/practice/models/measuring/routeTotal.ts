/** Route total (T01, T05): three legs by working points with two elbows between; how much channel they take together. */
import type { CutEnd } from '../../../run/pieces.ts';
import type { Step } from '../../../trade/answer.ts';
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { drawRoute, type FlatRoute, resolvedRoute } from '../parts/flatRoute.ts';
import {
  type Between,
  cutOf,
  firstInsertionOnly,
  NONE,
  noInsertion,
  noTakeOut,
  type Pair,
  PLAIN,
  worthCutting,
} from '../parts/pieceEnds.ts';
import { courses } from '../parts/placing.ts';
import { read } from '../parts/reads.ts';

const FLAT = ['elbow-90', 'elbow-45'] as const;
const ELBOWS = [...FLAT, 'outside-90'] as const;
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  first: FLAT,
  second: ELBOWS,
  one: 'length',
  two: 'length',
  three: 'length',
} as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  readonly elbows: Pair<CutEnd>;
  /** As the person counts them. */
  readonly legs: readonly Between[];
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const end = (elbow: string): CutEnd => {
    const { takeOut, insertion } = read(world, `${drawn.width}-${elbow}`, 'elbow');
    return { takeOut, insertion, share: NONE };
  };
  const [a, b] = [end(drawn.first), end(drawn.second)];
  const leg = (distance: Ticks, ends: Pair<CutEnd>): Between => ({ distance, ends, extra: NONE });
  const legs = [leg(drawn.one, [PLAIN, a]), leg(drawn.two, [a, b]), leg(drawn.three, [b, PLAIN])];
  const stock = read(world, drawn.width, 'tray').length;
  return legs.every((one) => worthCutting(cutOf(one), stock)) ? { drawn, elbows: [a, b], legs } : null;
}

const total = ({ legs }: Plan): Ticks => ticks(legs.reduce((sum, leg) => sum + cutOf(leg), 0));
const middle = ({ legs }: Plan): Between => legs[1] as Between;

const onLegs =
  (slip: (leg: Between) => Between | null): Slip<Plan> =>
  (plan) => ({ ...plan, legs: plan.legs.map((leg) => slip(leg) ?? leg) });

/** Each elbow's take-out comes off the leg that runs into it, and not off the one that leaves it. */
const takeOutOnce: Slip<Plan> = onLegs(({ ends: [a, b], ...leg }) => ({
  ...leg,
  ends: [{ ...a, takeOut: NONE }, b],
}));

const steps = (leg: Between, i: number): readonly Step[] => [
  {
    say: 'measuring.leg',
    values: {
      number: i + 1,
      length: formatLength(leg.distance),
      off: shortLength(ticks(leg.ends[0].takeOut + leg.ends[1].takeOut)),
      on: shortLength(ticks(leg.ends[0].insertion + leg.ends[1].insertion)),
      cut: formatLength(cutOf(leg)),
    },
  },
];

const routeOf = ({ drawn: { width, first, second, one, two, three } }: Plan): FlatRoute => ({
  width,
  start: { kind: 'tray', joint: 'butt' },
  lengths: [one, two, three],
  fittings: [first, second],
});

export const routeTotal = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, elbows: [a, b] }) => ({
    width: { kind: 'word', value: drawn.width },
    first: { kind: 'word', value: drawn.first },
    second: { kind: 'word', value: drawn.second },
    one: { kind: 'length', ticks: drawn.one },
    two: { kind: 'length', ticks: drawn.two },
    three: { kind: 'length', ticks: drawn.three },
    firstTakeOut: { kind: 'length', ticks: a.takeOut },
    secondTakeOut: { kind: 'length', ticks: b.takeOut },
    insertion: { kind: 'length', ticks: a.insertion },
  }),
  asks: {
    middle: {
      kind: 'number',
      answer: (plan) => inches(cutOf(middle(plan))),
      steps: (plan) => steps(middle(plan), 1),
    },
    total: {
      kind: 'number',
      answer: (plan) => inches(total(plan)),
      steps: (plan) => [
        ...[0, 2].flatMap((i) => steps(plan.legs[i] as Between, i)),
        { say: 'measuring.total', values: { length: formatLength(total(plan)) } },
      ],
    },
  },
  slips: {
    centreLines: onLegs(({ distance, extra }) => ({ distance, extra, ends: [PLAIN, PLAIN] })),
    noInsertion: onLegs(noInsertion),
    noTakeOut: onLegs(noTakeOut),
    insertionOnce: onLegs(firstInsertionOnly),
    takeOutOnce,
    legForgotten: (plan) => ({ ...plan, legs: plan.legs.slice(0, 2) }),
  },
  figures: (plan, world, how) => drawRoute(routeOf(plan), world, how),
  figured: (plan, world) => [
    { kind: 'lengths', ticks: routeOf(plan).lengths },
    courses(resolvedRoute(routeOf(plan), world)),
  ],
  says: ['measuring.leg', 'measuring.total'],
});
