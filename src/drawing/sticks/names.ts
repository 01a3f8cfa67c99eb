/** How a bar of a cutting plan is named, and what it says to someone who cannot see it. */
import { fromInches, inches, type Ticks } from '../../trade/length.ts';
import type { Speak } from '../../trade/say.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { CutLength } from '../../trade/sticks/types.ts';
import { spoken, together } from '../spoken.ts';
import { type AlikeBars, alikePieces } from './alike.ts';

/** `Stick 1`, `Sticks 3 to 7`, `Remnant 2`. */
export function barName({ bar, from, to }: AlikeBars, speak: Speak): string {
  const key = bar.offcut ? 'drawing.remnant' : 'drawing.stick';
  return from === to
    ? speak({ say: key, values: { number: from } })
    : speak({ say: bar.offcut ? 'drawing.remnants' : 'drawing.sticks', values: { from, to } });
}

/** Whether the length must be named with a bar: not where all sticks are of one length, but with every remnant. */
export function namesLength(lengths: readonly CutLength[]): (bar: CutLength) => boolean {
  const several = new Set(lengths.flatMap(({ offcut, fromIn }) => (offcut ? [] : [fromIn]))).size > 1;
  return ({ offcut }) => offcut || several;
}

/** The two parts of a bar's label: which it is, and what is left of it. */
export function barLabel(alike: AlikeBars, withLength: boolean, speak: Speak): readonly [string, string] {
  const { bar, from, to } = alike;
  const name = barName(alike, speak);
  const length = shortLength(fromInches(bar.fromIn));
  const left = shortLength(fromInches(bar.leftIn));
  return [
    withLength ? speak({ say: 'drawing.barOf', values: { name, length } }) : name,
    bar.leftIn === 0
      ? speak({ say: 'drawing.barWhole' })
      : speak({ say: from === to ? 'drawing.barLeft' : 'drawing.barLeftEach', values: { left } }),
  ];
}

/** @param bars  those that are drawn; `more` are not */
export function sticksWords(bars: readonly AlikeBars[], more: number, kerf: Ticks, speak: Speak): string {
  const say = (key: string, values: Record<string, string | number>) =>
    speak({ say: `drawing.${key}`, values });
  const length = (inch: number) => spoken(fromInches(inch), speak);
  return together([
    say('barsWords', { kerf: length(inches(kerf)) }),
    ...bars.map((alike) => {
      const { bar, from, to } = alike;
      const pieces = alikePieces(bar.pieces).map(({ piece, count }) => {
        const one =
          piece.mark === undefined
            ? length(piece.in)
            : say('barMarked', { mark: piece.mark, length: length(piece.in) });
        return count === 1 ? one : say('barTimes', { count, piece: one });
      });
      const values = {
        name: barName(alike, speak),
        length: length(bar.fromIn),
        pieces: pieces.join(', '),
      };
      if (bar.pieces.length === 0) return say('barWordsUncut', values);
      if (bar.leftIn === 0) return say('barWordsWhole', values);
      return say(from === to ? 'barWords' : 'barWordsEach', { ...values, left: length(bar.leftIn) });
    }),
    ...(more === 0 ? [] : [say('barsMore', { count: more })]),
  ]);
}
