import { lengthOf, type SecondOpinion } from './told.ts';

/** Each piece goes in at the reducer and butts at its other end (common practice, no source). */
const work: SecondOpinion = (told) => {
  const [run, near, reducer, deep] = ['run', 'to-face', 'reducer', 'insertion'].map((id) => lengthOf(told, id)) as [
    number,
    number,
    number,
    number,
  ];
  return { wide: near + deep, narrow: run - near - reducer + deep };
};
export default work;
