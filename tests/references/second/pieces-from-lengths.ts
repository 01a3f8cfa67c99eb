import { given, lengthOf, numberIn, type SecondOpinion } from './told.ts';

/** The last piece of a length needs no saw cut where it ends with the length. */
const work: SecondOpinion = (told) => {
  const [piece, stock, kerf] = ['piece', 'stock', 'kerf'].map((id) => lengthOf(told, id)) as [number, number, number];
  let each = 0;
  while ((each + 1) * piece + each * kerf <= stock) each += 1;
  return { each, lengths: Math.ceil(numberIn(given(told, 'count').text) / each) };
};
export default work;
