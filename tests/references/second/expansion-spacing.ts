import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** Movement over rate and swing, in one scale; rates as the learner is shown them. */
const work: SecondOpinion = (told) => {
  const metal = given(told, 'metal').text;
  const rate = rowsOf(told, 'rate').find(({ label }) => label.endsWith(`, ${metal}`));
  const celsius = given(told, 'low').text.includes('°C');
  const degrees = numberIn(given(told, 'high').text) - numberIn(given(told, 'low').text);
  const swing = degrees * (celsius ? 1.8 : 1);
  const inches = numberIn(given(told, 'movement').text) / (numberIn(rate?.text ?? '') * 1e-6 * swing);
  const spacing = inches / 12;
  let parts = 1;
  while (numberIn(given(told, 'run').text) / parts > spacing) parts += 1;
  return { spacing, parts };
};
export default work;
