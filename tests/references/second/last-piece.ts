import { given, inchesOf, lengthOf, type SecondOpinion } from './told.ts';

/** Whole lengths first; sleeves keep open what neither side fills, plates nothing (common practice, no source). */
const work: SecondOpinion = (told) => {
  const whole = Math.floor(lengthOf(told, 'distance') / lengthOf(told, 'stock'));
  const [, long, deep] = /sleeve splices ([\d /]+") long; ([\d /]+")/.exec(given(told, 'joint').text) ?? [];
  const open = long === undefined || deep === undefined ? 0 : inchesOf(long) - 2 * inchesOf(deep);
  return { whole, cut: lengthOf(told, 'distance') - whole * (lengthOf(told, 'stock') + open) };
};
export default work;
