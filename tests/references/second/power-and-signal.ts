import type { SecondOpinion } from './told.ts';

/** A solid fixed barrier between power-limited cables and power: NEC 2020, 725.136; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, string | ((a: number, b: number) => string)])[] = [
  [/It is not in yet/, 'stop'],
  [/lies on the floor/, 'stop'],
  [/lifted out by hand/, 'stop'],
  [/cross over each other/, 'stop'],
  [/on the signal side, because/, 'stop'],
  [/no print on its jacket/, 'ask'],
  [/in one channel, and no barrier/, 'ask'],
  [/Moving the barrier/, 'ask'],
  [/bolted in over the whole/, 'go'],
  [/signal cables alone/, 'go'],
  [/V cables alone/, 'go'],
  [/a channel of its own/, 'go'],
  [/on the signal side of the barrier, which stands as drawn/, 'go'],
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
