import { given, numberIn, type SecondOpinion } from './told.ts';

/** Straight from fully open at the coldest to closed at the hottest: NEMA VE 2, 2013 (from memory). */
const work: SecondOpinion = (told) => {
  const at = (id: string) => numberIn(given(told, id).text);
  const gap = (id: string) => ((at('high') - at(id)) * at('movement')) / (at('high') - at('low'));
  return { morning: gap('morning'), noon: gap('noon') };
};
export default work;
