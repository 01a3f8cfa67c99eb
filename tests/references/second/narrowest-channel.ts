import { given, lengthOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/**
 * One cable alone and a few together, against NEC 2023, table 392.22(A)(5) or (6), as the learner is shown them; none stands
 * over the sides (common practice, no source).
 */
const work: SecondOpinion = (told) => {
  const rows = rowsOf(told, given(told, 'bottom').text).map(({ label, text }) => ({
    width: numberIn(/, ([\d.]+) in wide/.exec(label)?.[1] ?? ''),
    one: numberIn(/one cable ([\d.]+)/.exec(text)?.[1] ?? ''),
    more: numberIn(/more than one ([\d.]+)/.exec(text)?.[1] ?? ''),
  }));
  const circle = (od: number) => 0.785398 * od ** 2;
  const first = numberIn(given(told, 'first').text);
  const [, count = '', od = ''] = /(\d+) of ([\d.]+) in/.exec(given(told, 'second').text) ?? [];
  const kept = rows.filter(({ width }) => width !== 3);
  const name = (row: { width: number } | undefined) => (row === undefined ? 'none' : `w${row.width}`);
  const alone = first > lengthOf(told, 'depth') ? undefined : kept.find(({ one }) => circle(first) <= one);
  const together = kept.find(({ more }) => Number(count) * circle(Number(od)) <= more);
  return { area: circle(first), first: name(alone), second: name(together) };
};
export default work;
