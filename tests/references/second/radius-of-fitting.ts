import { given, lengthOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** NFPA 70, 2023, 336.24 (Type TC: 4 diameters to 1 in, 5 above; 12 under a metallic shield) and 330.24(B) (7). */
const work: SecondOpinion = (told) => {
  const needs = (text: string) => {
    const od = numberIn(/([\d.]+) in over all/.exec(text)?.[1] ?? '');
    if (text.includes('interlocked')) return 7 * od;
    return (text.includes('a metallic shield over') ? 12 : od > 1 ? 5 : 4) * od;
  };
  const least = Math.max(...rowsOf(told, 'cable').map(({ text }) => needs(text)));
  const radii = rowsOf(told, 'elbow').map(({ label }) => numberIn(label));
  const i = radii.findIndex((r) => r >= least);
  const put = radii.indexOf(numberIn(given(told, 'put').text)) + 1;
  const cut = lengthOf(told, 'between') - 2 * lengthOf(told, `elbow-${put}`) + 2 * lengthOf(told, 'insertion');
  return { least: Math.round(least * 100) / 100, pick: i === -1 ? 'none' : `r${i + 1}`, cut };
};
export default work;
