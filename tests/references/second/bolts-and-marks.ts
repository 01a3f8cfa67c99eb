import { given, numberIn, type SecondOpinion } from './told.ts';

/** One splice fewer than lengths; all bolts in and all of them marked, or it goes back (common practice, no source). */
const work: SecondOpinion = (told) => {
  const of = (id: string) => numberIn(given(told, id).text);
  const missing = of('half') * (of('rule') - numberIn(given(told, 'half').label));
  const bolts = (of('lengths') - 1) * of('rule') - missing;
  const unmarked = bolts - of('marks');
  const verdict = missing > 0 ? (unmarked > 0 ? 'both' : 'bolts') : unmarked > 0 ? 'marks' : 'holds';
  return { bolts, unmarked, verdict };
};
export default work;
