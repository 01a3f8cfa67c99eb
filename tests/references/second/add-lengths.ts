import { inchesOf, lengthOf, rowsOf, type SecondOpinion } from './told.ts';

const work: SecondOpinion = (told) => {
  const sum = rowsOf(told, 'length').reduce((all, { text }) => all + inchesOf(text), 0);
  return { sum, rest: lengthOf(told, 'run') - sum };
};
export default work;
