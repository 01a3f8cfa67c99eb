/** Add lengths (T05): three or four lengths in feet, inches and parts, and what is left of a run behind them. */
import { formatLength, fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { inchNumber } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip } from '../../model.ts';
import { feetInch, lengthText } from '../parts/feetInch.ts';

const wants = { lengths: { rows: { length: 'length' } }, rest: 'length' } as const;

/** How the person carries and borrows. */
interface Plan {
  readonly lengths: readonly Ticks[];
  readonly run: Ticks;
  readonly carry: 'twelve' | 'ten' | 'no parts';
  readonly borrow: 'twelve' | 'ten' | 'none' | 'foot kept';
}

const total = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

function sum({ lengths, carry }: Plan): number {
  const parts = lengths.map(feetInch);
  const feet = total(parts.map((one) => one.feet));
  const inch = total(parts.map((one) => one.inch));
  if (carry === 'ten') return (feet + Math.floor(inch / 10)) * 12 + (inch % 10);
  const lost = carry === 'no parts' ? Math.floor(total(lengths.map((one) => inches(one) % 1))) : 0;
  return feet * 12 + inch - lost;
}

function rest({ run, borrow }: Plan, behind: Ticks): number {
  const [whole, off] = [feetInch(run), feetInch(behind)];
  const [feet, inch] = [whole.feet - off.feet, whole.inch - off.inch];
  if (inch >= 0) return feet * 12 + inch;
  if (borrow === 'none') return feet * 12 - inch;
  return (borrow === 'foot kept' ? feet : feet - 1) * 12 + inch + (borrow === 'ten' ? 10 : 12);
}
const right = ({ lengths }: Plan) => ticks(total(lengths));

type AddSlip = Slip<Plan>;
const changed = (plan: Plan, slipped: Plan): Plan | null =>
  sum(plan) === sum(slipped) && rest(plan, right(plan)) === rest(slipped, right(plan)) ? null : slipped;

export const addLengths = model<typeof wants, Plan>({
  wants,
  plan: ({ lengths, rest: more }: Drawn<typeof wants>) => {
    const all = lengths.map(({ length }) => length);
    return { lengths: all, run: ticks(total(all) + more), carry: 'twelve', borrow: 'twelve' };
  },
  facts: ({ lengths, run }) => ({
    lengths: {
      kind: 'rows',
      rows: lengths.map((length) => ({ length: { kind: 'length', ticks: length } })),
    },
    run: { kind: 'length', ticks: run },
  }),
  asks: {
    sum: {
      kind: 'number',
      answer: sum,
      steps: (plan) => {
        const parts = plan.lengths.map(feetInch);
        const inch = total(parts.map((one) => one.inch));
        const feet = total(parts.map((one) => one.feet));
        return [
          {
            say: 'practice.sum',
            values: { feet, inches: inchNumber(fromInches(inch)), length: lengthText(sum(plan)) },
          },
        ];
      },
    },
    rest: {
      kind: 'number',
      answer: (plan) => rest(plan, right(plan)),
      steps: (plan) => [
        {
          say: 'measuring.restOfRun',
          values: {
            run: formatLength(plan.run),
            sum: formatLength(right(plan)),
            length: lengthText(rest(plan, right(plan))),
          },
        },
      ],
      follows: {
        asks: ['sum'],
        answer: ({ run }, _, { sum: earlier }) => inches(run) - (earlier as number),
      },
    },
  },
  slips: {
    partsNotCarried: (plan) => changed(plan, { ...plan, carry: 'no parts' }),
    carriedAtTen: (plan) => changed(plan, { ...plan, carry: 'ten' }),
    lastLeftOut: (plan) => ({ ...plan, lengths: plan.lengths.slice(0, -1) }),
    borrowedTen: (plan) => changed(plan, { ...plan, borrow: 'ten' }),
    smallFromLarge: (plan) => changed(plan, { ...plan, borrow: 'none' }),
    footKept: (plan) => changed(plan, { ...plan, borrow: 'foot kept' }),
  } satisfies Record<string, AddSlip>,
  figures: () => [],
  figured: () => [],
  says: ['practice.sum', 'measuring.restOfRun'],
});
