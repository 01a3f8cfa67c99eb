import { given, lengthOf, type SecondOpinion } from './told.ts';

/** What the blade runs through becomes filings, on whichever side of the mark that is. */
const work: SecondOpinion = (told) => {
  const onPiece = given(told, 'ran').text.includes('middle of the blade') ? 1 / 2 : 1;
  const [marked, kerf] = [lengthOf(told, 'length'), lengthOf(told, 'kerf')];
  return {
    side: given(told, 'piece').text.startsWith('left') ? 'right' : 'left',
    piece: marked - onPiece * kerf,
    rest: lengthOf(told, 'stock') - marked - (1 - onPiece) * kerf,
  };
};
export default work;
