/** Waste side (T06): where the blade belongs, and what a piece and its rest come to when it ran elsewhere. */
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { drawMark, markedCut, markSays } from '../parts/markedLength.ts';
import { read } from '../parts/reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  piece: ['left', 'right'],
  ran: ['wrong', 'on'],
  length: 'length',
  kerf: 'length',
} as const;

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  readonly stock: Ticks;
  /** Of the saw cut, how much comes off the piece, in halves. */
  readonly halves: number;
  /** And off the rest. */
  readonly restHalves: number;
  readonly blade: 'left' | 'right' | 'on';
}

const half = ({ drawn }: Plan) => drawn.kerf / 2;
const piece = (taken: Plan): Ticks => ticks(taken.drawn.length - taken.halves * half(taken));
const rest = (taken: Plan): Ticks => ticks(taken.stock - taken.drawn.length - taken.restHalves * half(taken));

function plan(drawn: Drawn<typeof wants>, world: World): Plan {
  const halves = drawn.ran === 'wrong' ? 2 : 1;
  const blade = drawn.piece === 'left' ? 'right' : 'left';
  const stock = read(world, drawn.width, 'tray').length;
  return { drawn, stock, halves, restHalves: 2 - halves, blade };
}

type SideSlip = Slip<Plan>;
const off =
  (halves: (right: number) => number | null): SideSlip =>
  (taken) => {
    const made = halves(taken.halves);
    return made === null ? null : { ...taken, halves: made };
  };

export const wasteSide = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, stock }) => ({
    width: { kind: 'word', value: drawn.width },
    piece: { kind: 'word', value: drawn.piece },
    ran: { kind: 'word', value: drawn.ran },
    length: { kind: 'length', ticks: drawn.length },
    kerf: { kind: 'length', ticks: drawn.kerf },
    stock: { kind: 'length', ticks: stock },
  }),
  asks: {
    side: {
      kind: 'choice',
      answer: ({ blade }) => blade,
      steps: ({ drawn }) => [{ say: `cutting.${drawn.piece}IsPiece` }],
    },
    piece: {
      kind: 'number',
      answer: (taken) => inches(piece(taken)),
      steps: (taken) => [
        {
          say: 'cutting.pieceGot',
          values: {
            length: formatLength(taken.drawn.length, 64),
            off: shortLength(ticks(taken.halves * half(taken))),
            piece: formatLength(piece(taken), 64),
          },
        },
      ],
    },
    rest: {
      kind: 'number',
      answer: (taken) => inches(rest(taken)),
      steps: (taken) => [
        {
          say: 'cutting.restGot',
          values: {
            stock: formatLength(taken.stock),
            length: formatLength(taken.drawn.length, 64),
            off: shortLength(ticks(taken.restHalves * half(taken))),
            rest: formatLength(rest(taken), 64),
          },
        },
      ],
    },
  },
  slips: {
    pieceSide: (taken) => ({ ...taken, blade: taken.drawn.piece }),
    onTheMark: (taken) => ({ ...taken, blade: 'on' }),
    asMarked: off(() => 0),
    halfForWhole: off((halves) => (halves === 2 ? 1 : null)),
    wholeForHalf: off((halves) => (halves === 1 ? 2 : null)),
    longer: off((halves) => -halves),
    /** The rest is reckoned as if the blade had run on the waste side. */
    restAsUsual: (taken) => ({ ...taken, restHalves: 2 }),
    /** The piece's part of the saw cut goes to the rest as well. */
    restGrows: (taken) => ({ ...taken, restHalves: -taken.halves }),
  },
  figures: ({ drawn: { piece: side, ran } }, _, how) => [drawMark({ piece: side, ran }, how)],
  figured: ({ drawn: { piece: side, ran } }) => [{ kind: 'cut', ...markedCut(side, ran) }],
  says: [
    ...['leftIsPiece', 'rightIsPiece', 'pieceGot', 'restGot'].map((key) => `cutting.${key}`),
    ...markSays,
  ],
});
