/**
 * Drop between elevations (T01, T04): from the bottom of a tray down to the top of a stand, elevations in feet and inches.
 * The drawing notes the tray's bottom, or the underside of the strut that it lies on.
 */
import { formatLength, fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip } from '../../model.ts';
import { asDecimals, feetInch, lengthText } from '../parts/feetInch.ts';

const wants = {
  noted: ['tray', 'underside'],
  strut: ['deep', 'shallow'],
  upper: 'length',
  lower: 'length',
} as const;

/** Depths of strut: training values. */
const STRUT = { deep: fromInches(1 + 5 / 8), shallow: fromInches(13 / 16) } as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** Added to the elevation noted, to come to the tray's bottom. */
  readonly added: Ticks;
  readonly way: 'right' | 'decimals' | 'borrowed ten' | 'small from large' | 'foot kept';
}

function drop({ drawn, added, way }: Plan): number {
  const [top, bottom] = [feetInch(ticks(drawn.upper + added)), feetInch(drawn.lower)];
  const [feet, inch] = [top.feet - bottom.feet, top.inch - bottom.inch];
  if (way === 'decimals')
    return (asDecimals(feetInch(drawn.upper)) - asDecimals(bottom)) * 12 + inches(added);
  if (way === 'right' || inch >= 0) return feet * 12 + inch;
  if (way === 'small from large') return feet * 12 - inch;
  return way === 'foot kept' ? (feet + 1) * 12 + inch : (feet - 1) * 12 + inch + 10;
}

type DropSlip = Slip<Plan>;
const way =
  (taken: Plan['way']): DropSlip =>
  (plan) =>
    drop({ ...plan, way: taken }) === drop(plan) ? null : { ...plan, way: taken };

export const dropBetweenElevations = model<typeof wants, Plan>({
  wants,
  plan: (drawn) => ({
    drawn,
    added: drawn.noted === 'underside' ? STRUT[drawn.strut] : ticks(0),
    way: 'right',
  }),
  facts: ({ drawn }) => ({
    noted: { kind: 'word', value: drawn.noted },
    strut: { kind: 'length', ticks: STRUT[drawn.strut] },
    upper: { kind: 'length', ticks: drawn.upper },
    lower: { kind: 'length', ticks: drawn.lower },
  }),
  asks: {
    drop: {
      kind: 'number',
      answer: drop,
      steps: (plan) => {
        const { drawn, added } = plan;
        const top = formatLength(ticks(drawn.upper + added));
        return [
          ...(added > 0
            ? [{ say: 'measuring.onStrut', values: { strut: shortLength(added), top } }]
            : [{ say: 'measuring.trayBottom', values: { top } }]),
          {
            say: 'measuring.dropped',
            values: { top, lower: formatLength(drawn.lower), length: lengthText(drop(plan)) },
          },
        ];
      },
    },
  },
  slips: {
    strutAdded: (plan) => (plan.drawn.noted === 'tray' ? { ...plan, added: STRUT[plan.drawn.strut] } : null),
    strutForgotten: (plan) => (plan.drawn.noted === 'tray' ? null : { ...plan, added: ticks(0) }),
    strutTakenOff: (plan) =>
      plan.drawn.noted === 'tray' ? null : { ...plan, added: ticks(-STRUT[plan.drawn.strut]) },
    asDecimals: way('decimals'),
    borrowedTen: way('borrowed ten'),
    smallFromLarge: way('small from large'),
    footKept: way('foot kept'),
  },
  figures: () => [],
  figured: () => [],
  says: ['onStrut', 'trayBottom', 'dropped'].map((key) => `measuring.${key}`),
});
