import { given, type SecondOpinion } from './told.ts';

/** What each thing that a piece may meet asks for (common practice, no source). */
const MEETS: readonly (readonly [sign: string, point: string, joint: string])[] = [
  ['sleeve', 'sleeve-edge', 'goes-in'],
  ['plate', 'channel-end', 'butts'],
  ['socket', 'face', 'goes-in'],
  ['rail', 'face', 'butts'],
  ['free', 'end-mark', 'free'],
];

const work: SecondOpinion = (told) =>
  Object.fromEntries(
    ['first', 'second'].flatMap((end) => {
      const [, point, joint] = MEETS.find(([sign]) => given(told, end).text.includes(sign)) ?? [];
      return [
        [`${end}-point`, point],
        [`${end}-joint`, joint],
      ];
    }),
  );
export default work;
