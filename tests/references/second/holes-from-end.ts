import { lengthOf, type SecondOpinion } from './told.ts';

/** Each hole from its own end, so from the other it is the length less that (common practice, no source). */
const work: SecondOpinion = (told) => ({
  outer: lengthOf(told, 'length') - lengthOf(told, 'first'),
  inner: lengthOf(told, 'length') - lengthOf(told, 'second'),
});
export default work;
