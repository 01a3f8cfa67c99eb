import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** More than one cable, NEC 2023, table 392.22(A)(5) or (6) as the learner is shown them: whole cables under the limit. */
const work: SecondOpinion = (told) => {
  const one = (Math.PI * numberIn(given(told, 'od').text) ** 2) / 4;
  const width = numberIn(given(told, 'width').text);
  const row = rowsOf(told, given(told, 'bottom').text).find(({ label }) => label.endsWith(`, ${width} in wide`));
  const limit = numberIn(/more than one ([\d.]+)/.exec(row?.text ?? '')?.[1] ?? '');
  let many = 0;
  while ((many + 1) * one <= limit) many += 1;
  return { one, many };
};
export default work;
