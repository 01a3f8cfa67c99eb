import { given, inchesOf, lengthOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** D - T - T + i + i; one support bears the whole drop (statics; which one: common practice, no source). */
const work: SecondOpinion = (told) => {
  const take = inchesOf(/take-out is ([\d /]+")/.exec(told.text)?.[1] ?? '');
  const goes = inchesOf(/point; ([\d /]+") goes into every/.exec(told.text)?.[1] ?? '');
  const socket = (sign: RegExp) => (sign.test(told.text) ? goes : 0);
  const height = 12 * (numberIn(given(told, 'upper').text) - numberIn(given(told, 'lower').text));
  const foot = rowsOf(told, 'cable').reduce(
    (sum, { text }) => {
      const [, count, lb] = /(\d+) of ([\d.]+) lb/.exec(text) ?? [];
      return sum + Number(count) * Number(lb);
    },
    numberIn(given(told, 'tray').text),
  );
  const spans = Math.ceil((height - 2 * take - 2 * lengthOf(told, 'off')) / lengthOf(told, 'span'));
  const borne = given(told, 'bears').text;
  const bears = borne.includes('head') ? 'top' : borne.includes('foot') ? 'bottom' : 'middle';
  return {
    drop: { height },
    cuts: {
      l1: lengthOf(told, 'one') - take + goes + socket(/At the ladder: socketed/),
      l2: height - 2 * take + 2 * goes,
      l3: lengthOf(told, 'three') - take + goes + socket(/instrument: socketed/),
    },
    load: { foot, lb: (foot * height) / 12 },
    brackets: { count: spans + 1, bears },
  };
};
export default work;
