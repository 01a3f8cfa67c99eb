/** What is said of a piece: on it, at its ends, and in its words. */
import type { Piece } from '../run/straight.ts';
import { formatLength, type Ticks, ticks } from '../trade/length.ts';
import type { Speak } from '../trade/say.ts';
import type { Meets } from './meets.ts';
import type { PieceGiven } from './pieceGiven.ts';
import { spoken, together } from './spoken.ts';
import type { How } from './types.ts';

/** On the piece: its cut, or that it is asked. */
export function cutSaid(piece: Piece, cut: PieceGiven['cut'], speak: Speak): string {
  return cut === 'shown'
    ? speak({ say: 'drawing.cutIs', values: { cut: formatLength(piece.cut) } })
    : speak({ say: 'drawing.cutTo' });
}

/** What the tape shows between the places it is held to. */
export function tapeShows({ clear, ends }: Piece, measured: 'edges' | 'middles'): Ticks {
  return measured === 'edges' ? clear : ticks(clear + ends[0].takeOut + ends[1].takeOut);
}

/** What an end is called: by its joint, or by what it meets. */
export function endKey({ end, joint, face }: Meets): string {
  if (joint !== undefined) return joint.kind === 'socketed' ? 'drawing.endSleeve' : 'drawing.endPlate';
  if (end.kind === 'free') return 'drawing.endFree';
  return `drawing.end-${end.kind}-${face?.kind ?? 'free'}`;
}

/** The words of the figure. */
export function pieceWords(
  piece: Piece,
  sides: readonly Meets[],
  { insertion, measured, cut }: Required<Pick<PieceGiven, 'insertion' | 'measured' | 'cut'>>,
  { speak }: How,
): string {
  const length = spoken(tapeShows(piece, measured ?? 'edges'), speak);
  return together([
    speak({
      say: measured === 'middles' ? 'drawing.pieceWordsMiddle' : 'drawing.pieceWords',
      values: { length },
    }),
    cut === 'shown'
      ? speak({ say: 'drawing.pieceCutTo', values: { cut: spoken(piece.cut, speak) } })
      : speak({ say: 'drawing.pieceCutAsked' }),
    ...sides.map((side, i) => {
      const name = speak({
        say: endKey(side),
        values: side.joint === undefined ? {} : { name: side.joint.name },
      });
      const which = i === 0 ? 'first' : 'second';
      return insertion === 'shown' && side.end.insertion > 0
        ? speak({ say: `drawing.${which}EndIn`, values: { name, into: spoken(side.end.insertion, speak) } })
        : speak({ say: `drawing.${which}End`, values: { name } });
    }),
  ]);
}
