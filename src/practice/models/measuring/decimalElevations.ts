/** Decimal elevations (T01): what unit a drawing's elevations are in, and the drop between two in decimal feet. */
import { fromInches, inches, readLength, roundTo } from '../../../trade/length.ts';
import { type Drawn, model, type Slip } from '../../model.ts';
import { lengthText } from '../parts/feetInch.ts';

const wants = { title: ['said', 'metres', 'silent'], upper: 'decimal', lower: 'decimal' } as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** What the person takes the unit to be, or that he asks. */
  readonly unit: 'decimal' | 'inches' | 'metres' | 'ask';
  /** Inches to the unit in which he works out the drop. */
  readonly per: number;
  /** What he makes of hundredths of a foot, in inches; null: what they are. */
  readonly inch: ((hundredths: number) => number) | null;
}

/** Hundredths of a foot between the two. */
const hundredths = ({ upper, lower }: Plan['drawn']) => Math.round((upper - lower) * 100);

/** 1 in = 25.4 mm: International yard and pound agreement, 1959. */
const PER = { foot: 12, metre: 1000 / 25.4 } as const;
/** A metre taken for 3.3 ft. */
const ROUGHLY = 3.3 * PER.foot;
const inMetres = ({ drawn }: Plan) => drawn.title === 'metres';

function drop({ drawn, inch, per }: Plan): number {
  const all = hundredths(drawn);
  if (inch === null && per === PER.foot) return inches(roundTo(readLength(`${all / 100} ft`), 16));
  if (inch === null) return inches(roundTo(fromInches((all / 100) * per), 16));
  return Math.floor(all / 100) * 12 + inch(all % 100);
}

type ElevationSlip = Slip<Plan>;
const inch =
  (taken: (hundredths: number) => number, least = 0): ElevationSlip =>
  (plan) =>
    inMetres(plan) || hundredths(plan.drawn) % 10 < least ? null : { ...plan, inch: taken };
/** Where the title block says metres. */
const per =
  (inchesTo: number): ElevationSlip =>
  (plan) =>
    inMetres(plan) ? { ...plan, per: inchesTo } : null;

const UNITS = { said: 'decimal', metres: 'metres', silent: 'ask' } as const;
const SAYS = { said: 'unitSaid', metres: 'unitMetres', silent: 'unitSilent' } as const;

export const decimalElevations = model<typeof wants, Plan>({
  wants,
  plan: (drawn) =>
    hundredths(drawn) % 100 < 8
      ? null
      : {
          drawn,
          unit: UNITS[drawn.title],
          per: drawn.title === 'metres' ? PER.metre : PER.foot,
          inch: null,
        },
  facts: ({ drawn }) => ({
    title: { kind: 'word', value: drawn.title },
    upper: { kind: 'number', value: drawn.upper, text: drawn.upper.toFixed(2) },
    lower: { kind: 'number', value: drawn.lower, text: drawn.lower.toFixed(2) },
  }),
  asks: {
    unit: {
      kind: 'reading',
      answer: ({ unit }) => unit,
      touched: (taken, _, plan) => taken.unit !== plan.unit,
      steps: ({ drawn }) => [{ say: `measuring.${SAYS[drawn.title]}` }],
    },
    drop: {
      kind: 'number',
      answer: drop,
      steps: (plan) => {
        const all = hundredths(plan.drawn);
        if (inMetres(plan)) {
          const metric = { metres: (all / 100).toFixed(2), length: lengthText(drop(plan)) };
          return [{ say: 'measuring.metresDown', values: metric }];
        }
        const values = { feet: Math.floor(all / 100), decimals: ((all % 100) / 100).toFixed(2) };
        return [{ say: 'measuring.decimals', values: { ...values, length: lengthText(drop(plan)) } }];
      },
    },
  },
  slips: {
    assumed: (plan) => (plan.drawn.title === 'silent' ? { ...plan, unit: 'decimal' } : null),
    pointForInches: (plan) => ({ ...plan, unit: 'inches' }),
    metres: (plan) => (inMetres(plan) ? null : { ...plan, unit: 'metres' }),
    feetForMetres: (plan) => (inMetres(plan) ? { ...plan, unit: 'decimal', per: PER.foot } : null),
    askedThoughSaid: (plan) => (plan.drawn.title === 'silent' ? null : { ...plan, unit: 'ask' }),
    roughMetre: per(ROUGHLY),
    tenthsAsInches: inch((decimals) => decimals / 10),
    firstDecimal: inch((decimals) => Math.floor(decimals / 10), 2),
    decimalsAsInches: inch((decimals) => decimals),
  },
  figures: () => [],
  figured: () => [],
  says: ['unitSaid', 'unitMetres', 'unitSilent', 'decimals', 'metresDown'].map((key) => `measuring.${key}`),
});
