import { given, inchesOf, lengthOf, type SecondOpinion } from './told.ts';

/** An end that goes in adds what goes in; one that butts adds nothing (common practice, no source). */
const work: SecondOpinion = (told) => {
  const [first = 0, second = 0] = ['first', 'second'].map((id) => {
    const [, deep] = /([\d /]+") goes in/.exec(given(told, id).text) ?? [];
    return deep === undefined ? 0 : inchesOf(deep);
  });
  const ends = first > 0 ? (second > 0 ? 'both' : 'first') : second > 0 ? 'second' : 'neither';
  return { ends, cut: lengthOf(told, 'distance') + first + second };
};
export default work;
