import { given, numberIn, type SecondOpinion, sixteenth } from './told.ts';

const work: SecondOpinion = (told) => {
  const [upper = 0, lower = 0] = ['upper', 'lower'].map((id) => numberIn(given(told, id).text));
  const said = given(told, 'title').text.includes('decimals of a foot');
  return { unit: said ? 'decimal' : 'ask', drop: sixteenth((upper - lower) * 12) };
};
export default work;
