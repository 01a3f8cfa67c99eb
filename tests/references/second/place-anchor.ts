import { inchesOf, rowsOf, type SecondOpinion } from './told.ts';

/** One anchor a section, at the support nearest its middle: common practice, no source. */
const work: SecondOpinion = (told) => {
  const legOf = (label: string) => /L\d+/.exec(label)?.[0] ?? '';
  let way = 0;
  const begins = new Map<string, number>();
  for (const { label, text } of rowsOf(told, 'leg')) {
    begins.set(legOf(label), way);
    way += inchesOf(text.split(' from ')[0] ?? '');
  }
  const along = ({ label, text }: { label: string; text: string }) =>
    (begins.get(legOf(label)) ?? Number.NaN) + inchesOf(text);
  const bounds = [0, ...rowsOf(told, 'parted').map(along), way];
  const supports = rowsOf(told, 'support').map((one) => ({
    leg: legOf(one.label),
    at: inchesOf(one.text),
    along: along(one),
  }));
  return {
    anchors: bounds.slice(1).map((to, i) => {
      const from = bounds[i] as number;
      const here = supports.filter((one) => one.along > from && one.along < to);
      const off = (one: { along: number }) => Math.abs(one.along - (from + to) / 2);
      const best = here.reduce((a, b) => (off(b) < off(a) ? b : a));
      return { leg: best.leg, at: best.at, what: 'anchor' };
    }),
  };
};
export default work;
