import type { SecondOpinion } from './told.ts';

/** NEMA VE 2, 2013 (from memory), NEC 2023, 392.60(B): what slides, turns, parts, is painted or unmarked; ends as drawn. */
const WHY: readonly (readonly [RegExp, string])[] = [
  [/painted/, 'paint'],
  [/Expansion/, 'moves'],
  [/Hinged/, 'hinge'],
  [/gap/, 'gap'],
  [/nothing says/, 'part'],
  [/ladder tray|stand/, 'meets'],
  [/identified for grounding/, 'none'],
];

const work: SecondOpinion = ({ asks: [ask] }) => ({
  joints: Object.fromEntries(
    (ask?.parts ?? []).map(({ id, prompt }) => [id, WHY.find(([sign]) => sign.test(prompt))?.[1]]),
  ),
});
export default work;
