/** Metric drawing (T01): a length in millimetres to feet and inches, and one of ours to millimetres. 1 in = 25.4 mm, exactly. */
import { convert } from '../../../trade/convert.ts';
import { formatLength, fromInches, inches, readLength, roundTo } from '../../../trade/length.ts';
import { type Drawn, model, type Slip } from '../../model.ts';
import { asDecimals, feetInch, lengthText } from '../parts/feetInch.ts';

const wants = { metric: 'whole', length: 'length' } as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  readonly perInch: number;
  readonly fraction: boolean;
  /** Inches that the person takes the other length to be. */
  readonly inch: number;
}

/** To the nearest sixteenth. */
function toInches({ drawn, perInch, fraction }: Plan): number {
  if (!fraction && perInch === 25.4)
    return convert({ text: readLength(`${drawn.metric} mm`) }).result.roundedIn;
  const inch = drawn.metric / perInch;
  if (!fraction) return inches(roundTo(fromInches(inch), 16));
  const decimals = Math.round((inch % 1) * 100);
  return Math.floor(inch) + Math.floor(decimals / 10) / (decimals % 10);
}

type MetricSlip = Slip<Plan>;
const per =
  (millimetres: number): MetricSlip =>
  (plan) => ({ ...plan, perInch: millimetres });

/** The decimals 0.52 of an inch written as the part 5/2. */
const decimalsAsPart: MetricSlip = (plan) => {
  const decimals = Math.round(((plan.drawn.metric / 25.4) % 1) * 100);
  if (decimals < 10 || decimals % 10 === 0) return null;
  const taken = { ...plan, fraction: true };
  // 1/5 for .15 is hardly out; no habit can be read off it.
  return Math.abs(toInches(taken) - toInches(plan)) <= 1 / 8 ? null : taken;
};
const partOf = ({ drawn }: Plan) => inches(drawn.length) % 1;

export const metricDrawing = model<typeof wants, Plan>({
  wants,
  plan: (drawn) => ({ drawn, perInch: 25.4, fraction: false, inch: inches(drawn.length) }),
  facts: ({ drawn }) => ({
    metric: { kind: 'number', value: drawn.metric, text: String(drawn.metric) },
    length: { kind: 'length', ticks: drawn.length },
  }),
  asks: {
    inches: {
      kind: 'number',
      answer: toInches,
      steps: (plan) => [
        { say: 'practice.metric', values: { metric: plan.drawn.metric, length: lengthText(toInches(plan)) } },
      ],
    },
    mm: {
      kind: 'number',
      answer: ({ inch, perInch }) => inch * perInch,
      steps: ({ drawn, inch, perInch }) => [
        {
          say: 'measuring.toMetric',
          values: { length: formatLength(drawn.length), inch, mm: Math.round(inch * perInch) },
        },
      ],
    },
  },
  slips: {
    twentyFive: per(25),
    thirty: per(30),
    decimalsAsPart,
    footAsTen: (plan) => {
      const { feet, inch } = feetInch(plan.drawn.length);
      return { ...plan, inch: feet * 10 + inch };
    },
    inchesAsDecimals: (plan) => ({ ...plan, inch: asDecimals(feetInch(plan.drawn.length)) * 12 }),
    partDropped: (plan) => (partOf(plan) < 1 / 8 ? null : { ...plan, inch: plan.inch - partOf(plan) }),
  },
  figures: () => [],
  figured: () => [],
  says: ['practice.metric', 'measuring.toMetric'],
});
