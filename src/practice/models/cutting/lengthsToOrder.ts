/** Lengths to order (T01): whole lengths for a straight run, the splices between them, and the bolts of those. */
import { spliceStraightRun } from '../../../run/spliceStraight.ts';
import { KERF } from '../../../trade/habits.ts';
import { formatLength, type Ticks, ticks } from '../../../trade/length.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { read } from '../parts/reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  run: 'length',
  bolts: ['four', 'six', 'eight'],
} as const;
const BOLTS = { four: 4, six: 6, eight: 8 } as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  readonly stock: Ticks;
  readonly lengths: number;
  readonly splices: number;
  readonly each: number;
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const tray = read(world, drawn.width, 'tray');
  const plate = read(world, tray.own.butt, 'plate');
  // The last piece is as long as its plate at least; a shorter rest is laid out otherwise, and would not be plain to see.
  const rest = drawn.run % tray.length;
  if (drawn.run <= tray.length || rest < 2 * plate.length) return null;
  const { leg, lengths } = spliceStraightRun({
    length: drawn.run,
    stock: tray.length,
    kerf: KERF.length,
    splice: { kind: 'butt', length: plate.length, gap: ticks(0) },
  }).result;
  return { drawn, stock: tray.length, lengths, splices: leg.joints.length, each: BOLTS[drawn.bolts] };
}

type OrderSlip = Slip<Plan>;
const boltsOf = ({ splices, each }: Pick<Plan, 'splices' | 'each'>) => splices * each;

export const lengthsToOrder = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, stock, each }) => ({
    width: { kind: 'word', value: drawn.width },
    run: { kind: 'length', ticks: drawn.run },
    stock: { kind: 'length', ticks: stock },
    bolts: { kind: 'number', value: each },
  }),
  asks: {
    lengths: {
      kind: 'number',
      answer: ({ lengths }) => lengths,
      steps: ({ drawn, stock, lengths }) => [
        {
          say: 'cutting.lengths',
          values: {
            run: formatLength(drawn.run),
            stock: formatLength(stock),
            whole: lengths - 1,
            rest: formatLength(ticks(drawn.run % stock)),
            lengths,
          },
        },
      ],
    },
    splices: {
      kind: 'number',
      answer: ({ splices }) => splices,
      steps: ({ splices, lengths }) => [{ say: 'cutting.splices', values: { lengths, splices } }],
      follows: { asks: ['lengths'], answer: (_, __, { lengths }) => (lengths as number) - 1 },
    },
    bolts: {
      kind: 'number',
      answer: boltsOf,
      steps: (taken) => [
        {
          say: 'cutting.bolts',
          values: { splices: taken.splices, each: taken.each, bolts: boltsOf(taken) },
        },
      ],
      follows: {
        asks: ['splices'],
        answer: ({ each }, _, { splices }) => boltsOf({ splices: splices as number, each }),
      },
    },
  },
  slips: {
    roundedDown: (taken) => ({ ...taken, lengths: taken.lengths - 1, splices: taken.splices - 1 }),
    splicesAsLengths: (taken) => ({ ...taken, splices: taken.lengths }),
    oneOfTwoSides: (taken) => ({ ...taken, each: taken.each / 2 }),
  } satisfies Record<string, OrderSlip>,
  figures: () => [],
  figured: () => [],
  says: ['cutting.lengths', 'cutting.splices', 'cutting.bolts'],
});
