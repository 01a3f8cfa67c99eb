import { given, numberIn, type SecondOpinion } from './told.ts';

/** Every critical fault, 80 % of the others, 10 % of the entries (common practice, no source, as the learner is told). */
const work: SecondOpinion = (told) => {
  const of = (id: string) => numberIn(given(told, id).text);
  const hits = (of('found') / of('other')) * 100;
  const wrong = (of('alarms') / (of('found') + of('critical-found') + of('alarms'))) * 100;
  const enough = of('critical') === of('critical-found') && hits >= 80 && wrong <= 10;
  return { hits, 'false-alarms': wrong, verdict: enough ? 'holds' : 'again' };
};
export default work;
