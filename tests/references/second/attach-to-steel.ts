import type { SecondOpinion } from './told.ts';

/** Leave for what the sheet does not allow, anchors and clamps by their sheets as told; the rest is common practice, no source. */
const SCENES: readonly (readonly [RegExp, (n: readonly number[]) => string])[] = [
  [/is ([\d.]+) in from the edge of the slab\. .* asks for ([\d.]+) in/, ([at = 0, least = 0]) => (at < least ? 'ask' : 'go')],
  [/is ([\d.]+) in deep\. Its sheet asks for ([\d.]+) in/, ([deep = 0, least = 0]) => (deep < least ? 'stop' : 'go')],
  [/is ([\d.]+) in thick\. .* up to ([\d.]+) in/, ([thick = 0, most = 0]) => (thick > most ? 'ask' : 'go')],
  [/says nothing of drilling/, () => 'ask'],
  [/offers to tack/, () => 'ask'],
  [/into a hollow block/, () => 'ask'],
  [/rail of the ladder tray/, () => 'ask'],
  [/fire protection/, () => 'ask'],
  [/meets steel in the concrete/, () => 'stop'],
  [/straps are still in the box/, () => 'stop'],
  [/anchor turns with the nut/, () => 'stop'],
  [/straps on, torque as stated/, () => 'go'],
  [/allows holes in this angle/, () => 'go'],
  [/allows anchors in this wall/, () => 'go'],
  [/engineer’s answer is on the sheet/, () => 'go'],
];

const work: SecondOpinion = (told) =>
  Object.fromEntries(
    told.asks.map(({ id, prompt }) => {
      const scene = SCENES.find(([head]) => head.test(prompt));
      if (scene === undefined) throw new Error(`no such scene: ${prompt}`);
      return [id, scene[1]((scene[0].exec(prompt) ?? []).slice(1).map(Number))];
    }),
  );
export default work;
