import { given, lengthOf, type SecondOpinion } from './told.ts';

/** NEMA VE 2, from memory: within a quarter of the span from a support, clear of it, in an inner span. */
const work: SecondOpinion = (told) => {
  const [left, at, right, splice] = ['left', 'at', 'right', 'splice'].map((id) => lengthOf(told, id));
  if (left === undefined || at === undefined || right === undefined || splice === undefined) throw new Error('given?');
  const nearest = Math.min(at - left, right - at);
  const quarter = (right - left) / 4;
  const inner = given(told, 'span').text.includes('inner');
  const place = nearest < splice / 2 ? 'over-support' : nearest > quarter ? 'past' : 'holds';
  return { nearest, quarter, verdict: inner ? place : 'wrong-span' };
};
export default work;
