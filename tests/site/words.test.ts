import { describe, expect, test } from 'vitest';
import words from '../../content/words/en/site.json' with { type: 'json' };
import { dayText } from '../../src/site/dates.ts';
import { lettering, picture } from '../../src/site/pictures/line.ts';
import { speaker, teller, unbroken } from '../../src/site/speak.ts';
import { allWords, languages, wordsOf } from '../../src/site/words.ts';

describe('a sentence is never shown with a hole in it', () => {
  const speak = speaker({ a: { b: '{x} of {y}' } });
  test('filled', () => expect(speak({ say: 'a.b', values: { x: 1, y: 'two' } })).toBe('1 of two'));
  test('a missing value throws', () => expect(() => speak({ say: 'a.b', values: { x: 1 } })).toThrow('{y}'));
  test('a missing key throws', () => expect(() => speak({ say: 'a.c' })).toThrow('a.c'));
});

test('every language has words, and a group that is not there stops the build', () => {
  for (const lang of languages) expect(Object.keys(allWords(lang))).toContain('sheet');
  expect(() => wordsOf('en', ['no-such-group'])).toThrow('no-such-group');
});

describe('days', () => {
  const tell = teller(words);
  test('as a title block writes them', () => expect(dayText(tell, '2026-03-09')).toBe('9 March 2026'));
  test.each(['2026-3-9', '9 March 2026', '2026-13-01', '2026-00-01'])('%s is refused', (text) =>
    expect(() => dayText(tell, text)).toThrow(),
  );
});

test('a picture escapes what is written into it', () => {
  const svg = picture(10, 10, lettering([0, 0], '<b>'), '<b>"&');
  expect(svg).not.toContain('<b>');
  expect(svg).toContain('aria-label="&lt;b&gt;&quot;&amp;"');
  expect(svg).toContain('>&lt;b&gt;</text>');
});

test('a mixed number stays together at the end of a line', () => {
  expect(unbroken(`cut 3'-7 1/8", 2 of 4 1/2"`)).toBe(`cut 3'-7\u00a01/8", 2 of 4\u00a01/2"`);
});
