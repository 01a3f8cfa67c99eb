import { given, lengthOf, numberIn, type SecondOpinion } from './told.ts';

/** Half of the ladder over its rails and the gap come off; NEC 2023, 392.30(B)(3) for the gap, 392.60(C) for the jumper. */
const work: SecondOpinion = (told) => {
  const near = lengthOf(told, 'outside') / 2 + lengthOf(told, 'gap');
  const limit = numberIn(/([\d.]+) ft at most/.exec(given(told, 'open').text)?.[1] ?? '');
  const missing =
    lengthOf(told, 'gap') > 12 * limit
      ? 'closer'
      : told.text.includes('nothing is bonded')
        ? 'jumper'
        : told.text.includes('hangs from')
          ? 'support'
          : 'nothing';
  return { length: lengthOf(told, 'distance') - near, support: near + lengthOf(told, 'within'), missing };
};
export default work;
