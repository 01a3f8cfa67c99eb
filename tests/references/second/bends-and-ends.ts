import { given, inchesOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** Lips whole, a degree to either side, 1/16 out of square (common practice, no source, as the learner is told). */
const work: SecondOpinion = (told) => {
  const [set, either] = /([\d.]+)°, at most ([\d.]+)°/.exec(given(told, 'set').text)?.slice(1).map(Number) ?? [];
  if (set === undefined || either === undefined) throw new Error('no angle');
  const most = inchesOf(/at most (\S+) out/.exec(given(told, 'square').text)?.[1] ?? '');
  return Object.fromEntries(
    rowsOf(told, 'piece').map(({ id, text }) => {
      const tenths = Math.round(Math.abs(numberIn(/([\d.]+)°/.exec(text)?.[1] ?? '') - set) * 10);
      const out = inchesOf(/end (\S+) out/.exec(text)?.[1] ?? '');
      if (text.includes('torn')) return [id, 'lip'];
      return [id, tenths > either * 10 ? 'angle' : out > most ? 'square' : 'holds'];
    }),
  );
};
export default work;
