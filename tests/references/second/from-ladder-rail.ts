import { given, lengthOf, type SecondOpinion } from './told.ts';

/** Begins at the rail's outer face; the take-out comes off, what goes in comes on (common practice, no source). */
const work: SecondOpinion = (told) => {
  const half = given(told, 'from').text.includes('centre') ? lengthOf(told, 'ladder') / 2 : 0;
  const socket = given(told, 'start').text.includes('socket');
  const deep = lengthOf(told, 'insertion');
  const face = lengthOf(told, 'distance') - half - lengthOf(told, 'take-out');
  return { ends: socket ? 'both' : 'second', cut: face + deep + (socket ? deep : 0) };
};
export default work;
