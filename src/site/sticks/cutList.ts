/** The cut list by stick: what is cut from each, how often, and a box for every cut. Pure. */
import { type AlikeBars, alikeBars, alikePieces } from '../../drawing/sticks/alike.ts';
import { fromInches, type Ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { CutLength } from '../../trade/sticks/types.ts';

/** Boxes that one line has room for; above it one box stands for all of them. */
const MOST_BOXES = 100;

export interface ListedCut {
  readonly length: string;
  readonly mark: string;
  /** From each of the sticks that are cut alike. */
  readonly times: number;
  /** One for each cut of all of them; 1 where they are more than a line holds. */
  readonly boxes: number;
  /** All cuts that the boxes stand for. */
  readonly cuts: number;
}

export interface ListedBars {
  readonly alike: AlikeBars;
  readonly length: string;
  /** Empty where nothing is left. */
  readonly left: string;
  readonly keeps: boolean;
  readonly cuts: readonly ListedCut[];
}

export function cutList(lengths: readonly CutLength[], least: Ticks): readonly ListedBars[] {
  return alikeBars(lengths).map((alike) => {
    const { bar, from, to } = alike;
    const left = fromInches(bar.leftIn);
    return {
      alike,
      length: shortLength(fromInches(bar.fromIn)),
      left: left === 0 ? '' : shortLength(left),
      keeps: left > 0 && left >= least,
      cuts: alikePieces(bar.pieces).map(({ piece, count }) => {
        const cuts = count * (to - from + 1);
        return {
          length: shortLength(fromInches(piece.in)),
          mark: piece.mark ?? '',
          times: count,
          boxes: cuts > MOST_BOXES ? 1 : cuts,
          cuts,
        };
      }),
    };
  });
}
