import { given, numberIn, type SecondOpinion } from './told.ts';

/** The permit’s figures as the learner is told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[], g: (id: string) => number) => string])[] = [
  [/belt shows ([\d.]+) % of/, (n, g) => (n[0] ?? 0) >= g('gas') ? 'stop' : 'go'],
  [/on the board is (\d+) minutes old/, (n, g) => (n[0] ?? 0) > g('every') ? 'stop' : 'go'],
  [/The gas alarm sounds/, () => 'stop'],
  [/Your own phone buzzes/, () => 'stop'],
  [/brought a grinder through the gate/, () => 'stop'],
  [/bears no mark for this area/, () => 'stop'],
  [/Now the horn is silent/, () => 'ask'],
  [/The sign on the fence says Division 1/, () => 'ask'],
  [/not on your list for this area/, () => 'ask'],
  [/the ordinary one from the shop/, () => 'stop'],
  [/hand saw and cutting oil/, () => 'go'],
  [/lamp is marked for Class I/, () => 'go'],
  [/phone lies in the locker/, () => 'go'],
  [/gives it free in writing/, () => 'go'],
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
