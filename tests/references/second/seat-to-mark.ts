import { lengthOf, type SecondOpinion } from './told.ts';

const work: SecondOpinion = (told) => {
  const depth = (id: string) => lengthOf(told, 'mark') - lengthOf(told, id);
  const [first, second] = [depth('seen-first'), depth('seen-second')];
  const out = (one: number) => Math.abs(one - lengthOf(told, 'wanted')) > lengthOf(told, 'within');
  const seated = out(first) ? (out(second) ? 'both' : 'first') : out(second) ? 'second' : 'accept';
  return { first, second, seated };
};
export default work;
