/** Sheets whose rule states its error: read from their file, graded by their draws. */
import { describe, expect, test } from 'vitest';
import type { SheetRule } from '../../src/practice/passRule/rule.ts';
import { type AnswersFile, gradeSheet, type Sheet, sheetDraws } from '../../src/practice/sheet.ts';
import { check } from '../../src/schema/faults.ts';
import { sheetShape } from '../../src/schema/sheet.ts';
import { language, practice } from './means.ts';

const sheetOf = (rule: SheetRule, draws: number): Sheet => ({
  id: 'long',
  number: 9,
  title: { en: 'Long' },
  tasks: ['T05'],
  families: [{ family: 'cut-with-insertion', draws }],
  rule,
});
// Nine straight pass, three straight misses refuse (Wald 1947; statistics.json, sprt-03 and sprt-04).
const sequential = sheetOf({ sequential: { p0: 0.6, p1: 0.85, alpha: 0.05, beta: 0.1, ceiling: 20 } }, 20);
const bound = sheetOf({ bound: { confidence: 0.95, share: 0.75 } }, 30);

/**
 * Answers by place: `+` right, `-` the part that is left is out, which is no critical ask and below the mark,
 * `!` the critical cut is out, `.` nothing.
 */
function graded(sheet: Sheet, pattern: string) {
  const answers = sheetDraws(sheet, 1, practice).flatMap(
    ({ family, seed, draw }, i): AnswersFile['answers'] => {
      const sign = pattern[i] ?? '.';
      if (sign === '.') return [];
      const out = { '+': {}, '-': { left: 1 }, '!': { cut: 1 } }[sign];
      return [{ family, seed, answers: { ...draw.right, ...out } }];
    },
  );
  const { draws, ...rest } = gradeSheet(sheet, 1, answers, practice, language);
  expect(draws).toHaveLength(sheet.families[0]?.draws ?? 0);
  return rest;
}

describe('a sequential sheet', () => {
  test('passes at its decision; later draws are not needed', () => {
    expect(graded(sequential, '+++++++++')).toMatchObject({
      result: 'pass',
      passed: true,
      n: 9,
      held: 9,
      criticalMissed: [],
      by: 'rule',
    });
    expect(graded(sequential, '+++++++++-----')).toMatchObject({ result: 'pass', n: 9, held: 9 });
  });

  test('is undecided before, and when all draws are used up; undecided is not passed', () => {
    expect(graded(sequential, '++++++++')).toMatchObject({ result: 'undecided', passed: false, n: 8 });
    expect(graded(sequential, '')).toMatchObject({ result: 'undecided', n: 0, held: 0, criticalMissed: [] });
    expect(graded(sequential, '++-+++-++-+++-+++-++')).toMatchObject({
      result: 'undecided',
      n: 20,
      held: 15,
    });
  });

  test('refuses', () => {
    expect(graded(sequential, '---')).toMatchObject({ result: 'refuse', passed: false, n: 3, held: 0 });
  });

  test('a draw left out before an answered one does not hold, and its critical points are missed', () => {
    expect(graded(sequential, '.++++++++++++++')).toMatchObject({
      result: 'refuse',
      by: 'critical',
      criticalMissed: [1],
      held: 12,
      n: 13,
    });
  });

  test('a critical point missed refuses, also after the decision; one not reached is not missed', () => {
    expect(graded(sequential, '++!++++++++++++')).toMatchObject({ result: 'refuse', criticalMissed: [3] });
    expect(graded(sequential, '+++++++++.!')).toMatchObject({ result: 'refuse', n: 9, criticalMissed: [11] });
  });
});

describe('a sheet with a bound', () => {
  // One-sided 95 % bounds, scipy 1.17.1 beta.ppf: 27 of 30 from 0.7614, 26 of 30 from 0.7203, 17 of 30 to 0.7231.
  test('passes, stays undecided, refuses', () => {
    const of30 = (held: number) => graded(bound, '+'.repeat(held).padEnd(30, '-'));
    expect(of30(27)).toMatchObject({ result: 'pass', passed: true, n: 30, held: 27 });
    expect(of30(27).interval.low).toBeCloseTo(0.7614, 4);
    expect(of30(26)).toMatchObject({ result: 'undecided', passed: false });
    expect(of30(17)).toMatchObject({ result: 'refuse', passed: false });
  });

  test('a blank draw does not hold, and its critical points are missed', () => {
    expect(graded(bound, '+'.repeat(29))).toMatchObject({
      result: 'refuse',
      by: 'critical',
      n: 30,
      held: 29,
    });
  });
});

describe('the file of a sheet', () => {
  const read = (rule: unknown, draws: number) => {
    const { families: _, ...rest } = sheetOf({ need: 1, of: 1 }, draws);
    return check(sheetShape, { ...rest, families: [{ family: 'f', draws }], rule });
  };
  const fields = (rule: unknown, draws: number) => {
    const file = read(rule, draws);
    return 'faults' in file ? file.faults.map((f) => f.field) : [];
  };
  const wald = { p0: 0.6, p1: 0.85, alpha: 0.05, beta: 0.1, ceiling: 20 };

  test.each([
    [{ bound: { confidence: 0.95, share: 0.8 } }, 14, []],
    [{ bound: { confidence: 0.95, share: 0.8 } }, 13, ['rule.bound']],
    [{ bound: { confidence: 0.95 } }, 14, ['rule.bound.share']],
    [{ bound: { confidence: 95, share: 0.8 } }, 14, ['rule.bound.confidence']],
    [{ sequential: wald }, 20, []],
    [{ sequential: wald }, 19, ['rule.sequential.ceiling']],
    [{ sequential: { ...wald, ceiling: 13 } }, 13, ['rule.sequential.ceiling']],
    [{ sequential: { ...wald, p1: 0.5 } }, 20, ['rule.sequential.p1']],
    [{ sequential: { ...wald, more: 1 } }, 20, ['rule.sequential.more']],
  ])('%j with %i draws', (rule, draws, wanted) => {
    expect(fields(rule, draws)).toEqual(wanted);
  });

  test('is what the core takes', () => {
    expect(read({ sequential: wald }, 20)).toMatchObject({ data: { rule: { sequential: wald } } });
  });
});
