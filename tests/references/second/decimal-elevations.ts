import { given, numberIn, type SecondOpinion, sixteenth } from './told.ts';

const work: SecondOpinion = (told) => {
  const [upper = 0, lower = 0] = ['upper', 'lower'].map((id) => numberIn(given(told, id).text));
  const title = given(told, 'title').text;
  const unit = title.includes('metres') ? 'metres' : title.includes('decimals of a foot') ? 'decimal' : 'ask';
  // 1 in = 25.4 mm: International yard and pound agreement, 1959.
  return { unit, drop: sixteenth((upper - lower) * (unit === 'metres' ? 1000 / 25.4 : 12)) };
};
export default work;
