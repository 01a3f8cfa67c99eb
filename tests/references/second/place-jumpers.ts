import { given, inchesOf, rowsOf, type SecondOpinion } from './told.ts';

/** Off a tray, to equipment or a tray, at hinges, expansion splices, gaps and paint: common practice, no source. */
const work: SecondOpinion = (told) => {
  const legOf = (label: string) => /L\d+/.exec(label)?.[0] ?? '';
  const marks: { leg: string; at: number; what: string }[] = [];
  const put = (leg: string, at: number) => marks.push({ leg, at, what: 'jumper' });
  const legs = rowsOf(told, 'leg');
  legs.forEach(({ label }, i) => {
    const tray = i === 0 && given(told, 'start').text.includes('tray');
    if (tray || /hinge|painted/.test(label)) put(legOf(label), 0);
  });
  for (const { label, text } of rowsOf(told, 'parted')) put(legOf(label), inchesOf(text));
  for (const { label, text } of rowsOf(told, 'end')) {
    const leg = legs.find((one) => legOf(one.label) === legOf(label));
    if (!text.includes('free')) put(legOf(label), inchesOf(leg?.text.replace(' long', '') ?? ''));
  }
  return { jumpers: marks };
};
export default work;
