import { given, lengthOf, numberIn, type SecondOpinion } from './told.ts';

/** What its joint may be open stands; beyond, a short piece is made anew; what comes first is what keeps people safe where it lies (common practice, no source). */
const work: SecondOpinion = (told) => {
  const missing = lengthOf(told, 'wanted') - lengthOf(told, 'measured');
  const share = Math.round((missing / numberIn(given(told, 'joints').text)) * 32) / 32;
  const found = given(told, 'found').text;
  const begin = found.includes('bench')
    ? 'log'
    : found.includes('trestles')
      ? 'open'
      : found.includes('no cables')
        ? 'support'
        : 'ask';
  if (missing <= lengthOf(told, 'widest')) return { share, what: 'stand', begin: 'leave' };
  return { share, what: 'new', begin };
};
export default work;
