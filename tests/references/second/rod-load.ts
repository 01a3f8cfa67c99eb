import { given, inchesOf, numberIn, type SecondOpinion } from './told.ts';

/** Each span rests with half its weight on either support; with an overhang, moments about the support before (statics). */
const work: SecondOpinion = (told) => {
  const where = given(told, 'where').text;
  const lengths = [...where.matchAll(/\d+'-[\d /]+"|\d[\d /]*"/g)].map(([text]) => inchesOf(text) / 12);
  const [before = 0, behind = 0] = lengths;
  const hangs = where.includes('overhang') ? ((before + behind) * (before + behind)) / 2 / before : (before + behind) / 2;
  const all = hangs * numberIn(given(told, 'load').text) + numberIn(given(told, 'strut').text);
  return { rod: Math.round(all * 5) / 10 };
};
export default work;
