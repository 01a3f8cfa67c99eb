import { rowsOf, type SecondOpinion } from './told.ts';

/** Shown, in date, and no part in the work (common practice, no source). */
const work: SecondOpinion = (told) => {
  const able = rowsOf(told, 'person').findIndex(
    ({ text }) => text.includes('more days') && !text.includes('built') && !text.includes('put this fault right'),
  );
  const mender = rowsOf(told, 'person').findIndex(
    ({ text }) => text.includes('more days') && text.includes('put this fault right'),
  );
  const of = (i: number) => (i === -1 ? 'none' : `person-${i + 1}`);
  return { inspect: able === -1 ? of(mender) : of(able), close: of(able) };
};
export default work;
