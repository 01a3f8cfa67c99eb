import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** The table's figures are for one span alone; the gain of several is for inner spans without a splice. */
const work: SecondOpinion = (told) => {
  const load = numberIn(given(told, 'cables').text) + numberIn(given(told, 'tray').text);
  const spans = rowsOf(told, 'row')
    .filter(({ text }) => numberIn(text) >= load)
    .map(({ label }) => numberIn(label));
  return { load, span: spans.length === 0 ? 'ask' : `ft-${Math.max(...spans)}` };
};
export default work;
