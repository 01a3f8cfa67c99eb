import { given, lengthOf, numberIn, type SecondOpinion } from './told.ts';

/** Spans between the first and the last support, rounded up; one support more than spans (arithmetic). */
const work: SecondOpinion = (told) => {
  const end = lengthOf(told, 'end');
  const clear = lengthOf(told, 'length') - 2 * end;
  const most = numberIn(given(told, 'most').text) * 12;
  let spans = 1;
  while (clear / spans > most + 1e-9) spans += 1;
  const asked = numberIn(/number (\d+)/.exec(told.asks[1]?.prompt ?? '')?.[1] ?? '');
  return {
    layout: { count: spans + 1, spacing: clear / spans },
    place: Math.round(end + ((asked - 1) * clear) / spans),
  };
};
export default work;
