/** Pieces laid onto lengths: what the entry of a cutting plan holds. Pure. */
import type { StickCut, SticksGiven } from '../../../../practice/model.ts';
import { inches } from '../../../../trade/length.ts';

export interface Bench {
  /** What each length on the bench was taken from, by its id; remnants lie there from the first. */
  readonly bars: readonly string[];
  /** The bar of each piece by the piece's number; a piece that is not cut yet has none. */
  readonly on: Readonly<Record<number, number>>;
}

/** The bench of an answer: its lengths in their order, its pieces by their length; then what was not used. */
export function benchOf({ from, pieces }: SticksGiven, cuts: readonly StickCut[] = []): Bench {
  const used = cuts.map((cut) => cut.from);
  const many = from.filter((one) => one.many);
  const spare = from.filter((one) => !one.many && !used.includes(one.id)).map(({ id }) => id);
  // One whole length lies ready, or the lists would offer remnants alone.
  const ready = many.filter(({ id }) => !used.includes(id)).map(({ id }) => id);
  const on: Record<number, number> = {};
  for (const [bar, cut] of cuts.entries()) {
    for (const length of cut.pieces) {
      const piece = pieces.findIndex(
        (one, i) => on[i] === undefined && Math.abs(inches(one) - length) < 1 / 128,
      );
      if (piece >= 0) on[piece] = bar;
    }
  }
  return { bars: [...used, ...spare, ...ready], on };
}

export function onto({ bars, on }: Bench, piece: number, bar: number | null): Bench {
  const { [piece]: _, ...others } = on;
  return { bars, on: bar === null ? others : { ...others, [piece]: bar } };
}

export const takeAnother = ({ bars, on }: Bench, from: string): Bench => ({ bars: [...bars, from], on });

/** Pieces on a bar, in their order. */
export function taken({ on }: Bench, bar: number): readonly number[] {
  return Object.entries(on)
    .flatMap(([piece, of]) => (of === bar ? [Number(piece)] : []))
    .sort((a, b) => a - b);
}

/** The answer: every bar that something is cut from. */
export function asCuts(bench: Bench, { pieces }: SticksGiven): readonly StickCut[] {
  return bench.bars.flatMap((from, bar) => {
    const own = taken(bench, bar).flatMap((piece) => {
      const length = pieces[piece];
      return length === undefined ? [] : [inches(length)];
    });
    return own.length === 0 ? [] : [{ from, pieces: own }];
  });
}
