import { given, inchesOf, lengthOf, type SecondOpinion } from './told.ts';

const work: SecondOpinion = (told) => {
  const trays = given(told, 'trays').text;
  const outside = inchesOf(/and ([\d /]+") outside/.exec(trays)?.[1] ?? '');
  const gap = /with ([\d /]+") between/.exec(trays)?.[1];
  const across = gap === undefined ? outside : 2 * outside + inchesOf(gap);
  const strut = across + 2 * lengthOf(told, 'clamp') + 2 * lengthOf(told, 'edge');
  const count = Number(/do (\d+) such/.exec(told.asks[1]?.prompt ?? '')?.[1]);
  return { strut, all: count * (strut + lengthOf(told, 'kerf')) };
};
export default work;
