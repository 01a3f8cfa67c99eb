import { given, numberIn, type SecondOpinion } from './told.ts';

/** Free end and half the weight of the span as the learner is told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/open, (\d+) in of channel would stand out free/, (n, g) => (n[0] ?? 0) > g('free-most') ? 'stop' : 'go'],
  [/To the right, (\d+) ft away.*weighs ([\d.]+) lb.ft and its cables ([\d.]+) lb.ft\. You set a stand marked (\d+) lb/, (n) => (((n[1] ?? 0) + (n[2] ?? 0)) * (n[0] ?? 0)) / 2 > (n[3] ?? 0) ? 'stop' : 'go'],
  [/On the right there is none/, () => 'stop'],
  [/on his shoulder meanwhile/, () => 'stop'],
  [/eat their lunch right below/, () => 'stop'],
  [/somebody has loosened it/, () => 'stop'],
  [/a cut in the side rail/, () => 'ask'],
  [/sag four inches when the joint is open/, () => 'ask'],
  [/you hold the pen/, () => 'ask'],
  [/opens six joints by a little each/, () => 'stop'],
  [/cables are dead and tied/, () => 'go'],
  [/somebody else has inspected it/, () => 'go'],
  [/somebody who had no hand in it/, () => 'go'],
  [/engineer has signed the cut/, () => 'go'],
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
