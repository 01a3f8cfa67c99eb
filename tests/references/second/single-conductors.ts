import { given, numberIn, type SecondOpinion } from './told.ts';

/** NEC 2023, 392.22(B)(2) and 392.10(B)(1) as the learner is told them. */
const work: SecondOpinion = (told) => {
  const sum = numberIn(given(told, 'count').text) * numberIn(given(told, 'od').text);
  const reached =
    given(told, 'bottom').text === 'ventilated' && given(told, 'serviced').text.includes('qualified persons');
  if (!reached) return { sum, against: 'nothing', may: 'ask' };
  return { sum, against: 'inside', may: sum <= numberIn(given(told, 'width').text) ? 'yes' : 'no' };
};
export default work;
