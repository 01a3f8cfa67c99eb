import { given, lengthOf, type SecondOpinion } from './told.ts';

/** What each kind of end allows under and over, in sixteenths (common practice, no source). */
const work: SecondOpinion = (told) => {
  const [under, over] = given(told, 'joint').text.includes('socket') ? [-2, 0] : [-1, 1];
  const judge = (id: string) => {
    const out = Math.round((lengthOf(told, id) - lengthOf(told, 'wanted')) * 16);
    return out > over ? 'recut' : out < under ? 'scrap' : 'accept';
  };
  return { first: judge('one'), second: judge('two'), third: judge('three') };
};
export default work;
