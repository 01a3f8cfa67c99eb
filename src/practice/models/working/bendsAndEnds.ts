/** Bends and ends (T08, T06): four pieces bent or hinged on the job, each passed, or sent back for its lip, its angle or its cut. */
import { readLength, type Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, rowsFact, wordFact } from '../parts/told.ts';

const wants = {
  set: 'whole',
  pieces: {
    rows: {
      fault: ['none', 'lip', 'angle', 'square'],
      kind: ['bend', 'hinge'],
      side: ['over', 'under'],
      near: 'decimal',
      far: 'decimal',
      small: 'length',
      large: 'length',
    },
  },
} as const;
type Given = Drawn<typeof wants>;

/** Degrees to either side, and out of square across the width: common practice, no source. */
const ANGLE = 1;
const SQUARE: Ticks = readLength('1/16');
/** What an eye lets pass. */
const BY_EYE = 6;

interface Piece {
  readonly kind: 'bend' | 'hinge';
  readonly lip: 'whole' | 'torn';
  /** Degrees from what is drawn; below it negative. */
  readonly off: number;
  readonly square: Ticks;
}
interface Job {
  readonly set: number;
  readonly pieces: readonly Piece[];
  readonly angle: number;
  readonly square: number;
  readonly looksAtLip: boolean;
}

function pieceOf({ fault, kind, side, near, far, small, large }: Given['pieces'][number]): Piece | null {
  // Only what was bent by hand can be torn by it.
  if (fault === 'lip' && kind === 'hinge') return null;
  const off = fault === 'angle' ? far : near;
  return {
    kind,
    lip: fault === 'lip' ? 'torn' : 'whole',
    off: side === 'over' ? off : -off,
    square: fault === 'square' ? large : small,
  };
}

function judged({ pieces, angle, square, looksAtLip }: Job, i: number): string {
  const piece = pieces[i];
  if (piece === undefined) return 'holds';
  if (looksAtLip && piece.lip === 'torn') return 'lip';
  if (Math.abs(piece.off) > angle) return 'angle';
  return piece.square > square ? 'square' : 'holds';
}

const say = lineOf('working');
const ask = (i: number) => ({
  kind: 'choice' as const,
  answer: (job: Job) => judged(job, i),
  // A good piece made again harms nobody.
  critical: (job: Job) => judged(job, i) !== 'holds',
  steps: ({ set, pieces }: Job) => [
    say('bendOrEnd', {
      number: i + 1,
      angle: (set + (pieces[i]?.off ?? 0)).toFixed(1),
      set,
      square: shortLength(pieces[i]?.square ?? SQUARE),
      limit: shortLength(SQUARE),
    }),
  ],
});

export const bendsAndEnds = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn) => {
    const pieces = drawn.pieces.flatMap((row) => pieceOf(row) ?? []);
    if (pieces.length < drawn.pieces.length) return null;
    const job: Job = { set: drawn.set, pieces, angle: ANGLE, square: SQUARE, looksAtLip: true };
    const found = pieces.map((_, i) => judged(job, i));
    return found.includes('holds') && found.some((one) => one !== 'holds') ? job : null;
  },
  facts: ({ set, pieces }) => ({
    set: numberFact(set),
    angle: numberFact(ANGLE),
    square: lengthFact(SQUARE),
    pieces: rowsFact(
      pieces.map(({ kind, lip, off, square }) => ({
        kind: wordFact(kind),
        lip: wordFact(lip),
        angle: numberFact(Number((set + off).toFixed(1)), 1),
        square: lengthFact(square),
      })),
    ),
    rule: wordFact('rule'),
  }),
  asks: { 'piece-1': ask(0), 'piece-2': ask(1), 'piece-3': ask(2), 'piece-4': ask(3) },
  slips: {
    tornLip: (job) => ({ ...job, looksAtLip: false }),
    setByEye: (job) => ({ ...job, angle: BY_EYE }),
    wedge: (job) => ({ ...job, square: Infinity }),
    toTheTenth: (job) => ({ ...job, angle: 0 }),
    halfTheLimit: (job) => ({ ...job, square: SQUARE / 2 }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['bendOrEnd']),
});
