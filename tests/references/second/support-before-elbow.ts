import { lengthOf, rowsOf, inchesOf, type SecondOpinion } from './told.ts';

/** A support within 24 in of each face of a fitting: NEMA VE 2 (from memory). */
const work: SecondOpinion = (told) => {
  const [, turn = ''] = /working point of (an? [a-z ]+),/.exec(told.text) ?? [];
  const row = rowsOf(told, 'take-out').find(({ label }) => label.includes(turn));
  const reach = inchesOf(row?.text ?? '') + lengthOf(told, 'within');
  const before = lengthOf(told, 'point') - reach;
  const far = [lengthOf(told, 'stood-before') < before, lengthOf(told, 'stood-behind') > reach];
  const has = far[0] ? (far[1] ? 'neither' : 'before') : far[1] ? 'behind' : 'both';
  return { before, behind: reach, has };
};
export default work;
