import { given, lengthOf, type SecondOpinion } from './told.ts';

/** Inside: towards the open side; outside: away from it (words of the trade). */
const work: SecondOpinion = (told) => {
  const [one, two] = [given(told, 'first').text, given(told, 'second').text];
  const kindOf = (text: string) => (text.includes('up') ? 'inside' : text.includes('down') ? 'outside' : 'flat');
  const first = kindOf(one);
  // Horizontal again: at the head of a rise away from the open side, at the foot of a drop towards it.
  const second = two.startsWith('goes horizontal again') ? (first === 'inside' ? 'outside' : 'inside') : kindOf(two);
  const index: Record<string, number> = { flat: 1, inside: 2, outside: 3 };
  const takeOuts = [first, second].reduce((sum, kind) => sum + lengthOf(told, `take-out-${index[kind]}`), 0);
  return { first, second, cut: lengthOf(told, 'between') - takeOuts + 2 * lengthOf(told, 'insertion') };
};
export default work;
