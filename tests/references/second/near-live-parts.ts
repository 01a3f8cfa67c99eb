import { given, numberIn, type SecondOpinion } from './told.ts';

/** NFPA 70E, table 130.4 (from memory), the label, and 29 CFR 1910.333(c)(3)(iii), as the learner is told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/bracket comes (\d+) in from its parts/, (n, g) => (n[0] ?? 0) < Math.max(g('boundary'), g('flash')) ? 'stop' : 'ask'],
  [/stand (\d+) in from open live gear.*sticks out (\d+) in/, (n, g) => (n[0] ?? 0) - (n[1] ?? 0) < Math.max(g('boundary'), g('flash')) ? 'stop' : 'ask'],
  [/boom, basket and load stay (\d+) ft from it/, (n, g) => (n[0] ?? 0) < g('line') ? 'stop' : 'go'],
  [/above a panel that stands open/, () => 'stop'],
  [/and copper shows/, () => 'stop'],
  [/The cover of the box beside you is off/, () => 'stop'],
  [/The tape in your hand is steel/, () => 'stop'],
  [/cable without a tag lies/, () => 'ask'],
  [/leads to hold on the bus/, () => 'stop'],
  [/inside what he roped off/, () => 'ask'],
  [/saw each conductor tested to each other and to ground: 0 V, the tester proven before and after/, () => 'go'],
  [/closed the gear and taken the rope away/, () => 'go'],
  [/take it from the drawing, at the table/, () => 'go'],
  [/has closed it, laid a sheet over it/, () => 'go'],
  [/shown you the place of your bracket outside the rope/, () => 'go'],
  [/gear is closed and latched/, () => 'go'],
];

const work: SecondOpinion = (told) =>
  Object.fromEntries(
    told.asks.map(({ id, prompt }) => {
      const scene = SCENES.find(([head]) => head.test(prompt));
      if (scene === undefined) throw new Error(`no such scene: ${prompt}`);
      const numbers = (scene[0].exec(prompt) ?? []).slice(1).map(Number);
      return [id, scene[1](numbers, (name) => numberIn(given(told, name).text))];
    }),
  );
export default work;
