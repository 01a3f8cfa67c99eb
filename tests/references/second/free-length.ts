import { given, lengthOf, numberIn, type SecondOpinion } from './told.ts';

/** NEC 2023, 392.30(B)(3), as the learner is told it. */
const work: SecondOpinion = (told) => {
  const [, limit = ''] = /([\d.]+) ft at most/.exec(given(told, 'rule').text) ?? [];
  const extension = Math.max(0, lengthOf(told, 'distance') - 12 * numberIn(limit));
  const state =
    extension > 0
      ? 'extend'
      : given(told, 'tied').text.includes('loose')
        ? 'fasten'
        : given(told, 'guarded').text.includes('walkway')
          ? 'guard'
          : 'stays';
  return { extension, state };
};
export default work;
