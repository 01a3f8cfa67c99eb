import { given, inchesOf, lengthOf, numberIn, type SecondOpinion, type Told } from './told.ts';

function takeOut(told: Told, text: string): number {
  if (text.includes('tee')) return lengthOf(told, 'tee');
  if (text.includes('45')) return lengthOf(told, 'elbow45');
  const [two, four, six] = [...given(told, 'elbows').text.matchAll(/[\d /]+"/g)].map(([one]) => inchesOf(one));
  return { 2: two, 4: four, 6: six }[numberIn(given(told, 'width').text)] ?? Number.NaN;
}

/** Each end: its take-out off, what goes in on (common practice, no source). */
const work: SecondOpinion = (told) => {
  const off = ['first', 'second'].reduce((sum, id) => sum + takeOut(told, given(told, id).text), 0);
  const faces = lengthOf(told, 'distance') - off;
  return { faces, cut: faces + 2 * lengthOf(told, 'insertion') };
};
export default work;
