import { given, lengthOf, type SecondOpinion } from './told.ts';

/** Both ends and equal spaces within the project's; a tie that bears is listed for it: NEC 2023, 392.30(B)(4). */
const work: SecondOpinion = (told) => {
  let spaces = 1;
  while (lengthOf(told, 'drop') / spaces > lengthOf(told, 'upright')) spaces += 1;
  const bag = given(told, 'stock').text;
  const by = bag.includes('may bear') ? 'ties' : bag.includes('clamps') ? 'clamps' : 'ask';
  return { count: spaces + 1, apart: lengthOf(told, 'drop') / spaces, by };
};
export default work;
