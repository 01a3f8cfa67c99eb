import { given, lengthOf, numberIn, type SecondOpinion } from './told.ts';

const work: SecondOpinion = (told) => {
  const lengths = Math.ceil(lengthOf(told, 'run') / lengthOf(told, 'stock'));
  return { lengths, splices: lengths - 1, bolts: (lengths - 1) * numberIn(given(told, 'bolts').text) };
};
export default work;
