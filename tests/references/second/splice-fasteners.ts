import { given, numberIn, type SecondOpinion } from './told.ts';

/** One splice fewer than lengths, two sides each; all of them or none pass, what the sheet does not name is asked (common practice, no source). */
const work: SecondOpinion = (told) => {
  const of = (id: string) => numberIn(given(told, id).text);
  const wanted = (of('lengths') - 1) * 2 * of('rule');
  const bad = of('large') + of('proud') + of('empty');
  const unknown = of('other');
  const verdict = bad > 0 ? 'rework' : unknown > 0 ? 'ask' : 'accept';
  return { wanted, good: wanted - bad - unknown, verdict };
};
export default work;
