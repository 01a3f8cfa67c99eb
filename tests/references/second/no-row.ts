import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** NEC 2023, tables 392.22(A)(5) and (6) as the learner is shown them; without a row nothing is worked out. */
const work: SecondOpinion = (told) => {
  const bottom = given(told, 'bottom').text;
  const width = numberIn(given(told, 'width').text);
  const row = rowsOf(told, bottom).find(({ label }) => label.endsWith(`, ${width} in wide`));
  if (row === undefined) return { speaks: 'none', may: 'ask' };
  const radius = numberIn(given(told, 'od').text) / 2;
  const area = numberIn(given(told, 'count').text) * Math.PI * radius * radius;
  const limit = numberIn(/more than one ([\d.]+)/.exec(row.text)?.[1] ?? '');
  return { speaks: bottom, may: area <= limit ? 'yes' : 'no' };
};
export default work;
