import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

const work: SecondOpinion = (told) => {
  const each = (text: string) => {
    const [, count, weight] = /(\d+) of ([\d.]+) lb/.exec(text) ?? [];
    return Number(count) * Number(weight);
  };
  const cables = rowsOf(told, 'cable').reduce((sum, { text }) => sum + each(text), 0);
  const besides = /([\d.]+) lb\/ft/.exec(given(told, 'other').text)?.[1] ?? '0';
  const load =
    cables + each(given(told, 'thousand').text) / 1000 + numberIn(given(told, 'tray').text) + Number(besides);
  return { load: Math.round(load * 100) / 100 };
};
export default work;
