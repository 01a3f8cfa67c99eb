import { given, numberIn, type SecondOpinion } from './told.ts';

/** Each metal its own tools; what hangs together is weighed together; lamp and wrench by what is marked on them (common practice). */
const work: SecondOpinion = (told) => {
  const metal = given(told, 'metal').text;
  const area = given(told, 'area').text;
  const hangs = numberIn(given(told, 'tool').text) + numberIn(given(told, 'battery').text);
  const division = /Division (\d)/.exec(area)?.[1];
  return {
    blade: `blade-${metal}`,
    brush: `brush-${metal}`,
    tether: hangs <= 5 ? 'tether-5' : hangs <= 10 ? 'tether-10' : 'tether-15',
    lamp: division === undefined ? 'lamp-plain' : `lamp-division-${division}`,
    wrench: numberIn(given(told, 'torque').text) <= 20 ? 'small' : 'large',
  };
};
export default work;
