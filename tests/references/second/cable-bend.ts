import { given, numberIn, type SecondOpinion } from './told.ts';

/** NEC 2023, 336.24 and 330.24(A), (B), as the learner is told them. */
const work: SecondOpinion = (told) => {
  const od = numberIn(given(told, 'od').text);
  const cable = given(told, 'cable').text;
  const rule = (id: string) => [...given(told, id).text.matchAll(/[\d.]+/g)].map(([n]) => Number(n));
  const [first = 0, small = 0, second = 0, middle = 0, , large = 0, shield = 0] = rule('tc');
  const [sFirst = 0, sSmall = 0, sSecond = 0, sMiddle = 0, , sLarge = 0] = rule('mcs');
  const times = cable.includes('interlocked')
    ? (rule('mci')[0] ?? 0)
    : cable.includes('smooth')
      ? od <= sFirst
        ? sSmall
        : od <= sSecond
          ? sMiddle
          : sLarge
      : cable.includes('a metallic shield over')
        ? shield
        : od <= first
          ? small
          : od <= second
            ? middle
            : large;
  return { times: `m${times}`, radius: times * od };
};
export default work;
