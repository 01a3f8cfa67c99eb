import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** The row of the cable on the list, over its jacket. */
const work: SecondOpinion = (told) => {
  const row = rowsOf(told, 'sheet').find(({ label }) => label.endsWith(`, ${given(told, 'wanted').text}`));
  const od = numberIn(/over the jacket ([\d.]+)/.exec(row?.text ?? '')?.[1] ?? '');
  return { column: 'jacket', area: (numberIn(given(told, 'count').text) * Math.PI * od * od) / 4 };
};
export default work;
