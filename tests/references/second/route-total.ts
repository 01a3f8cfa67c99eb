import { lengthOf, type SecondOpinion } from './told.ts';

/** At each side of an elbow its take-out goes off and what goes in comes on (common practice, no source). */
const work: SecondOpinion = (told) => {
  const length = (id: string) => lengthOf(told, id);
  const at = (id: string) => length('insertion') - length(id);
  const middle = length('two') + at('first-take-out') + at('second-take-out');
  const outer = length('one') + at('first-take-out') + length('three') + at('second-take-out');
  return { middle, total: middle + outer };
};
export default work;
