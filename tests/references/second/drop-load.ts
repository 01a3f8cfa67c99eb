import { given, lengthOf, numberIn, type SecondOpinion } from './told.ts';

/** One support bears the whole drop; guides bear nothing (statics; common practice, no source). */
const work: SecondOpinion = (told) => {
  const aFoot = numberIn(given(told, 'cables').text) + numberIn(given(told, 'tray').text);
  const load = (lengthOf(told, 'drop') / 12) * aFoot;
  const rated = /carry (\d+) lb/.exec(given(told, 'sheet').text)?.[1];
  const may = rated === undefined ? 'ask' : load <= Number(rated) ? 'yes' : 'no';
  return { load: Math.round(load * 10) / 10, may };
};
export default work;
