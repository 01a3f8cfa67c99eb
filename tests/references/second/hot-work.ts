import { given, numberIn, type SecondOpinion } from './told.ts';

/** 29 CFR 1910.252(a)(2)(vii), 35 ft (from memory), and the minutes of the permit as the learner is told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/Planks lie open (\d+) ft/, (n, g) => (n[0] ?? 0) < g('distance') ? 'stop' : 'go'],
  [/covers it to the floor without a gap/, () => 'go'],
  [/last spark fell (\d+) minutes ago/, (n, g) => (n[0] ?? 0) < g('watch') ? 'stop' : 'go'],
  [/lets you cut for (\d+) more minutes\. The cut before you takes (\d+)/, (n) => (n[1] ?? 0) > (n[0] ?? 0) ? 'ask' : 'go'],
  [/one minute with a grinder/, () => 'ask'],
  [/stands against its other side/, () => 'ask'],
  [/Below it is a cable room/, () => 'stop'],
  [/stands in the red/, () => 'stop'],
  [/watch is called away and goes/, () => 'stop'],
  [/smell of burning from behind the panel/, () => 'stop'],
  [/air hose is in your hand/, () => 'stop'],
  [/swept for 50 ft around/, () => 'go'],
  [/permit has been written anew/, () => 'go'],
  [/take the filings up with a vacuum/, () => 'go'],
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
