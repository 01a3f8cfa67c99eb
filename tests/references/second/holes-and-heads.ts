import type { SecondOpinion } from './told.ts';

/** Small holes, smooth heads to the cables, the paint line: common practice, no source; the sixteenth is a training value. */
const SCENES: readonly (readonly [RegExp, string | ((sixteenths: number) => string)])[] = [
  [/stands (\d+)\/16 in outside/, (off) => (off > 1 ? 'stop' : 'go')],
  [/fastener stands in a large hole/, 'stop'],
  [/through a slot of the channel/, 'stop'],
  [/open them up/, 'stop'],
  [/nuts and threads stand/, 'stop'],
  [/its thread inside/, 'stop'],
  [/no mark of their grade/, 'ask'],
  [/came without a label/, 'ask'],
  [/put the paint strokes on/, 'go'],
  [/fasteners are empty/, 'go'],
  [/lies under the floor/, 'go'],
  [/both paint lines stand at its ends/, 'go'],
  [/bears the maker’s label/, 'go'],
];

const work: SecondOpinion = ({ asks }) =>
  Object.fromEntries(
    asks.map(({ id, prompt }) => {
      const scene = SCENES.find(([head]) => head.test(prompt));
      if (scene === undefined) throw new Error(`no such scene: ${prompt}`);
      const said = scene[1];
      return [id, typeof said === 'string' ? said : said(Number(scene[0].exec(prompt)?.[1]))];
    }),
  );
export default work;
