import { given, numberIn, type SecondOpinion } from './told.ts';

/** Simple span wL²/8; an end span of several 0.1 wL² (standard beam formulas): the single figure is safe, never the reverse. */
const work: SecondOpinion = (told) => {
  const of = (id: string) => numberIn(given(told, id).text);
  const place = given(told, 'place').text;
  const inner = place.includes('inner') && place.includes('without a splice');
  const alone = given(told, 'figure').text.includes('alone');
  const fits = alone ? place.includes('single') : inner;
  const use = fits ? 'as-listed' : alone ? 'reserve' : 'overloads';
  const why = { 'as-listed': 'meant-for-it', reserve: 'bends-less', overloads: 'no-gain' }[use];
  return { percent: (of('load') / of('alone')) * 100, use, why };
};
export default work;
