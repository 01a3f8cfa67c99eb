import { given, lengthOf, numberIn, type SecondOpinion, sixteenth } from './told.ts';

/** An inch is 25.4 mm (international yard and pound agreement, 1959). */
const work: SecondOpinion = (told) => ({
  inches: sixteenth(numberIn(given(told, 'metric').text) / 25.4),
  mm: Math.round(lengthOf(told, 'length') * 25.4),
});
export default work;
