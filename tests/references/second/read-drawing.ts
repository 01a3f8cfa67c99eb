import { given, inchesOf, numberIn, type SecondOpinion } from './told.ts';

const SIGNS: Readonly<Record<string, string>> = {
  'bottom of the channel': 'B.O.C.',
  'top of steel': 'T.O.S.',
  'top of the stand': 'T.O. STAND',
};

/** What was last issued is in hand; the register says what is current (common practice, no source). */
const work: SecondOpinion = (told) => {
  const words = told.figures[0]?.words ?? '';
  const issued = [...words.matchAll(/\b([A-F]): [^,.]+, issued/g)].map(([, id = '']) => id).sort();
  const revision = issued.at(-1) ?? '';
  const register = /revision ([A-F])/.exec(given(told, 'register').text)?.[1] ?? '';
  const prompt = (id: string) => told.asks.find((ask) => ask.id === id)?.prompt ?? '';
  const lines = /column line (\d) to column line (\d)/.exec(prompt('dimension')) ?? [];
  const length = new RegExp(`Column line ${lines[1]} to column line ${lines[2]}: ([^.]+)\\.`).exec(words)?.[1];
  const level = Object.keys(SIGNS).find((name) => prompt('elevation').includes(name)) ?? '';
  const mark = words.slice(words.indexOf(`${SIGNS[level]} EL `));
  return {
    revision: revision.toLowerCase(),
    next: revision === register ? 'work' : revision < register ? 'newer' : 'ask',
    dimension: inchesOf(length ?? ''),
    elevation: numberIn(mark.slice(mark.indexOf('EL'))),
  };
};
export default work;
