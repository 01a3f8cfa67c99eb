import { given, inchesOf, lengthOf, rowsOf, type SecondOpinion } from './told.ts';

/** Within 1/8 in of the string, within 1/4 in over 20 ft: common practice, no source; both are told. */
const work: SecondOpinion = (told) => {
  const wanted = lengthOf(told, 'wanted');
  const fall = inchesOf(/by ([\d /]+") from/.exec(given(told, 'string').text)?.[1] ?? '0"');
  const high = rowsOf(told, 'reading').map(({ text }) => wanted - inchesOf(text));
  const worst = Math.max(...high.map(Math.abs));
  const off = worst > lengthOf(told, 'each') ? `s${high.findIndex((h) => Math.abs(h) === worst) + 1}` : 'none';
  const heights = high.map((h, i) => h - (fall * i) / 4);
  const spread = Math.max(...heights) - Math.min(...heights);
  return { off, spread, next: off !== 'none' ? 'reset' : spread > lengthOf(told, 'all') ? 'string' : 'accept' };
};
export default work;
