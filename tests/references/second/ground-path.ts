import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** NEC 2023, table 392.60(B) and 392.60(A), as the learner is shown them. */
const work: SecondOpinion = (told) => {
  const metal = given(told, 'metal').text;
  const device = numberIn(given(told, 'device').text);
  const row = rowsOf(told, 'table').find(({ label }) => device <= numberIn(/to (\d+) A/.exec(label)?.[1] ?? ''));
  const [, wanted] = new RegExp(`${metal} ([\\d.]+)`).exec(row?.text ?? '') ?? [];
  const said = given(told, 'serviced').text;
  const place = said.startsWith('Qualified') ? 'yes' : said.includes('not qualified') ? 'no' : 'ask';
  const marked = numberIn(given(told, 'marked').text);
  const served = rowsOf(told, 'table').flatMap(({ label, text }) => {
    const [, area] = new RegExp(`${metal} ([\\d.]+)`).exec(text) ?? [];
    return area !== undefined && Number(area) <= marked ? [`d${/to (\d+) A/.exec(label)?.[1]}`] : [];
  });
  const up = { 'up-to': served.at(-1) ?? 'none' };
  if (metal === 'stainless') return { ...up, row: 'no-column', may: place === 'no' ? 'no' : 'ask' };
  if (wanted === undefined) return { ...up, row: 'not-permitted', may: 'no' };
  const enough = marked >= Number(wanted);
  return { ...up, row: `a${wanted.replace('.', '')}`, may: enough ? place : 'no' };
};
export default work;
