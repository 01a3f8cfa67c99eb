import { given, lengthOf, type SecondOpinion } from './told.ts';

/** Inside: towards the open side; outside: away from it (words of the trade). */
const work: SecondOpinion = (told) => {
  const [one, two] = [given(told, 'first').text, given(told, 'second').text];
  const level = (text: string) => (text.includes('up') ? 'inside' : text.includes('down') ? 'outside' : 'flat');
  const first = level(one);
  // Going up, the open side looks back the way it came; going down, the way it was heading.
  const towards = first === 'inside' ? 'back the way' : 'the way it was heading';
  const second = two.startsWith('goes level again') ? (two.includes(towards) ? 'inside' : 'outside') : level(two);
  const index: Record<string, number> = { flat: 1, inside: 2, outside: 3 };
  const takeOuts = [first, second].reduce((sum, kind) => sum + lengthOf(told, `take-out-${index[kind]}`), 0);
  return { first, second, cut: lengthOf(told, 'between') - takeOuts + 2 * lengthOf(told, 'insertion') };
};
export default work;
