/** Pieces from lengths (T01): so many equal pieces: how many come out of one length, and how many lengths that takes. */
import { KERF } from '../../../trade/habits.ts';
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { sticks } from '../../../trade/sticks/sticks.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { read } from '../parts/reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  near: ['any', 'even'],
  count: 'whole',
  length: 'length',
  share: ['two', 'three', 'four', 'five'],
} as const;
/** Pieces that are an even part of a length, and leave no room for the saw. */
const SHARES = { two: 2, three: 3, four: 4, five: 5 } as const;

interface Plan {
  readonly width: string;
  readonly stock: Ticks;
  readonly piece: Ticks;
  readonly count: number;
  /** Pieces out of one length, and lengths in all, as the person reckons. */
  readonly each: number;
  readonly lengths: number;
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const stock = read(world, drawn.width, 'tray').length;
  const piece = drawn.near === 'even' ? ticks(stock / SHARES[drawn.share]) : drawn.length;
  const { count } = drawn;
  const { lengthsUsed } = sticks({
    stock: [{ length: stock }],
    pieces: [{ length: piece, count }],
    kerf: KERF.length,
  }).result;
  // A saw cut to every piece, but none where the last ends with the length.
  const each = Math.floor((stock + KERF.length) / (piece + KERF.length));
  // More pieces than go into one length, or there is nothing to divide.
  if (lengthsUsed === null || lengthsUsed < 2) return null;
  return { width: drawn.width, stock, piece, count, each, lengths: lengthsUsed };
}

type PieceSlip = Slip<Plan>;
const lengthsFor = (count: number, each: number) => Math.ceil(count / each);
/** All pieces laid end to end and divided by one length. */
const byTotal = ({ count, piece, stock }: Plan) => Math.ceil((count * piece) / stock);

/** So many pieces are taken to come out of one length. */
const eachIs =
  (pieces: (plan: Plan) => number): PieceSlip =>
  (taken) => {
    const each = pieces(taken);
    return each === taken.each ? null : { ...taken, each };
  };
/** So many lengths are ordered; null where that is right, or what the whole divided by one length comes to. */
const lengthsAre =
  (made: (plan: Plan) => number): PieceSlip =>
  (taken) => {
    const lengths = made(taken);
    return lengths === taken.lengths || lengths === byTotal(taken) ? null : { ...taken, lengths };
  };
/** What the saw takes is left out, and the pieces are an even part of a length. */
const withoutKerf = ({ stock, piece }: Plan) => Math.floor(stock / piece);
const oneMore = (taken: Plan) => (withoutKerf(taken) > taken.each ? taken.each : taken.each + 1);

export const piecesFromLengths = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, stock, piece, count }) => ({
    width: { kind: 'word', value: width },
    stock: { kind: 'length', ticks: stock },
    kerf: { kind: 'length', ticks: KERF.length },
    piece: { kind: 'length', ticks: piece },
    count: { kind: 'number', value: count },
  }),
  asks: {
    each: {
      kind: 'number',
      answer: (taken) => taken.each,
      steps: ({ stock, piece, each: made }) => [
        {
          say: 'cutting.each',
          values: {
            piece: formatLength(piece),
            kerf: shortLength(KERF.length),
            stock: formatLength(stock),
            each: made,
            parts: (inches(stock) / inches(ticks(piece + KERF.length))).toFixed(2),
          },
        },
      ],
    },
    lengths: {
      kind: 'number',
      answer: ({ lengths }) => lengths,
      steps: ({ count, each: made, lengths }) => [
        { say: 'cutting.lengthsFor', values: { count, each: made, lengths } },
      ],
      follows: {
        asks: ['each'],
        answer: ({ count }, _, { each: earlier }) =>
          (earlier as number) >= 1 ? lengthsFor(count, earlier as number) : null,
      },
    },
  },
  slips: {
    totalByStock: (taken) =>
      byTotal(taken) === taken.lengths ? null : { ...taken, lengths: byTotal(taken) },
    kerfIgnored: eachIs(withoutKerf),
    /** The part of a piece that is left counts as one. */
    oneMoreOutOfEach: eachIs(oneMore),
    lengthsByOneMore: lengthsAre((taken) => lengthsFor(taken.count, oneMore(taken))),
    roundedDown: (taken, world) => {
      const lengths = Math.floor(taken.count / taken.each);
      const other = lengthsFor(taken.count, oneMore(taken));
      return lengths === other ? null : lengthsAre(() => lengths)(taken, world, {});
    },
  },
  figures: () => [],
  figured: () => [],
  says: ['cutting.each', 'cutting.lengthsFor'],
});
