import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** Table 392.22(A)(5) and (6) of NEC 2023 as the learner is shown them; area of a cable is that of its outside circle. */
const work: SecondOpinion = (told) => {
  const cables = rowsOf(told, 'cable').map(({ text }) => {
    const [, count, od] = /(\d+) of ([\d.]+) in/.exec(text) ?? [];
    return { count: Number(count), od: Number(od) };
  });
  const area = cables.reduce((sum, { count, od }) => sum + (count * Math.PI * od * od) / 4, 0);
  const column = cables.reduce((sum, { count }) => sum + count, 0) === 1 ? 'one' : 'several';
  const bottom = given(told, 'bottom').text;
  const width = numberIn(given(told, 'width').text);
  const row = rowsOf(told, bottom).find(({ label }) => label.includes(`, ${width} in wide`));
  if (row === undefined) return { area, row: 'no-row', within: 'ask' };
  const [, one, several] = /one cable ([\d.]+) in², more than one ([\d.]+) in²/.exec(row.text) ?? [];
  const [, kept = '0'] = /keeps (\d+) %/.exec(given(told, 'spare').text) ?? [];
  const limit = Number(column === 'one' ? one : several) * (1 - Number(kept) / 100);
  return { area, row: `${bottom}-${column}`, within: area <= limit ? 'yes' : 'no' };
};
export default work;
