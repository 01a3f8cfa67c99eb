import { given, numberIn, type SecondOpinion } from './told.ts';

/** 29 CFR 1926.759, the zone and the tags as the learner is told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/drill weighs ([\d.]+) lb with its battery\. The tether in your hand is marked (\d+)/, (n) => (n[0] ?? 0) > (n[1] ?? 0) ? 'stop' : 'go'],
  [/A man stops to look, (\d+) ft from/, (n, g) => (n[0] ?? 0) < g('zone') ? 'stop' : 'go'],
  [/bundle of (\d+) lb hangs ready\. The tag of the sling says (\d+)/, (n) => (n[0] ?? 0) > (n[1] ?? 0) ? 'stop' : 'go'],
  [/(\d+) are there, (\d+) went up/, (n) => (n[0] ?? 0) < (n[1] ?? 0) ? 'stop' : 'go'],
  [/open bucket of nuts/, () => 'stop'],
  [/lie in the channel overhead/, () => 'stop'],
  [/throw the wrench up to you/, () => 'stop'],
  [/torn the tape of the drop zone/, () => 'stop'],
  [/above the gangway/, () => 'stop'],
  [/strip scaffold right above/, () => 'ask'],
  [/bolts in a closed pouch/, () => 'go'],
  [/each piece tied at both ends/, () => 'go'],
  [/gone down in a closed bag/, () => 'go'],
  [/comes up to you in a closed bag/, () => 'go'],
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
