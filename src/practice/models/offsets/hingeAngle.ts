/**
 * Hinged fittings (T08e): the angle to set them to from rise and run, the slope between their pins, and the straight
 * that is cut for it.
 */
import { type CutEnd, cutBetween } from '../../../run/pieces.ts';
import { figure } from '../../../trade/figure.ts';
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { offset } from '../../../trade/offset.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { offsetSketch, sketchSays } from '../parts/offsetSketch.ts';
import { read } from '../parts/reads.ts';
import { keysOf, lengthFact, lineOf, wordFact } from '../parts/told.ts';

const wants = { width: ['card-2', 'card-4', 'card-6'], rise: 'length', run: 'length' } as const;

/** What the ratio of the two sides is looked up as. */
const LOOKED_UP = {
  tangent: (ratio: number) => degrees(Math.atan(ratio)),
  sine: (ratio: number) => degrees(Math.asin(ratio)),
  cosine: (ratio: number) => degrees(Math.acos(ratio)),
  /** A slope in the hundred, taken for degrees. */
  percent: (ratio: number) => 100 * ratio,
} as const;
const degrees = (radians: number) => (radians * 180) / Math.PI;
const SAYS = ['hingeRatio', 'hingeAngle', 'hingeSlope', 'straight', 'toSixteenth'];
/** Steeper than this a hinge is not set, and flatter the mistakes cannot be told apart. */
const [FLATTEST, STEEPEST] = [0.2, 0.75];

interface Plan {
  readonly width: string;
  readonly rise: Ticks;
  readonly run: Ticks;
  readonly inverted: boolean;
  readonly lookedUp: keyof typeof LOOKED_UP;
  readonly slope: 'long side' | 'run' | 'sum';
  readonly ends: readonly [CutEnd, CutEnd];
}

function plan({ width, rise, run }: Drawn<typeof wants>, world: World): Plan | null {
  const { takeOut, insertion } = read(world, read(world, width, 'tray').own.hinged, 'hinge');
  const end: CutEnd = { takeOut, insertion, share: NONE };
  const ratio = rise / run;
  if (ratio < FLATTEST || ratio > STEEPEST) return null;
  return { width, rise, run, inverted: false, lookedUp: 'tangent', slope: 'long side', ends: [end, end] };
}

const NONE = ticks(0);
const say = lineOf('offsets');
const ratioOf = ({ rise, run, inverted }: Plan) => (inverted ? run / rise : rise / run);
const angle = (plan: Plan) => LOOKED_UP[plan.lookedUp](ratioOf(plan));

/** From pin to pin, in inches. */
function slope({ rise, run, slope: taken }: Plan): number {
  if (taken === 'run') return inches(run);
  if (taken === 'sum') return inches(ticks(rise + run));
  return offset({ offset: rise, roll: run, angleDeg: 45 }).result.trueOffsetIn;
}
const cut = (plan: Plan, between = slope(plan)): Ticks => cutBetween(fromInches(between), plan.ends);

type HingeSlip = Slip<Plan>;
const withEnds = (plan: Plan, change: (end: CutEnd, i: number) => CutEnd): Plan => ({
  ...plan,
  ends: [change(plan.ends[0], 0), change(plan.ends[1], 1)],
});
const lookedUpAs =
  (lookedUp: Plan['lookedUp']): HingeSlip =>
  (made) => ({ ...made, lookedUp });

export const hingeAngle = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, rise, run, ends }) => ({
    width: wordFact(width),
    rise: lengthFact(rise),
    run: lengthFact(run),
    takeOut: lengthFact(ends[0].takeOut),
    insertion: lengthFact(ends[0].insertion),
  }),
  asks: {
    angle: {
      kind: 'number',
      answer: angle,
      steps: (made) => [
        say('hingeRatio', {
          rise: figure(inches(made.rise)),
          run: figure(inches(made.run)),
          ratio: figure(ratioOf(made)),
        }),
        say('hingeAngle', {}, angle(made), 'deg'),
      ],
    },
    slope: {
      kind: 'number',
      answer: slope,
      steps: (made) => [
        say(
          'hingeSlope',
          { rise: figure(inches(made.rise)), run: figure(inches(made.run)) },
          slope(made),
          'in',
        ),
      ],
    },
    cut: {
      kind: 'number',
      answer: (made) => inches(cut(made)),
      steps: (made) => [
        say('straight', {
          travel: figure(slope(made)),
          takeOut: shortLength(made.ends[0].takeOut),
          insertion: shortLength(made.ends[0].insertion),
        }),
        say('toSixteenth', { length: shortLength(cut(made), 16) }),
      ],
      follows: {
        asks: ['slope'],
        answer: (made, _, earlier) => {
          const between = earlier['slope'] as number;
          return between > 0 && between < 1000 ? inches(cut(made, between)) : null;
        },
      },
    },
  },
  slips: {
    inverted: (made) => ({ ...made, inverted: true }),
    asSine: lookedUpAs('sine'),
    asCosine: lookedUpAs('cosine'),
    asPercent: lookedUpAs('percent'),
    runForSlope: (made) => ({ ...made, slope: 'run' }),
    sidesAdded: (made) => ({ ...made, slope: 'sum' }),
    noTakeOut: (made) => withEnds(made, (end) => ({ ...end, takeOut: NONE })),
    oneTakeOut: (made) => withEnds(made, (end, i) => (i === 0 ? end : { ...end, takeOut: NONE })),
    noInsertion: (made) => withEnds(made, (end) => ({ ...end, insertion: NONE })),
    oneInsertion: (made) => withEnds(made, (end, i) => (i === 0 ? end : { ...end, insertion: NONE })),
  },
  // Drawn at one angle for all: the one that is asked is not to be measured off the sheet.
  figures: ({ rise, run }, _, how) => [
    offsetSketch({ angleDeg: 27, angle: 'asked', offset: rise, run }, how),
  ],
  figured: ({ rise, run }) => [
    { kind: 'lengths', ticks: [rise, run] },
    { kind: 'said', ticks: [rise, run] },
  ],
  says: [...keysOf('offsets', [...SAYS, 'slopeWords']), ...sketchSays],
});
