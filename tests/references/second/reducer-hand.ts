import { given, lengthOf, type SecondOpinion } from './told.ts';

/** Two rectangles and which of their edges are in line: geometry. */
const work: SecondOpinion = (told) => {
  const [first, second] = [lengthOf(told, 'first'), lengthOf(told, 'second')];
  const kept = /left|right|centre/.exec(given(told, 'keeps').text)?.[0] ?? '';
  const sent = /left|right|straight/.exec(given(told, 'sent').text)?.[0] ?? '';
  const wideFirst = first > second;
  const other: Record<string, string> = { left: 'right', right: 'left' };
  const asOneGoes = (hand: string) => (wideFirst ? hand : (other[hand] ?? hand));
  const share: Record<string, number> = { left: 0, right: 1, centre: 0.5, straight: 0.5 };
  const at = share[kept] ?? 0;
  const joins = share[asOneGoes(sent)] ?? 0;
  // The line that both share, from the columns; from there to the kept line of the second.
  const shared = lengthOf(told, 'wall') + (joins - at) * first;
  return {
    hand: kept === 'centre' ? 'straight' : asOneGoes(kept),
    lands: shared + (at - joins) * second,
  };
};
export default work;
