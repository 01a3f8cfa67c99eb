import type { SecondOpinion } from './told.ts';

/** NEC 2023, 392.18(B), 392.30(B)(3); the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, string | ((a: number, b: number) => string)])[] = [
  [/radius of (\d+) in.*elbow of (\d+) in/, (need, turn) => (turn < need ? 'stop' : 'go')],
  [/would cross ([\d.]+) ft/, (free) => (free > 6 ? 'stop' : 'go')],
  [/every (\d+) in at most.*sit (\d+) in apart/, (most, apart) => (apart > most ? 'stop' : 'go')],
  [/last ten are not hung/, 'stop'],
  [/are not in, and the cables/, 'stop'],
  [/waist at every tie/, 'stop'],
  [/tight as a string/, 'stop'],
  [/raw edge of a rung/, 'stop'],
  [/whether they are live/, 'ask'],
  [/reel says 141/, 'ask'],
  [/release is signed/, 'go'],
  [/those of the list/, 'go'],
  [/drip loop hangs/, 'go'],
  [/At the turn stand rollers/, 'go'],
];

const work: SecondOpinion = ({ asks }) =>
  Object.fromEntries(
    asks.map(({ id, prompt }) => {
      const scene = SCENES.find(([head]) => head.test(prompt));
      if (scene === undefined) throw new Error(`no such scene: ${prompt}`);
      const [, a = 0, b = 0] = (scene[0].exec(prompt) ?? []).map(Number);
      return [id, typeof scene[1] === 'string' ? scene[1] : scene[1](a, b)];
    }),
  );
export default work;
