import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../src/practice/attempts.ts';
import { attemptsText, readAttemptsFile } from '../../src/practice/attemptsFile.ts';
import { GENERATOR } from '../../src/practice/generator.ts';
import { cameSays, inHand, keptSays } from '../../src/site/keptPractice.ts';
import { teller } from '../../src/site/speak.ts';
import { table } from './wordTable.ts';

const tell = teller(table('en'));
const one: Attempt = {
  family: 'cut-with-insertion',
  seed: '4172',
  generator: GENERATOR,
  at: '2026-03-09T14:05:00.000Z',
  answers: { cut: 110.25 },
  came: 'not',
};
const dayOf = (moment: number) => new Date(moment).toISOString().slice(0, 10);
const families = ['cut-with-insertion', 'fill-check'];

describe('what is kept, in sentences', () => {
  test('nothing', () =>
    expect(keptSays([], families, true, dayOf, tell)).toEqual(['No tries are kept here yet.']));

  test('tries, draws and sheets', () => {
    const again = { ...one, at: '2026-03-09T14:06:00.000Z', came: 'passed' } as const;
    const other = { ...again, family: 'fill-check' };
    expect(keptSays([one, again, other], families, true, dayOf, tell)).toEqual([
      '3 tries are kept here. Draws: 2. Sheets: 2.',
      'The first is of 9 March 2026.',
      'The browser was asked to keep them, and does.',
    ]);
  });

  test('what cannot be drawn any more is said: the family is gone, or the generator another one', () => {
    const gone = [one, { ...one, family: 'gone-long-ago' }, { ...one, generator: 'trayhand seed 0' }];
    expect(keptSays(gone, families, false, dayOf, tell)).toContain(
      '2 of them cannot be drawn any more: gone-long-ago, cut-with-insertion. The sheet is withdrawn, or was made ' +
        'anew. They are kept, and go out with the file.',
    );
    expect(keptSays([one], families, undefined, dayOf, tell).at(-1)).toContain('may clear them');
  });
});

describe('a file that somebody gave', () => {
  const text = attemptsText({ device: 'phone-3', made: '2026-03-10T07:00:00.000Z', attempts: [one] });
  const faults = (given: string | undefined) => {
    const read = inHand(given, readAttemptsFile, tell);
    return read.good ? [] : read.faults.map(({ message }) => message);
  };
  test('one of ours', () => {
    const read = inHand(text, readAttemptsFile, tell);
    expect(read.good && read.value.attempts).toEqual([one]);
  });
  test('too large', () => expect(faults(undefined)).toEqual(['it is larger than any such file']));
  test('no JSON', () => expect(faults('{')).toEqual(['it cannot be read']));
  test('another file', () =>
    expect(faults('{"v":1,"kind":"answers"}')).toContain('this is another kind of file'));
});

test('what came in with a file, and what of it stayed out', () => {
  expect(cameSays(0, 0, tell)).toBe('Everything in it is here already.');
  expect(cameSays(1, 0, tell)).toBe('1 try came in that was not here.');
  expect(cameSays(3, 2, tell)).toBe(
    '3 tries came in that were not here. Tries in it that could not be read, and stayed out: 2.',
  );
});
