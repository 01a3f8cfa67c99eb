import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** PL/4 = wL²/8 gives w = 2P/L (moments of a simple beam, standard formulas). */
const work: SecondOpinion = (told) => {
  const of = (id: string) => numberIn(given(told, id).text);
  const along = of('cables') + of('tray');
  const at = (span: number) => along + (of('box') * 2) / span;
  const spans = rowsOf(told, 'row')
    .map(({ label, text }) => ({ span: numberIn(label), carries: numberIn(text) }))
    .filter(({ span, carries }) => at(span) <= carries);
  return {
    total: at(of('span')),
    longest: spans.length === 0 ? 'ask' : `ft-${Math.max(...spans.map(({ span }) => span))}`,
  };
};
export default work;
