import { given, numberIn, type SecondOpinion } from './told.ts';

/** The leads come off; the project's value decides, and without one the engineer (common practice, no source). */
const work: SecondOpinion = (told) => {
  const joint = (numberIn(given(told, 'reading').text) - numberIn(given(told, 'leads').text)) / 1000;
  const [, limit] = /of ([\d.]+) ohm or less/.exec(given(told, 'stated').text) ?? [];
  return { joint, verdict: limit === undefined ? 'ask' : joint <= Number(limit) ? 'accept' : 'rework' };
};
export default work;
