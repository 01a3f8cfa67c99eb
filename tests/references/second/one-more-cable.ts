import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** Everything that will lie there, against NEC 2023, table 392.22(A)(5) or (6), more than one cable. */
const work: SecondOpinion = (told) => {
  const width = numberIn(given(told, 'width').text);
  const row = rowsOf(told, given(told, 'bottom').text).find(({ label }) => label.endsWith(`, ${width} in wide`));
  const limit = numberIn(/more than one ([\d.]+)/.exec(row?.text ?? '')?.[1] ?? '');
  const area = ['laid', 'added'].reduce((sum, id) => {
    const [, count = '', od = ''] = /(\d+) of ([\d.]+) in/.exec(given(told, id).text) ?? [];
    return sum + Number(count) * Math.PI * (Number(od) / 2) ** 2;
  }, 0);
  return { area, next: area <= limit ? 'lay' : 'hold' };
};
export default work;
