/**
 * Two equal fittings and the straight between them, in one plane or rolling. The sloping length and its wrong values
 * come from the trade's offset, the cut from the run's sum of take-outs and insertions; slips change what goes in.
 */
import { type CutEnd, cutBetween } from '../../../run/pieces.ts';
import type { Step } from '../../../trade/answer.ts';
import { figure } from '../../../trade/figure.ts';
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { type OffsetResult, offset } from '../../../trade/offset.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Facts, ModelAsk, Slip } from '../../model.ts';
import { keysOf, lengthFact, lineOf, numberFact, rowsFact } from './told.ts';

/** Angles by the word a family draws. */
export const ANGLES = { '22-5': 22.5, '30': 30, '45': 45, '60': 60 } as const;
export type AngleWord = keyof typeof ANGLES;
/** The angle whose multiplier comes to mind in place of the right one. */
const MIXED_UP: Readonly<Record<number, number>> = { 22.5: 30, 30: 45, 45: 30, 60: 30 };

export interface OffsetPlan {
  readonly offset: Ticks;
  readonly roll: Ticks | undefined;
  readonly angleDeg: number;
  /** Exact, with the trade's rounded multiplier, or not multiplied at all. */
  readonly travelled: 'exact' | 'rounded' | 'not';
  readonly ends: readonly [CutEnd, CutEnd];
}

/** Shortest piece that can be cut, drilled and put in. */
const SHORTEST = fromInches(6);
const NONE = ticks(0);
const say = lineOf('offsets');

export interface OffsetDrawn {
  readonly angle: string;
  readonly offset: Ticks;
  readonly roll?: Ticks;
  readonly takeOut: Ticks;
  readonly insertion: Ticks;
}

export function offsetPlan({
  angle,
  offset: over,
  roll,
  takeOut,
  insertion,
}: OffsetDrawn): OffsetPlan | null {
  const end: CutEnd = { takeOut, insertion, share: NONE };
  const angleDeg = ANGLES[angle as AngleWord];
  const made: OffsetPlan = { offset: over, roll, angleDeg, travelled: 'exact', ends: [end, end] };
  return straightIn(made) < SHORTEST ? null : made;
}

const worked = ({ offset: over, roll, angleDeg }: OffsetPlan): OffsetResult =>
  offset({ offset: over, roll, angleDeg }).result;

/** From working point to working point along the slope, in inches. */
export function travelIn(plan: OffsetPlan): number {
  const { travelIn: exact, trueOffsetIn, trade } = worked(plan);
  if (plan.travelled === 'not') return trueOffsetIn;
  return plan.travelled === 'rounded' ? (trade?.travelIn ?? exact) : exact;
}
const straightIn = (plan: OffsetPlan, travel = travelIn(plan)): Ticks =>
  cutBetween(fromInches(travel), plan.ends);

export const offsetAsks: Readonly<Record<'travel' | 'straight', ModelAsk<OffsetPlan>>> = {
  travel: {
    kind: 'number',
    answer: (plan) => travelIn(plan),
    // Of the trade's working the lines up to the slope; the rounded figures are for what is bent, not for what is cut.
    steps: ({ offset: over, roll, angleDeg }) => offset({ offset: over, roll, angleDeg }).steps.slice(0, 3),
  },
  straight: {
    kind: 'number',
    answer: (plan) => inches(straightIn(plan)),
    steps: straightSteps,
    follows: {
      asks: ['travel'],
      answer: (plan, _, earlier) => {
        const travel = earlier['travel'] as number;
        return travel > 0 && travel < 1000 ? inches(straightIn(plan, travel)) : null;
      },
    },
  },
};

function straightSteps(plan: OffsetPlan): readonly Step[] {
  const [{ takeOut, insertion }] = plan.ends;
  const cut = straightIn(plan);
  const values = {
    travel: figure(travelIn(plan)),
    takeOut: shortLength(takeOut),
    insertion: shortLength(insertion),
  };
  return [say('straight', values), say('toSixteenth', { length: shortLength(cut, 16) })];
}

type OffsetSlip = Slip<OffsetPlan>;
const withEnds = (plan: OffsetPlan, change: (end: CutEnd, i: number) => CutEnd): OffsetPlan => ({
  ...plan,
  ends: [change(plan.ends[0], 0), change(plan.ends[1], 1)],
});

export const offsetSlips: Readonly<Record<string, OffsetSlip>> = {
  otherAngle: (plan) => ({ ...plan, angleDeg: MIXED_UP[plan.angleDeg] ?? plan.angleDeg }),
  notMultiplied: (plan) => ({ ...plan, travelled: 'not' }),
  /** At 30° the rounded multiplier is the exact one. */
  rounded: (plan) => (plan.angleDeg === 30 ? null : { ...plan, travelled: 'rounded' }),
  riseOnly: (plan) => (plan.roll === undefined ? null : { ...plan, roll: undefined }),
  riseAndRoll: (plan) =>
    plan.roll === undefined ? null : { ...plan, offset: ticks(plan.offset + plan.roll), roll: undefined },
  noTakeOut: (plan) => withEnds(plan, (end) => ({ ...end, takeOut: NONE })),
  oneTakeOut: (plan) => withEnds(plan, (end, i) => (i === 0 ? end : { ...end, takeOut: NONE })),
  noInsertion: (plan) => withEnds(plan, (end) => ({ ...end, insertion: NONE })),
  oneInsertion: (plan) => withEnds(plan, (end, i) => (i === 0 ? end : { ...end, insertion: NONE })),
};

export function offsetFacts({ offset: over, roll, angleDeg, ends }: OffsetPlan): Facts {
  return {
    offset: lengthFact(over),
    ...(roll === undefined ? {} : { roll: lengthFact(roll) }),
    angle: numberFact(angleDeg),
    takeOut: lengthFact(ends[0].takeOut),
    insertion: lengthFact(ends[0].insertion),
    multipliers: rowsFact(
      [22.5, 30, 45, 60].map((deg) => ({
        deg: numberFact(deg),
        multiplier: numberFact(offset({ offset: over, angleDeg: deg }).result.multiplier, 3),
      })),
    ),
  };
}

export const offsetSays = [
  ...keysOf('offsets', ['straight', 'toSixteenth']),
  ...['straight', 'rolling', 'multiplier', 'travel'].map((key) => `offset.${key}`),
];
