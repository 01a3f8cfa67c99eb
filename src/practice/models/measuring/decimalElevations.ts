/** Decimal elevations (T01): what unit a drawing's elevations are in, and the drop between two in decimal feet. */
import { inches, readLength, roundTo } from '../../../trade/length.ts';
import { type Drawn, model, type Slip } from '../../model.ts';
import { lengthText } from '../parts/feetInch.ts';

const wants = { title: ['said', 'silent'], upper: 'decimal', lower: 'decimal' } as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** What the person takes the unit to be, or that he asks. */
  readonly unit: 'decimal' | 'inches' | 'metres' | 'ask';
  /** What he makes of hundredths of a foot, in inches; null: what they are. */
  readonly inch: ((hundredths: number) => number) | null;
}

/** Hundredths of a foot between the two. */
const hundredths = ({ upper, lower }: Plan['drawn']) => Math.round((upper - lower) * 100);

function drop({ drawn, inch }: Plan): number {
  const all = hundredths(drawn);
  if (inch === null) return inches(roundTo(readLength(`${all / 100} ft`), 16));
  return Math.floor(all / 100) * 12 + inch(all % 100);
}

type ElevationSlip = Slip<Plan>;
const inch =
  (taken: (hundredths: number) => number, least = 0): ElevationSlip =>
  (plan) =>
    hundredths(plan.drawn) % 10 < least ? null : { ...plan, inch: taken };

export const decimalElevations = model<typeof wants, Plan>({
  wants,
  plan: (drawn) =>
    hundredths(drawn) % 100 < 8
      ? null
      : { drawn, unit: drawn.title === 'said' ? 'decimal' : 'ask', inch: null },
  facts: ({ drawn }) => ({
    title: { kind: 'word', value: drawn.title },
    upper: { kind: 'number', value: drawn.upper, text: drawn.upper.toFixed(2) },
    lower: { kind: 'number', value: drawn.lower, text: drawn.lower.toFixed(2) },
  }),
  asks: {
    unit: {
      kind: 'choice',
      answer: ({ unit }) => unit,
      steps: ({ drawn }) => [{ say: `measuring.unit${drawn.title === 'said' ? 'Said' : 'Silent'}` }],
    },
    drop: {
      kind: 'number',
      answer: drop,
      steps: (plan) => {
        const all = hundredths(plan.drawn);
        const values = { feet: Math.floor(all / 100), decimals: ((all % 100) / 100).toFixed(2) };
        return [{ say: 'measuring.decimals', values: { ...values, length: lengthText(drop(plan)) } }];
      },
    },
  },
  slips: {
    assumed: (plan) => (plan.drawn.title === 'silent' ? { ...plan, unit: 'decimal' } : null),
    pointForInches: (plan) => ({ ...plan, unit: 'inches' }),
    metres: (plan) => ({ ...plan, unit: 'metres' }),
    askedThoughSaid: (plan) => (plan.drawn.title === 'said' ? { ...plan, unit: 'ask' } : null),
    tenthsAsInches: inch((decimals) => decimals / 10),
    firstDecimal: inch((decimals) => Math.floor(decimals / 10), 2),
    decimalsAsInches: inch((decimals) => decimals),
  },
  figures: () => [],
  figured: () => [],
  says: ['unitSaid', 'unitSilent', 'decimals'].map((key) => `measuring.${key}`),
});
