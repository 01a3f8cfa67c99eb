import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** One cable alone, against NEC 2023, table 392.22(A)(5) or (6), as the learner is shown them. */
const work: SecondOpinion = (told) => {
  const rows = rowsOf(told, given(told, 'bottom').text).map(({ label, text }) => ({
    width: numberIn(/, ([\d.]+) in wide/.exec(label)?.[1] ?? ''),
    most: numberIn(text),
  }));
  const area = (id: string) => 0.785398 * numberIn(given(told, id).text) ** 2;
  const narrowest = (id: string) => {
    const fit = rows.find(({ width, most }) => width !== 3 && area(id) <= most);
    return fit === undefined ? 'none' : `w${fit.width}`;
  };
  return { area: area('first'), first: narrowest('first'), second: narrowest('second') };
};
export default work;
