import { given, lengthOf, numberIn, type SecondOpinion } from './told.ts';

/** The support nearest the middle holds, the others guide: NEMA VE 2, 2013 (from memory). */
const work: SecondOpinion = (told) => {
  const count = numberIn(given(told, 'count').text);
  const middle = lengthOf(told, 'section') / 2;
  let anchor = lengthOf(told, 'first');
  for (let i = 1; i < count; i += 1) {
    const place = lengthOf(told, 'first') + i * lengthOf(told, 'spacing');
    if (Math.abs(place - middle) < Math.abs(anchor - middle)) anchor = place;
  }
  return { anchor, guides: count - 1 };
};
export default work;
