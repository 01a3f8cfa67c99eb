import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** The row of the cable on the list; the last diameter of the row is the outermost. */
const work: SecondOpinion = (told) => {
  const row = rowsOf(told, 'sheet').find(({ label }) => label.endsWith(`, ${given(told, 'wanted').text}`));
  const [, layer = '', size = ''] = [...(row?.text ?? '').matchAll(/over the (\w+) ([\d.]+) in/g)].at(-1) ?? [];
  const od = Number(size);
  return { column: layer, area: (numberIn(given(told, 'count').text) * Math.PI * od * od) / 4 };
};
export default work;
