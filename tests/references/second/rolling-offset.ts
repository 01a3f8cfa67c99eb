import { given, lengthOf, numberIn, type SecondOpinion, sixteenth } from './told.ts';

/** Rise and roll make the true offset by Pythagoras; over the sine of the angle it is the slope (plane geometry). */
const work: SecondOpinion = (told) => {
  const angle = (numberIn(given(told, 'angle').text) * Math.PI) / 180;
  const travel = Math.hypot(lengthOf(told, 'offset'), lengthOf(told, 'roll')) / Math.sin(angle);
  const straight = travel - 2 * lengthOf(told, 'take-out') + 2 * lengthOf(told, 'insertion');
  return { travel, straight: sixteenth(straight) };
};
export default work;
