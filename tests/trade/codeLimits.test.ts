/** Transition, ampacity, marking, separation: each limit from both sides, in each edition. */
import { describe, expect, test } from 'vitest';
import { type AmpacityGiven, ampacity } from '../../src/trade/ampacity.ts';
import { EDITIONS } from '../../src/trade/editions.ts';
import { marking } from '../../src/trade/marking.ts';
import { separation } from '../../src/trade/separation.ts';
import { type TransitionGiven, transition } from '../../src/trade/transition.ts';
import { tables } from './tables.ts';

/** How an edition was seen. */
const SEEN = { 2017: 'memory', 2020: 'page', 2023: 'page' } as const;

describe('transition: NFPA 70-2020 and -2023, 392.30(B)(3)', () => {
  const ask = (more: Partial<TransitionGiven>) =>
    transition({ gapFt: 5, secured: true, guarded: true, ...more }, tables.transition);

  test.each([
    [0, true, true, true],
    [6, true, true, true],
    [6 + 1e-10, true, true, true],
    [6.01, true, true, false],
    [5, false, true, false],
    [5, true, false, false],
    [7, false, false, false],
  ])('%d ft, secured %s, guarded %s: %s', (gapFt, secured, guarded, holds) => {
    for (const edition of [undefined, 2020, 2023] as const)
      expect(ask({ gapFt, secured, guarded, edition }).result).toEqual({ holds, limitFt: 6, refer: false });
  });

  test('2017 is worded for single conductors: referred, whatever the gap', () => {
    for (const gapFt of [1, 6, 9]) {
      const { result } = ask({ gapFt, edition: 2017 });
      expect(result).toMatchObject({ holds: null, limitFt: 6, refer: true });
      expect(result.why?.map((w) => w.say)).toEqual(['transition.singles', 'transition.ask']);
    }
  });

  test.each(EDITIONS)('edition %d is cited', (edition) => {
    expect(ask({ edition }).sources.map((s) => [s.edition, s.where, s.seen])).toEqual([
      [String(edition), '392.30(B)(3)', SEEN[edition]],
    ]);
  });
});

describe('ampacity: NFPA 70-2020 and -2023, Table 310.15(C)(1) and 392.80(A)(1)', () => {
  const ask = (currentCarrying: number, more: Partial<AmpacityGiven> = {}) =>
    ampacity({ currentCarrying, ...more }, tables.ampacity);

  test.each([
    [1, 100],
    [3, 100],
    [4, 80],
    [6, 80],
    [7, 70],
    [9, 70],
    [10, 50],
    [20, 50],
    [21, 45],
    [30, 45],
    [31, 40],
    [40, 40],
    [41, 35],
    [400, 35],
  ])('%d conductors in the cable: %d %%', (count, percent) => {
    expect(ask(count).result.percent).toBe(percent);
    expect(ask(count, { coverFt: 6 }).result.percent).toBe(percent);
    expect(ask(count, { coverFt: 6 + 1e-10 }).result.percent).toBe(percent);
    expect(ask(count, { coverFt: 6.01 }).result.percent).toBeCloseTo(0.95 * percent, 9);
  });

  test.each([
    [2017, '310.15(B)(3)(a)'], // from memory
    [2020, '310.15(C)(1)'],
    [2023, '310.15(C)(1)'],
  ] as const)('edition %d: %s', (edition, table) => {
    const { result, sources } = ask(7, { edition });
    expect(result).toEqual({ percent: 70, tables: [table, '392.80(A)(1)'] });
    expect(sources.map((s) => [s.edition, s.where, s.seen])).toEqual([
      [String(edition), `Table ${table}`, SEEN[edition]],
      [String(edition), '392.80(A)(1)', SEEN[edition]],
    ]);
  });
});

describe('marking: NFPA 70-2020 and -2023, 392.18(H)', () => {
  test.each([
    [0, false, null],
    [600, false, null],
    [600 + 1e-10, false, null],
    [600.01, true, 10],
    [4160, true, 10],
  ])('%d V: %s, %s ft', (volts, required, maxSpacingFt) => {
    expect(marking({ volts }, tables.marking).result).toEqual({ required, maxSpacingFt });
  });

  test.each(EDITIONS)('edition %d is cited', (edition) => {
    expect(marking({ volts: 700, edition }, tables.marking).sources).toMatchObject([
      { edition: String(edition), where: '392.18(H)', seen: SEEN[edition] },
    ]);
  });
});

describe('separation: NFPA 70-2020 and -2023, 392.20(A), (B)', () => {
  test.each([
    [[480, 4160], false, true],
    [[480, 4160], true, false],
    [[4160, 480, 24], false, true],
    [[1000, 1000.01], false, true],
    [[1000, 1000 + 1e-10], false, false],
    [[480, 1000], false, false],
    [[4160], false, false],
    [[4160, 13800], false, false],
    [[0], false, false],
  ])('%j V, Type MC above %s: barrier %s', (volts, mc, barrier) => {
    expect(separation({ volts, mc }, tables.separation).result).toEqual({ barrier, thresholdV: 1000 });
  });

  test.each(EDITIONS)('edition %d is cited', (edition) => {
    expect(separation({ volts: [24], mc: false, edition }, tables.separation).sources).toMatchObject([
      { edition: String(edition), where: '392.20(A), (B)', seen: SEEN[edition] },
    ]);
  });
});
