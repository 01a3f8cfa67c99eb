import { given, lengthOf, type SecondOpinion } from './told.ts';

/** From the elbow's face to the lower place, and what goes in (common practice, no source). */
const work: SecondOpinion = (told) => {
  const socket = given(told, 'lower').text.includes('socket');
  const open = lengthOf(told, 'distance') - lengthOf(told, 'take-out') - lengthOf(told, 'above');
  return { ends: socket ? 'both' : 'first', cut: open + lengthOf(told, 'insertion') * (socket ? 2 : 1) };
};
export default work;
