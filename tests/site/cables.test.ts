import { describe, expect, test } from 'vitest';
import {
  type CableRow,
  fillLines,
  fillSum,
  readDiameter,
  rowFaults,
  rowsShown,
  standsAbove,
  unlettered,
  widthsOf,
} from '../../src/site/cables.ts';
import type { Source } from '../../src/trade/answer.ts';
import type { FillTables } from '../../src/trade/fillTables.ts';
import { readLength } from '../../src/trade/length.ts';

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

const lines = (given: ReturnType<typeof fields> & { spare?: number }) => {
  const sum = fillSum(given, tables);
  if (sum === undefined) throw new Error('these rows can be read');
  return fillLines(sum.answer.result, given);
};

describe('the answer in words: number against number, whose number, the share last', () => {
  // 2 cables of 1 in: 2 × π/4 = 1.5708 in² against 2 in²: 78.5 %; 3 of them 2.3562: 117.8 % (hand)
  test.each([
    ['2', 'fillSheet.withinArea', { used: '1.57', usable: '2' }, '78.5'],
    ['3', 'fillSheet.overArea', { used: '2.36', usable: '2' }, '117.8'],
  ])('%s cables', (count, key, values, share) => {
    expect(lines(fields([row('1', count)]))).toEqual({
      verdict: { key, values },
      more: [{ key: 'fillSheet.speaks2', values: { table: 'V', width: '4' } }],
      share: { key: 'fillSheet.share', values: { share } },
    });
  });

  test('one cable speaks from the other column', () => {
    expect(lines(fields([row('1', '1')])).more[0]?.key).toBe('fillSheet.speaks1');
  });

  test('what is kept spare comes off the limit, and the limit is still said (2 − 25 % = 1.5)', () => {
    const { verdict, more } = lines({ ...fields([row('1', '2')]), spare: 25 });
    expect(verdict).toEqual({ key: 'fillSheet.overArea', values: { used: '1.57', usable: '1.5' } });
    expect(more.at(-1)).toEqual({ key: 'fillSheet.lessArea', values: { spare: '25', limit: '2' } });
  });

  test('a hair over is never shown as the same number twice', () => {
    // 2 of 1.1285 in: 2.00044 in² (hand: 2 × π × 1.1285² / 4)
    expect(lines(fields([row('1.1285', '2')])).verdict).toEqual({
      key: 'fillSheet.overArea',
      values: { used: '2.0004', usable: '2' },
    });
  });

  test('single conductors go by diameters against the width', () => {
    const single = { ...row('0.5', '4'), make: 'single' as const };
    expect(lines({ ...fields([single]), qualifiedOnly: true })).toMatchObject({
      verdict: { key: 'fillSheet.withinWidth', values: { used: '2', usable: '4' } },
      more: [{ key: 'fillSheet.speaksWidth' }],
    });
    expect(lines(fields([single])).verdict.key).toBe('fillSheet.refer');
  });

  test('a width without a row: ask the engineer, and the number for him stays', () => {
    expect(lines(fields([row('1', '2')], 2))).toEqual({
      verdict: { key: 'fillSheet.refer', values: {} },
      more: [{ key: 'fillSheet.areaOnly', values: { area: '1.57' } }],
      share: undefined,
    });
  });
});

describe('the table beside it', () => {
  const tray = (widthIn: number) => ({ bottom: 'ventilated', widthIn }) as const;
  test('the row of the channel speaks, in its column', () => {
    expect(rowsShown({ column: 2 }, tray(4), tables)).toEqual([{ widthIn: 4, limits: [4, 2], speaks: 2 }]);
  });
  test('a width without a row stands in its place and asks', () => {
    expect(rowsShown({ column: 1 }, tray(2), tables)).toEqual([
      { widthIn: 2, limits: null, speaks: 1 },
      { widthIn: 4, limits: [4, 2], speaks: null },
    ]);
  });
  test('single conductors have no such table', () => {
    expect(rowsShown({ column: null }, tray(4), tables)).toEqual([]);
  });
});

describe('what is said of the figure', () => {
  const inch = readLength('1');
  const tray: Parameters<typeof standsAbove>[0]['tray'] = {
    width: readLength('4'),
    outsideWidth: readLength('4 1/4'),
    depth: readLength('1 3/4'),
    thickness: readLength('1/8'),
    bottom: 'ventilated',
    webHoles: { width: readLength('9/16'), first: inch, pitch: inch },
  };
  const given = (odIn: number) => ({ tray, cables: [{ odIn, count: 1 }] });
  test('a cable above the legs (depth 1 3/4 less the floor 1/8 is 1.625)', () => {
    expect(standsAbove(given(1.6))).toBe(false);
    expect(standsAbove(given(1.65))).toBe(true);
  });
  test('a cable too small for its letter', () => {
    expect(unlettered(given(1))).toBe(false);
    expect(unlettered(given(0.3))).toBe(true);
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
