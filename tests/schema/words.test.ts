import { expect, test } from 'vitest';
import { speaker, wordTables } from '../../src/schema/words.ts';
import { fillPlaces, placesOf } from '../../src/trade/say.ts';

const words = wordTables([
  { lang: 'en', data: { cut: { sum: '{a} and {b} make {c}; {a} again' } } },
  { lang: 'en', data: { cut: { none: 'nothing' } } },
]).get('en');

test('files of one language are one table', () => {
  expect([...(words?.keys() ?? [])]).toEqual(['cut.sum', 'cut.none']);
});

test('a saying is filled in every place', () => {
  const speak = speaker(words ?? new Map());
  expect(speak({ say: 'cut.sum', values: { a: 1, b: '2', c: 3 } })).toBe('1 and 2 make 3; 1 again');
  expect(speak({ say: 'cut.none' })).toBe('nothing');
});

test('a value is put in as it is, never read as a pattern', () => {
  expect(fillPlaces('{a}', { a: '$& {b}' })).toBe('$& {b}');
});

test('a hole is never shown', () => {
  const speak = speaker(words ?? new Map());
  expect(() => speak({ say: 'cut.sum', values: { a: 1, b: 2 } })).toThrow('cut.sum has no value for {c}');
  expect(() => speak({ say: 'cut.more' })).toThrow('no words for cut.more');
});

test('places of a text, each once, by the alphabet', () => {
  expect(placesOf('{b} {a} {b} {2} { c }')).toEqual(['a', 'b']);
});
