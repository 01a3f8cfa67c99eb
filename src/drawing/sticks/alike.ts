/** The bars of a cutting plan, those that stand side by side and are cut alike as one. */
import type { CutLength, CutPiece } from '../../trade/sticks/types.ts';

export interface AlikeBars {
  readonly bar: CutLength;
  /** Number of the first and the last of them; sticks and remnants are numbered apart, each from 1. */
  readonly from: number;
  readonly to: number;
}

/** In the order of the plan. */
export function alikeBars(lengths: readonly CutLength[]): readonly AlikeBars[] {
  const found: AlikeBars[] = [];
  const next = { stick: 1, remnant: 1 };
  for (const bar of lengths) {
    const number = next[bar.offcut ? 'remnant' : 'stick']++;
    const last = found.at(-1);
    if (last !== undefined && nameOf(last.bar) === nameOf(bar))
      found[found.length - 1] = { ...last, to: number };
    else found.push({ bar, from: number, to: number });
  }
  return found;
}

const nameOf = ({ fromIn, offcut, pieces, leftIn }: CutLength): string =>
  JSON.stringify([fromIn, offcut, leftIn, pieces.map((piece) => [piece.in, piece.mark ?? null])]);

export interface AlikePieces {
  readonly piece: CutPiece;
  readonly count: number;
}

/** The pieces of a bar, those of one length and mark that follow one another as one. */
export function alikePieces(pieces: readonly CutPiece[]): readonly AlikePieces[] {
  const found: AlikePieces[] = [];
  for (const piece of pieces) {
    const last = found.at(-1);
    if (last !== undefined && last.piece.in === piece.in && last.piece.mark === piece.mark)
      found[found.length - 1] = { piece, count: last.count + 1 };
    else found.push({ piece, count: 1 });
  }
  return found;
}
