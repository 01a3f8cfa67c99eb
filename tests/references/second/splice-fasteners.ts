import { given, numberIn, type SecondOpinion } from './told.ts';

/** One splice fewer than lengths, two sides each; all of them or none pass (common practice, no source). */
const work: SecondOpinion = (told) => {
  const of = (id: string) => numberIn(given(told, id).text);
  const wanted = (of('lengths') - 1) * 2 * of('rule');
  const bad = of('large') + of('proud') + of('empty');
  return { wanted, good: wanted - bad, verdict: bad === 0 ? 'accept' : 'rework' };
};
export default work;
