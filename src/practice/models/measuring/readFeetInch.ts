/**
 * Read feet, inches and parts (T05): a drawn tape, a sum of three lengths, two elevations in decimal feet, a length
 * in millimetres. Each wrong reading keeps to one habit: ten inches to the foot, decimals taken for inches and so on.
 */
import { drawTape } from '../../../drawing/tape.ts';
import type { Step } from '../../../trade/answer.ts';
import {
  formatLength,
  fromInches,
  inches,
  readLength,
  roundTo,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  type Ticks,
  ticks,
} from '../../../trade/length.ts';
import { type Drawn, model, type Slip } from '../../model.ts';

const wants = {
  hooked: ['hook', 'inch'],
  reading: 'length',
  first: 'length',
  second: 'length',
  third: 'length',
  upper: 'decimal',
  lower: 'decimal',
  metric: 'whole',
} as const;

/** The four readings of the exercise, as the person takes them: a slip replaces one. */
interface Plan {
  readonly given: Drawn<typeof wants>;
  readonly tape: number;
  readonly sum: number;
  readonly drop: number;
  readonly metric: number;
}

/** A length as the tape shows it: feet, whole inches of the foot, and the part of an inch. */
function partsOf(length: Ticks): { feet: number; inch: number; part: number } {
  const feet = Math.floor(length / TICKS_PER_FOOT);
  const inch = Math.floor((length - feet * TICKS_PER_FOOT) / TICKS_PER_INCH);
  return { feet, inch, part: inches(length) - feet * 12 - inch };
}

const held = (given: Plan['given']) => (given.hooked === 'inch' ? 1 : 0);
const rise = ({ upper, lower }: Plan['given']) => readLength(`${Math.round((upper - lower) * 100) / 100} ft`);

/** Nearest sixteenth of a number of millimetres. */
const ofMetric = (millimetres: number) => inches(roundTo(readLength(`${millimetres} mm`), 16));

function plan(given: Drawn<typeof wants>): Plan | null {
  const { reading, first, second, third, upper, lower } = given;
  const { part } = partsOf(reading);
  if (part === 0 || upper <= lower || rise(given) % TICKS_PER_FOOT === 0) return null;
  return {
    given,
    tape: inches(reading) - held(given),
    sum: inches(ticks(first + second + third)),
    drop: inches(rise(given)),
    metric: ofMetric(given.metric),
  };
}

type ReadingSlip = Slip<Plan>;

/** The tape read with another number of inches to the foot. */
const footAsTen: ReadingSlip = (plan) => {
  const { feet, inch, part } = partsOf(plan.given.reading);
  return feet === 0 ? null : { ...plan, tape: feet * 10 + inch + part - held(plan.given) };
};

/** A reading no farther out than this is a slip of the eye; no habit can be read off it. */
const TOO_SMALL_TO_TELL = 1 / 16;

/** Eighths counted on the sixteenth marks: the part comes out half of what it is. */
const partHalved: ReadingSlip = (plan) => {
  const { part } = partsOf(plan.given.reading);
  return part / 2 > TOO_SMALL_TO_TELL ? { ...plan, tape: plan.tape - part / 2 } : null;
};

/** Sixteenths taken for eighths; only where that still is a part of an inch. */
const partDoubled: ReadingSlip = (plan) => {
  const { part } = partsOf(plan.given.reading);
  return part > TOO_SMALL_TO_TELL && part < 1 / 2 ? { ...plan, tape: plan.tape + part } : null;
};

/** 7'-3" written as 7.3 ft. From ten inches on people write 7.10, 7.11. */
const inchesAsDecimals: ReadingSlip = (plan) => {
  const { feet, inch, part } = partsOf(plan.given.reading);
  if (inch === 0) return null;
  const decimals = inch < 10 ? inch / 10 : inch / 100;
  return { ...plan, tape: (feet + decimals) * 12 + part - held(plan.given) };
};

/** The numeral behind the edge is read in place of the one before it. */
const nextInch: ReadingSlip = (plan) =>
  plan.given.hooked === 'inch' ? null : { ...plan, tape: plan.tape + 1 };

/** Held at the 1-in mark, and the inch is not taken off. */
const inchLeftOn: ReadingSlip = (plan) =>
  plan.given.hooked === 'inch' ? { ...plan, tape: plan.tape + 1 } : null;

/** Held at the 1-in mark, and the inch is added. */
const inchAdded: ReadingSlip = (plan) =>
  plan.given.hooked === 'inch' ? { ...plan, tape: plan.tape + 2 } : null;

const addends = ({ first, second, third }: Plan['given']) => [first, second, third].map(partsOf);
const total = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

/** The parts come to whole inches, and those are not carried. */
const partsNotCarried: ReadingSlip = (plan) => {
  const carried = Math.floor(total(addends(plan.given).map((p) => p.part)));
  return carried === 0 ? null : { ...plan, sum: plan.sum - carried };
};

/** Inches are carried into feet at ten. */
const carriedAtTen: ReadingSlip = (plan) => {
  const parts = addends(plan.given);
  const inch = total(parts.map((p) => p.inch + p.part));
  const feet = total(parts.map((p) => p.feet));
  const tens = Math.floor(inch / 10);
  return tens === 0 ? null : { ...plan, sum: (feet + tens) * 12 + inch - 10 * tens };
};

const leftOut: ReadingSlip = (plan) => ({ ...plan, sum: plan.sum - inches(plan.given.third) });

/** Whole feet and decimals of the rise. */
const decimalsOf = (plan: Plan) => {
  const feet = Math.floor(plan.drop / 12);
  return { feet, decimals: Math.round((plan.drop / 12 - feet) * 100) };
};

/** .75 ft taken for 7.5 in. */
const tenthsAsInches: ReadingSlip = (plan) => {
  const { feet, decimals } = decimalsOf(plan);
  return { ...plan, drop: feet * 12 + decimals / 10 };
};

/** .75 ft taken for 7 in: the first decimal alone. */
const firstDecimal: ReadingSlip = (plan) => {
  const { feet, decimals } = decimalsOf(plan);
  return decimals % 10 === 0 ? null : { ...plan, drop: feet * 12 + Math.floor(decimals / 10) };
};

/** .75 ft taken for 75 in. */
const decimalsAsInches: ReadingSlip = (plan) => {
  const { feet, decimals } = decimalsOf(plan);
  return { ...plan, drop: feet * 12 + decimals };
};

const perInch =
  (millimetres: number): ReadingSlip =>
  (plan) => ({ ...plan, metric: inches(roundTo(fromInches(plan.given.metric / millimetres), 16)) });

/** The decimals 0.52 of an inch written as the part 5/2. */
const decimalsAsPart: ReadingSlip = (plan) => {
  const inch = plan.given.metric / 25.4;
  const decimals = Math.round((inch - Math.floor(inch)) * 100);
  const [top, bottom] = [Math.floor(decimals / 10), decimals % 10];
  return top === 0 || bottom === 0 ? null : { ...plan, metric: Math.floor(inch) + top / bottom };
};

const text = (number: number) => formatLength(fromInches(number), 64);
const step = (key: string, values: Record<string, string | number>): Step => ({
  say: `practice.${key}`,
  values,
});

const number = (key: 'tape' | 'sum' | 'drop' | 'metric', steps: (plan: Plan) => Step[]) => ({
  kind: 'number' as const,
  answer: (plan: Plan) => plan[key],
  steps,
});

export const readFeetInch = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ given }) => ({
    hooked: { kind: 'word', value: given.hooked },
    first: { kind: 'length', ticks: given.first },
    second: { kind: 'length', ticks: given.second },
    third: { kind: 'length', ticks: given.third },
    upper: { kind: 'number', value: given.upper, text: given.upper.toFixed(2) },
    lower: { kind: 'number', value: given.lower, text: given.lower.toFixed(2) },
    metric: { kind: 'number', value: given.metric, text: String(given.metric) },
  }),
  asks: {
    tape: number('tape', (plan) => {
      const { feet, inch, part } = partsOf(plan.given.reading);
      const key = plan.given.hooked === 'inch' ? 'tapeFromInch' : 'tapeFromHook';
      const values = { feet, inch: text(inch + part), reading: text(inches(plan.given.reading)) };
      return [step(key, { ...values, length: text(plan.tape) })];
    }),
    sum: number('sum', (plan) => {
      const parts = addends(plan.given);
      const inch = total(parts.map((p) => p.inch + p.part));
      const values = { feet: total(parts.map((p) => p.feet)), inches: inch, length: text(plan.sum) };
      return [step('sum', values)];
    }),
    drop: number('drop', (plan) => {
      const { feet, decimals } = decimalsOf(plan);
      const values = { feet, decimals: (decimals / 100).toFixed(2), inch: (decimals * 12) / 100 };
      return [step('drop', { ...values, length: text(plan.drop) })];
    }),
    metric: number('metric', (plan) => [
      step('metric', { metric: plan.given.metric, length: text(plan.metric) }),
    ]),
  },
  slips: {
    footAsTen,
    partHalved,
    partDoubled,
    inchesAsDecimals,
    nextInch,
    inchLeftOn,
    inchAdded,
    partsNotCarried,
    carriedAtTen,
    leftOut,
    tenthsAsInches,
    firstDecimal,
    decimalsAsInches,
    twentyFive: perInch(25),
    thirty: perInch(30),
    decimalsAsPart,
  },
  figures: ({ given }, _, how) => [drawTape({ reading: given.reading, printed: false }, how)],
  figured: ({ given }) => [{ kind: 'tape', ticks: given.reading }],
  says: ['tapeFromHook', 'tapeFromInch', 'sum', 'drop', 'metric'].map((key) => `practice.${key}`),
});
