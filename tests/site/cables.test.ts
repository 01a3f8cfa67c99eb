import { describe, expect, test } from 'vitest';
import {
  type CableRow,
  fillSum,
  fillVerdict,
  readDiameter,
  rowFaults,
  widthsOf,
} from '../../src/site/cables.ts';
import type { Source } from '../../src/trade/answer.ts';
import type { FillTables } from '../../src/trade/fillTables.ts';

const source: Source = {
  id: 'test',
  document: 'test',
  edition: 'test',
  where: 'test',
  seen: 'training value',
};
const editions = { 2017: source, 2020: source, 2023: source };
/** Invented limits, so that no figure of a code hides in a test of the page. */
const tables: FillTables = {
  multiconductor: {
    ventilated: { table: 'V', rows: [{ widthIn: 4, oneIn2: 4, severalIn2: 2 }], sources: editions },
    solid: { table: 'S', rows: [{ widthIn: 4, oneIn2: 3, severalIn2: 1 }], sources: editions },
  },
  singles: { table: 'W', bottom: 'ventilated', widthsIn: [4], sources: editions, qualified: editions },
  together: editions,
};
const row = (od: string, count: string, id = 1): CableRow => ({ id, make: 'multiconductor', od, count });
const fields = (rows: readonly CableRow[], widthIn = 4) => ({
  tray: { bottom: 'ventilated', widthIn } as const,
  rows,
  qualifiedOnly: false,
  spare: 0,
  edition: 2023 as const,
});

describe('a diameter as written', () => {
  test.each([
    ['0.75', 0.75],
    ['.5', 0.5],
    ['3/4', 0.75],
    ['1 1/4"', 1.25],
    ['25.4 mm', 1],
  ])('%s is %d in', (text, want) => expect(readDiameter(text)).toBe(want));
  test.each(['', '0', '-1', 'thick', '1,5'])('"%s" is none', (text) =>
    expect(readDiameter(text)).toBeUndefined(),
  );
});

test('a row says what is wrong with it, both at once', () => {
  expect(rowFaults(row('x', '0'))).toEqual({ od: 'fillSheet.odNot', count: 'fillSheet.countNot' });
  expect(rowFaults(row('0.5', '1'))).toEqual({});
});

test('one row that cannot be read leaves no answer', () => {
  expect(fillSum(fields([row('0.5', '2'), row('', '1', 2)]), tables)).toBeUndefined();
  expect(fillSum(fields([]), tables)).toBeUndefined();
});

describe('the verdict in one line', () => {
  // 2 cables of 1 in: 2 × π/4 = 1.5708 in² against 2 in²: 78.5 %; 3 of them 2.3562: 0.36 in² over (hand)
  test.each([
    ['2', 'fillSheet.within', { share: '78.5' }],
    ['3', 'fillSheet.over', { over: '0.36' }],
  ])('%s cables', (count, key, values) => {
    const sum = fillSum(fields([row('1', count)]), tables);
    expect(sum && fillVerdict(sum.answer.result, 0)).toEqual({ key, values });
  });

  test('a width without a row: ask the engineer, and the numbers for him stay', () => {
    const sum = fillSum(fields([row('1', '2')], 2), tables);
    expect(sum && fillVerdict(sum.answer.result, 0).key).toBe('fillSheet.refer');
    expect(sum?.answer.result.areaIn2).toBeCloseTo(Math.PI / 2, 12);
    expect(sum?.answer.result.allowedIn2).toBeNull();
  });
});

test('the figure leaves out what cannot be drawn', () => {
  expect(fillSum(fields([row('1', '60')]), tables)?.drawn).toEqual([{ odIn: 1, count: 60 }]);
  expect(fillSum(fields([row('1', '61')]), tables)?.drawn).toEqual([]);
  expect(fillSum(fields([row('4', '1')]), tables)?.drawn).toHaveLength(1);
  expect(fillSum(fields([row('4.01', '1')]), tables)?.drawn).toEqual([]);
});

test('the widths to choose from are those that any table or the rule for singles speaks of', () => {
  const solid = { ...tables.multiconductor.solid, rows: [{ widthIn: 2, oneIn2: 1, severalIn2: 1 }] };
  const spoken = {
    ...tables,
    multiconductor: { ...tables.multiconductor, solid },
    singles: { ...tables.singles, widthsIn: [6, 3, 4] },
  };
  expect(widthsOf(spoken)).toEqual([2, 3, 4, 6]);
});
