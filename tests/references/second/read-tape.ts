import { given, numberIn, type SecondOpinion } from './told.ts';

const work: SecondOpinion = (told) => {
  const words = told.figures[0]?.words ?? '';
  const found = (sign: RegExp) => numberIn(sign.exec(words)?.[1] ?? '0');
  const shown = found(/passed ([\d.]+) whole/) * 12 + found(/inch mark (\d+)/) + found(/and (\d+) of the 16/) / 16;
  // Held at its 1-in mark, a tape shows an inch more than there is (common practice, no source).
  const length = shown - (given(told, 'hooked').text.includes('1-in mark') ? 1 : 0);
  return { length, feet: Math.round((100 * length) / 12) / 100 };
};
export default work;
