import { given, lengthOf, numberIn, type SecondOpinion, sixteenth } from './told.ts';

const work: SecondOpinion = (told) => {
  const words = told.figures[0]?.words ?? '';
  const feet = numberIn(/passed ([\d.]+) whole/.exec(words)?.[1] ?? '0');
  const inch = numberIn(/inch mark (\d+)/.exec(words)?.[1] ?? '0');
  const marks = numberIn(/and (\d+) of the 16/.exec(words)?.[1] ?? '0');
  const burnt = given(told, 'hooked').text.includes('1-in mark') ? 1 : 0;
  const elevation = (id: string) => numberIn(given(told, id).text.replace('EL ', ''));
  return {
    tape: feet * 12 + inch + marks / 16 - burnt,
    sum: lengthOf(told, 'first') + lengthOf(told, 'second') + lengthOf(told, 'third'),
    drop: (elevation('upper') - elevation('lower')) * 12,
    // An inch is 25.4 mm (international yard and pound agreement, 1959).
    metric: sixteenth(numberIn(given(told, 'metric').text) / 25.4),
  };
};
export default work;
