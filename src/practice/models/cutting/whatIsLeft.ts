/** What is left (T06): two or three pieces from one length: where the last mark stands, and the rest behind it. */
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { read } from '../parts/reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  cuts: { rows: { length: 'length' } },
  kerf: 'length',
} as const;

interface Plan {
  readonly width: string;
  readonly stock: Ticks;
  readonly kerf: Ticks;
  readonly cuts: readonly Ticks[];
  /** Saw cuts that the person reckons with, up to the last mark and in all. */
  readonly before: number;
  readonly all: number;
}

const total = (lengths: readonly number[]) => ticks(lengths.reduce((a, b) => a + b, 0));
const mark = ({ cuts, before, kerf }: Plan): Ticks => ticks(total(cuts) + before * kerf);
const left = ({ stock, cuts, all, kerf }: Plan): Ticks => ticks(stock - total(cuts) - all * kerf);

/** A rest worth naming; shorter ones are scrap, and nobody would ask. */
const SHORTEST = 6;

function plan({ width, cuts, kerf }: Drawn<typeof wants>, world: World): Plan | null {
  const stock = read(world, width, 'tray').length;
  const lengths = cuts.map(({ length }) => length);
  const made = { width, stock, kerf, cuts: lengths, before: lengths.length - 1, all: lengths.length };
  return inches(left(made)) < SHORTEST ? null : made;
}

type LeftSlip = Slip<Plan>;

export const whatIsLeft = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, stock, kerf, cuts }) => ({
    width: { kind: 'word', value: width },
    stock: { kind: 'length', ticks: stock },
    kerf: { kind: 'length', ticks: kerf },
    pieces: { kind: 'number', value: cuts.length },
    cuts: { kind: 'rows', rows: cuts.map((length) => ({ length: { kind: 'length', ticks: length } })) },
  }),
  asks: {
    mark: {
      kind: 'number',
      answer: (taken) => inches(mark(taken)),
      steps: (taken) => [
        {
          say: 'cutting.mark',
          values: {
            pieces: formatLength(total(taken.cuts), 64),
            before: taken.before,
            kerf: shortLength(taken.kerf),
            mark: formatLength(mark(taken), 64),
          },
        },
      ],
    },
    left: {
      kind: 'number',
      answer: (taken) => inches(left(taken)),
      steps: (taken) => [
        {
          say: 'cutting.left',
          values: {
            stock: formatLength(taken.stock),
            pieces: formatLength(total(taken.cuts), 64),
            cuts: taken.all,
            kerf: shortLength(taken.kerf),
            left: formatLength(left(taken), 64),
          },
        },
      ],
    },
  },
  slips: {
    noKerf: (taken) => ({ ...taken, before: 0, all: 0 }),
    /** One saw cut for all; the last mark of two pieces stands behind one anyway. */
    oneKerf: (taken) => ({ ...taken, all: 1 }),
    kerfBehindLast: (taken) => ({ ...taken, before: taken.all }),
    kerfTooMany: (taken) => ({ ...taken, all: taken.all + 1 }),
    lastLeftOut: (taken) => ({ ...taken, cuts: taken.cuts.slice(0, -1) }),
  } satisfies Record<string, LeftSlip>,
  figures: () => [],
  figured: () => [],
  says: ['cutting.mark', 'cutting.left'],
});
