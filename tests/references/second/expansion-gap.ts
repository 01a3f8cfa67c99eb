import { given, numberIn, type SecondOpinion } from './told.ts';

/** Straight from fully open at the coldest to closed at the hottest: NEMA VE 2, 2013 (from memory). */
const work: SecondOpinion = (told) => {
  const at = (id: string) => numberIn(given(told, id).text);
  const open = (at('high') - at('metal')) / (at('high') - at('low'));
  const later = numberIn(/reads (-?\d+) °F/.exec(told.asks[1]?.prompt ?? '')?.[1] ?? '');
  const inside = later >= at('low') && later <= at('high');
  return { gap: open * at('movement'), later: inside ? 'worked' : 'asked' };
};
export default work;
