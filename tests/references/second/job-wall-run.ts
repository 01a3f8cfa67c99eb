import { inchesOf, lengthOf, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** D - T - T + i + i; 250.122 as told; a jumper off the ladder tray and to the instrument: common practice, no source. */
const work: SecondOpinion = (told) => {
  const take = inchesOf(/take-out is ([\d /]+")/.exec(told.text)?.[1] ?? '');
  const goes = inchesOf(/; ([\d /]+") goes into every/.exec(told.text)?.[1] ?? '');
  const socket = (sign: RegExp) => (sign.test(told.text) ? goes : 0);
  const [one = 0, two = 0, three = 0] = rowsOf(told, 'leg').map(({ text }) => inchesOf(text));
  const cuts = {
    l1: one - take + goes + socket(/At the ladder: socketed/),
    l2: two - 2 * take + 2 * goes,
    l3: three - take + goes + socket(/At the instrument: socketed/),
  };
  const [stock, kerf] = [lengthOf(told, 'stock'), lengthOf(told, 'kerf')];
  const [a, b, c] = [cuts.l1, cuts.l2, cuts.l3];
  const two2 = [a + b, a + c, b + c].some((sum) => sum + kerf <= stock);
  const whole = a + b + c + 2 * kerf <= stock ? 1 : two2 ? 2 : 3;
  const distance = two - 2 * take - 2 * lengthOf(told, 'off');
  const spans = Math.ceil(distance / lengthOf(told, 'span'));
  const largest = Math.max(...rowsOf(told, 'cable').map(({ text }) => numberIn(text)));
  const size = rowsOf(told, 'size').find(({ label }) => numberIn(label) >= largest)?.text ?? '';
  return {
    cuts,
    lengths: { total: a + b + c, whole },
    supports: { count: spans + 1, spacing: distance / spans },
    bonding: {
      where: [
        { leg: 'L1', at: 0, what: 'jumper' },
        { leg: 'L3', at: three, what: 'jumper' },
      ],
      size: size.toLowerCase().replace(' ', '-'),
    },
  };
};
export default work;
