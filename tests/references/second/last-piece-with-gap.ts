import { given, inchesOf, lengthOf, type SecondOpinion } from './told.ts';

/** As many joints as whole lengths; one keeps the gap, every other what its kind keeps (common practice, no source). */
const work: SecondOpinion = (told) => {
  const run = lengthOf(told, 'distance');
  const whole = Math.floor(run / lengthOf(told, 'stock'));
  const sleeve = /sleeve splices ([\d /]+") long; ([\d /]+")/.exec(given(told, 'joint').text);
  const open = sleeve === null ? 0 : inchesOf(sleeve[1] ?? '') - 2 * inchesOf(sleeve[2] ?? '');
  return { whole, cut: run - whole * lengthOf(told, 'stock') - lengthOf(told, 'gap') - (whole - 1) * open };
};
export default work;
