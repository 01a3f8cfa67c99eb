import { expect, test } from 'vitest';
import words from '../../content/words/en/practice.json' with { type: 'json' };
import { brokenRows } from '../../src/site/brokenRows.ts';
import { speaker } from '../../src/site/speak.ts';

const speak = speaker(words);
const items = ['Clamp it', 'Cut', 'Take the burr off'].map((text, k) => ({ id: String(k), text }));

test('a broken precedence a row, in the order of the text; what is beside them stays', () => {
  const text =
    'The cut comes early. This comes first: Cut. Then: Take the burr off. This comes first: Clamp it. Then: Cut. Not in the order: Label.';
  expect(brokenRows(text, items, speak)).toEqual({
    rows: ['This comes first: Cut. Then: Take the burr off.', 'This comes first: Clamp it. Then: Cut.'],
    rest: 'The cut comes early. Not in the order: Label.',
  });
});

test('a finding without them stays whole', () => {
  expect(brokenRows('Nothing entered.', items, speak)).toEqual({ rows: [], rest: 'Nothing entered.' });
});
