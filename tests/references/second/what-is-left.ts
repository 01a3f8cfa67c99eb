import { inchesOf, lengthOf, rowsOf, type SecondOpinion } from './told.ts';

/** A saw cut between two pieces, and one behind the last (common practice, no source). */
const work: SecondOpinion = (told) => {
  const cuts = rowsOf(told, 'cut').map(({ text }) => inchesOf(text));
  const mark = cuts.reduce((sum, one) => sum + one, 0) + (cuts.length - 1) * lengthOf(told, 'kerf');
  return { mark, left: lengthOf(told, 'stock') - mark - lengthOf(told, 'kerf') };
};
export default work;
