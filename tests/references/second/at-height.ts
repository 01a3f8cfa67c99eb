import { given, numberIn, type SecondOpinion } from './told.ts';

/** 29 CFR 1926.501(b)(1) and 1926.1053(b)(1), the site’s own height and the plate, as the learner is told; the rest is common practice. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/platform is (\d+) ft above/, (n, g) => (n[0] ?? 0) >= Math.min(g('site'), g('law')) ? 'stop' : 'go'],
  [/rails stand (\d+) in above/, (n, g) => (n[0] ?? 0) < g('rails') ? 'stop' : 'go'],
  [/basket shows (\d+) mph/, (n, g) => (n[0] ?? 0) > g('plate') ? 'stop' : 'go'],
  [/within reach for the hook is the tray/, () => 'stop'],
  [/One foot on the tray would do it/, () => 'stop'],
  [/plywood lies loose over a hole/, () => 'stop'],
  [/webbing of your harness has a cut/, () => 'stop'],
  [/belt buckle outside the rail/, () => 'stop'],
  [/nobody has named it as an anchor/, () => 'ask'],
  [/There is no tag on it/, () => 'ask'],
  [/anchor that the foreman has named/, () => 'go'],
  [/toe boards, and today’s tag/, () => 'go'],
  [/screwed down and marked HOLE/, () => 'go'],
  [/now stands right under it/, () => 'go'],
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
