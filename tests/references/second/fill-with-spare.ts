import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** The project's share off the limit of NEC 2023, table 392.22(A)(5) or (6), as the learner is shown it. */
const work: SecondOpinion = (told) => {
  const width = numberIn(given(told, 'width').text);
  const row = rowsOf(told, given(told, 'bottom').text).find(({ label }) => label.endsWith(`, ${width} in wide`));
  const limit = numberIn(/more than one ([\d.]+)/.exec(row?.text ?? '')?.[1] ?? '');
  const usable = (limit * (100 - numberIn(given(told, 'spare').text))) / 100;
  const radius = numberIn(given(told, 'od').text) / 2;
  return { usable, many: Math.trunc(usable / (Math.PI * radius ** 2)) };
};
export default work;
