import { expect, test } from 'vitest';
import { textFaults, textsIn, unsaid } from '../../src/schema/texts.ts';

test.each(unsaid.map((u) => u.word))('"%s" is found alone, at the head, in capitals', (word) => {
  for (const text of [word, `${word.toUpperCase()}!`, `it is ${word}.`]) {
    expect(textFaults('f', text).length).toBeGreaterThan(0);
  }
});

test.each([
  ['the task of this name', 'Correct faults'],
  ['part of a longer word', 'the decking is scored by elevators'],
  ['a compound', 'two-level'],
])('not found: %s', (_, text) => {
  expect(textFaults('f', text)).toEqual([]);
});

test('the exception frees its own words only', () => {
  expect(textFaults('f', 'Correct faults the correct way')).toHaveLength(1);
});

test('the name of a place is read by nobody', () => {
  expect(textFaults('f', '{levels} are proven')).toEqual([]);
  expect(textFaults('f', '{count} levels')).toHaveLength(1);
});

// Characters of the two lettering files: printable ASCII, Spanish letters and marks, dashes, quotes, a few signs.
test.each(['¿Cuántas pulgadas? «5 1/8" × 2» — ½ … ± 3°', 'it’s “so” · 4 in²', 'a\nb'])(
  'the lettering has %j',
  (text) => {
    expect(textFaults('f', text)).toEqual([]);
  },
);
test.each(['≤', '→', 'µ', 'π', '′', '⌀', '\t', '\u200B', '漢'])('the lettering lacks %j', (character) => {
  expect(textFaults('f', `a ${character} b`)).toEqual([
    expect.objectContaining({ field: 'f', value: character }),
  ]);
});

test('every text of a value with its path', () => {
  expect(textsIn({ a: 'x', b: [{ c: 'y' }, 'z'], d: 4, e: null })).toEqual([
    ['a', 'x'],
    ['b[0].c', 'y'],
    ['b[1]', 'z'],
  ]);
});
