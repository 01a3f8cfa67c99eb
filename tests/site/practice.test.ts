import { describe, expect, test } from 'vitest';
import site from '../../content/words/en/site.json' with { type: 'json' };
import units from '../../content/words/en/unit.json' with { type: 'json' };
import type { Grade, Verdict } from '../../src/practice/grade.ts';
import type { ShownAsk } from '../../src/practice/show.ts';
import { answerText, outcomes, readNumber, tryText, verdictText } from '../../src/site/practice.ts';
import { teller } from '../../src/site/speak.ts';

const tell = teller({ ...site, ...units });
const grade = (...verdicts: Verdict[]): Grade => ({
  score: 0,
  passed: false,
  criticalMissed: [],
  findings: verdicts.map((verdict, k) => ({ ask: `a${k}`, verdict, mistake: null, says: 'said' })),
});
const ask = (id: string, part: Partial<ShownAsk> = {}): ShownAsk => ({
  id,
  kind: 'number',
  prompt: id,
  unit: 'in',
  ...part,
});

describe('the verdict is one line, what is worst first', () => {
  test.each([
    [
      ['holds', 'rework', 'near', 'rework', 'blank', 'holds from there'],
      'Rework 2 of 6',
      'Hold: 1. Hold from there: 1. Near: 1. Blank: 1.',
    ],
    [['holds', 'near'], 'Near 1 of 2', 'Hold: 1.'],
    [['blank', 'blank'], 'Blank 2 of 2', ''],
    [['holds', 'holds from there'], 'Holds from there 1 of 2', 'Hold: 1.'],
    [['holds', 'holds'], 'All 2 hold', ''],
    [['holds'], 'It holds', ''],
  ] as [Verdict[], string, string][])('%j', (verdicts, line, rest) => {
    expect(verdictText(tell, grade(...verdicts))).toEqual({ line, rest });
  });
});

test('only rework is numbered, in order', () => {
  const asks = ['a0', 'a1', 'a2', 'a3'].map((id) => ask(id));
  const found = outcomes(tell, asks, grade('rework', 'near', 'holds', 'rework'), { a0: 97.625, a1: 12 });
  expect(found.map(({ note, rows }) => [note, rows.join('; ')])).toEqual([
    [1, `8'-1 5/8"`],
    [null, `1'-0"`],
    [null, ''],
    [2, ''],
  ]);
});

test('answers as a person reads them', () => {
  expect(answerText(tell, ask('a', { unit: 'in2' }), 1.25)).toBe('1.25 in²');
  expect(
    answerText(tell, ask('a', { kind: 'choice', options: [{ id: 'ask', text: 'Ask the engineer' }] }), 'ask'),
  ).toBe('Ask the engineer');
  expect(answerText(tell, ask('a'), undefined)).toBe('');
});

test('tries have names, then numbers', () => {
  expect([1, 2, 3, 4].map((n) => tryText(tell, n))).toEqual([
    'first try',
    'second try',
    'third try',
    'try 4',
  ]);
});

test('a plain number, a blank, or neither', () => {
  expect(['1.25', ' .5 ', '', '1,2', '-1', '1e3'].map((text) => readNumber(text))).toEqual([
    1.25,
    0.5,
    null,
    undefined,
    undefined,
    undefined,
  ]);
});

test('the unit of the ask may stand after the number, another one may not', () => {
  expect(['2.06 in2', '2.06in²', '2.06 in^2', '2.06 sq in', '2.06'].map((t) => readNumber(t, 'in2'))).toEqual(
    Array(5).fill(2.06),
  );
  expect(readNumber('2.06 in', 'in2')).toBeUndefined();
  expect(readNumber('2,06 in2', 'in2')).toBeUndefined();
  expect(readNumber('5 in', 'in')).toBe(5);
  expect(readNumber('5 in2', 'in')).toBeUndefined();
});
