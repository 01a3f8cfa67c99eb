import { given, inchesOf, lengthOf, rowsOf, type SecondOpinion } from './told.ts';

/** Step at most as given; gap at most as the page states, else as given (common practice, no source). */
const work: SecondOpinion = (told) => {
  const stated = /states: ([\d/]+) in/.exec(given(told, 'stated').text)?.[1];
  const most = stated === undefined ? lengthOf(told, 'gap') : inchesOf(stated);
  const found = rowsOf(told, 'splice').map(({ text }, i) => {
    const [, step = '', gap = ''] = /step (.+), gap (.+)$/.exec(text) ?? [];
    const [high, wide] = [inchesOf(step) > lengthOf(told, 'step'), inchesOf(gap) > most];
    return [`splice-${i + 1}`, high && wide ? 'both' : high ? 'step' : wide ? 'gap' : 'holds'];
  });
  return Object.fromEntries(found);
};
export default work;
