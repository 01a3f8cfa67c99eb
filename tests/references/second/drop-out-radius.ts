import { given, numberIn, type SecondOpinion } from './told.ts';

/** Diameters to the inner edge: NEC 2023, 336.24 and 330.24(A), (B). */
function diameters(cable: string, od: number): number {
  if (cable.includes('interlocked')) return 7;
  if (cable.includes('smooth')) return od <= 0.75 ? 10 : od <= 1.5 ? 12 : 15;
  if (!cable.includes('without')) return 12;
  return od <= 1 ? 4 : od <= 2 ? 5 : 6;
}

const work: SecondOpinion = (told) => {
  const od = numberIn(given(told, 'od').text);
  const radius = diameters(given(told, 'cable').text, od) * od;
  const kept = given(told, 'kept').text.match(/\d+/g)?.map(Number) ?? [];
  const at = kept.findIndex((one) => one >= radius);
  return { radius, pick: at === -1 ? 'none' : `r${at + 1}` };
};
export default work;
