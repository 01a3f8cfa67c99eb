/** Read a tape (T05): where the edge stands on a drawn tape, held by its hook or at its 1-in mark; the same in decimal feet. */
import { drawTape } from '../../../drawing/tape.ts';
import { inches, type Ticks } from '../../../trade/length.ts';
import { type Drawn, model, type Slip } from '../../model.ts';
import { asDecimals, feetInch, lengthText } from '../parts/feetInch.ts';

const wants = { hooked: ['hook', 'inch'], reading: 'length' } as const;

/** The tape as the person reads it. */
interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** Inches to the foot. */
  readonly foot: number;
  /** What the part of an inch is taken times. */
  readonly times: number;
  /** Whole inches read too many. */
  readonly more: number;
  readonly held: number;
  readonly decimals: boolean;
  /** How the feet are written with a decimal point. */
  readonly written: 'twelfths' | 'point' | 'whole inches';
}

const partOf = (reading: Ticks) => inches(reading) % 1;

function read({ drawn, foot, times, more, held, decimals }: Plan): number {
  const { feet, inch } = feetInch(drawn.reading);
  const part = partOf(drawn.reading);
  const whole = Math.floor(inch) + more;
  const upTo = decimals ? asDecimals({ feet, inch: whole }) * 12 : feet * foot + whole;
  return upTo + part * times - held;
}

function inFeet(plan: Plan, length = read(plan)): number {
  const feet = Math.floor(length / 12);
  const inch = length - feet * 12;
  if (plan.written === 'point') return asDecimals({ feet, inch });
  return plan.written === 'twelfths' ? length / 12 : feet + Math.floor(inch) / 12;
}

type TapeSlip = Slip<Plan>;
/** A reading no farther out than this is a slip of the eye; no habit can be read off it. */
const TOO_SMALL_TO_TELL = 1 / 16;
const part = ({ drawn }: Plan) => partOf(drawn.reading);
const heldAtInch = ({ drawn }: Plan) => drawn.hooked === 'inch';

const slips = {
  footAsTen: (plan) => ({ ...plan, foot: 10 }),
  sixteenthForEighth: (plan) => (part(plan) / 2 > TOO_SMALL_TO_TELL ? { ...plan, times: 1 / 2 } : null),
  eighthForSixteenth: (plan) =>
    part(plan) > TOO_SMALL_TO_TELL && part(plan) < 1 / 2 ? { ...plan, times: 2 } : null,
  decimalFeet: (plan) => (feetInch(plan.drawn.reading).inch < 1 ? null : { ...plan, decimals: true }),
  nextInch: (plan) => (heldAtInch(plan) ? null : { ...plan, more: 1 }),
  inchLeftOn: (plan) => (heldAtInch(plan) ? { ...plan, held: 0 } : null),
  inchAdded: (plan) => (heldAtInch(plan) ? { ...plan, held: -1 } : null),
  inchTakenOff: (plan) => (heldAtInch(plan) ? null : { ...plan, held: 1 }),
  pointForFoot: (plan) => ({ ...plan, written: 'point' }),
  partDropped: (plan) => ({ ...plan, written: 'whole inches' }),
} satisfies Record<string, TapeSlip>;

export const readTape = model<typeof wants, Plan>({
  wants,
  plan: (drawn) =>
    partOf(drawn.reading) === 0
      ? null
      : {
          drawn,
          foot: 12,
          times: 1,
          more: 0,
          held: drawn.hooked === 'inch' ? 1 : 0,
          decimals: false,
          written: 'twelfths',
        },
  facts: ({ drawn }) => ({ hooked: { kind: 'word', value: drawn.hooked } }),
  asks: {
    length: {
      kind: 'reading',
      answer: read,
      steps: (plan) => {
        const { feet, inch } = feetInch(plan.drawn.reading);
        const values = { feet, inch: lengthText(inch), reading: lengthText(inches(plan.drawn.reading)) };
        const say = heldAtInch(plan) ? 'practice.tapeFromInch' : 'practice.tapeFromHook';
        return [{ say, values: { ...values, length: lengthText(read(plan)) } }];
      },
    },
    feet: {
      kind: 'number',
      answer: (plan) => inFeet(plan),
      steps: (plan) => [
        {
          say: 'measuring.inFeet',
          values: { length: lengthText(read(plan)), feet: inFeet(plan).toFixed(2) },
        },
      ],
      follows: { asks: ['length'], answer: (plan, _, { length }) => inFeet(plan, length as number) },
    },
  },
  slips,
  figures: ({ drawn }, _, how) => [drawTape({ reading: drawn.reading, printed: false }, how)],
  figured: ({ drawn }) => [{ kind: 'tape', ticks: drawn.reading }],
  says: ['practice.tapeFromHook', 'practice.tapeFromInch', 'measuring.inFeet'],
});
