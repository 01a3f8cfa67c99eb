import type { SecondOpinion } from './told.ts';

/** No tube shares tray with conductors: NEC 2023, 300.8; tray is no step and no hoist point: NEMA VE 2, 2013 (from memory). */
const SCENES: readonly (readonly [RegExp, string | ((a: number, b: number) => string)])[] = [
  [/in lie in the channel beside/, 'stop'],
  [/to the channel itself/, 'ask'],
  [/lie among the cables\. They are capped/, 'stop'],
  [/“only for water”/, 'stop'],
  [/The drawing of today/, 'ask'],
  [/through holes in its side walls/, 'ask'],
  [/puts his foot/, 'stop'],
  [/rope is thrown/, 'stop'],
  [/on struts of their own/, 'go'],
  [/fibre-optic/, 'go'],
  [/have been taken out/, 'go'],
  [/brackets of its own/, 'go'],
  [/set a ladder beside the channel/, 'go'],
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
