import { given, inchesOf, lengthOf, type SecondOpinion } from './told.ts';

/** The tray lies on top of the strut. */
const work: SecondOpinion = (told) => {
  const [upper = 0, lower = 0] = ['upper', 'lower'].map((id) => inchesOf(given(told, id).text.replace('EL ', '')));
  const strut = given(told, 'noted').text.includes('underside') ? lengthOf(told, 'strut') : 0;
  return { drop: upper + strut - lower };
};
export default work;
