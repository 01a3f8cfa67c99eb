import { inchesOf, type SecondOpinion } from './told.ts';

/** Coatings come off or a device is made for it: NEC 2023, 250.96; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, string | ((a: number, b: number) => string)])[] = [
  [/lug ([\d /]+") wide.*over ([\d /]+")/, (wide, bared) => (bared < wide ? 'stop' : 'go')],
  [/takes up ([\d /]+"), the jumper has ([\d /]+")/, (moves, slack) => (slack < moves ? 'stop' : 'go')],
  [/down over its paint/, 'stop'],
  [/washer with teeth/, 'ask'],
  [/one of the large holes/, 'stop'],
  [/turns by hand/, 'stop'],
  [/used on steel/, 'stop'],
  [/bare copper lug/, 'ask'],
  [/Nobody has tested/, 'stop'],
  [/plain splice of this make/, 'go'],
  [/listed for use on this coating/, 'go'],
  [/Both faces are bright/, 'go'],
  [/off under the whole lug and a little beyond/, 'go'],
];

const work: SecondOpinion = ({ asks }) =>
  Object.fromEntries(
    asks.map(({ id, prompt }) => {
      const scene = SCENES.find(([head]) => head.test(prompt));
      if (scene === undefined) throw new Error(`no such scene: ${prompt}`);
      const [a = 0, b = 0] = (scene[0].exec(prompt) ?? []).slice(1).map(inchesOf);
      return [id, typeof scene[1] === 'string' ? scene[1] : scene[1](a, b)];
    }),
  );
export default work;
