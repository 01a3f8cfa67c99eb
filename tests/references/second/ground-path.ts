import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** NEC 2023, table 392.60(B) and 392.60(A), as the learner is shown them. */
const work: SecondOpinion = (told) => {
  const metal = given(told, 'metal').text;
  const device = numberIn(given(told, 'device').text);
  const row = rowsOf(told, 'table').find(({ label }) => device <= numberIn(/to (\d+) A/.exec(label)?.[1] ?? ''));
  const [, wanted] = new RegExp(`${metal} ([\\d.]+)`).exec(row?.text ?? '') ?? [];
  const qualified = given(told, 'serviced').text.startsWith('Qualified');
  if (metal === 'stainless') return { row: 'no-column', may: qualified ? 'ask' : 'no' };
  if (wanted === undefined) return { row: 'not-permitted', may: 'no' };
  const enough = numberIn(given(told, 'marked').text) >= Number(wanted);
  return { row: `a${wanted.replace('.', '')}`, may: qualified && enough ? 'yes' : 'no' };
};
export default work;
