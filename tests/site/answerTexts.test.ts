/** The right answer and every wrong one of every family has a text: what a key on paper and a note on a page say. */
import { expect, test } from 'vitest';
import { tellDraw } from '../../src/practice/show.ts';
import { answerText } from '../../src/site/practice.ts';
import { teller } from '../../src/site/speak.ts';
import { draw, families, language, world } from '../practice/means.ts';
import { table } from './wordTable.ts';

const tell = teller(table('en'));

test.each([...families.keys()])('%s', (id) => {
  const drawn = draw(id, 'text-1');
  const { asks } = tellDraw(drawn, world, language);
  for (const ask of asks) {
    // An order is shown as rows; its working numbers them.
    if (ask.kind === 'order') continue;
    const answers = [
      drawn.right[ask.id],
      ...drawn.wrong.filter((one) => one.ask === ask.id).map(({ answer }) => answer),
    ];
    for (const answer of answers) {
      const text = answerText(tell, ask, answer);
      expect(text.trim(), `${ask.id}: ${JSON.stringify(answer)}`).not.toBe('');
      expect(text).not.toMatch(/undefined|NaN|\[object/);
    }
  }
});
