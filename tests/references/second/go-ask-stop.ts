import { given, numberIn, type SecondOpinion } from './told.ts';

/** The limits as the learner is told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/platform is (\d+) ft above/, (n, g) => (n[0] ?? 0) >= Math.min(g('site'), g('law')) ? 'stop' : 'go'],
  [/Planks lie open (\d+) ft/, (n, g) => (n[0] ?? 0) < g('distance') ? 'stop' : 'go'],
  [/last spark fell (\d+) minutes ago/, (n, g) => (n[0] ?? 0) < g('watch') ? 'stop' : 'go'],
  [/belt shows ([\d.]+) % of/, (n, g) => (n[0] ?? 0) >= g('gas') ? 'stop' : 'go'],
  [/driver clicks at (\d+) ft-lb/, (n, g) => (n[0] ?? 0) < g('stated') ? 'stop' : 'go'],
  [/for a support is (\d+) ft from/, (n, g) => (n[0] ?? 0) > g('span-most') ? 'ask' : 'go'],
  [/and the gas alarm sounds/, () => 'stop'],
  [/within reach for the hook is the tray/, () => 'stop'],
  [/One foot on the tray would do it/, () => 'stop'],
  [/guard of the chop saw is tied back/, () => 'stop'],
  [/cable without a tag lies/, () => 'ask'],
  [/could be bent around it by hand/, () => 'ask'],
  [/drawing on the table is revision D/, () => 'ask'],
  [/lay its air tube/, () => 'stop'],
  [/saw each conductor tested to each other and to ground: 0 V, the tester proven before and after/, () => 'go'],
  [/bolts in a closed pouch/, () => 'go'],
  [/anchor that the foreman has named/, () => 'go'],
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
