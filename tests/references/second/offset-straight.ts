import { given, lengthOf, numberIn, type SecondOpinion, sixteenth } from './told.ts';

/** Right triangle over the offset: the slope is the offset over the sine of the angle (plane geometry). */
const work: SecondOpinion = (told) => {
  const angle = (numberIn(given(told, 'angle').text) * Math.PI) / 180;
  const travel = lengthOf(told, 'offset') / Math.sin(angle);
  const straight = travel - 2 * lengthOf(told, 'take-out') + 2 * lengthOf(told, 'insertion');
  return { travel, straight: sixteenth(straight) };
};
export default work;
