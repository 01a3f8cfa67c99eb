/** Anchors between expansion splices. Source: NEMA VE 2 (from memory): one, at the support nearest the middle. */
import { describe, expect, test } from 'vitest';
import { FIRST_HALF, found, type Given, HELD, outdoor, SECOND_HALF, supports, TICK, wall } from './runs.ts';

type Hold = 'clamp' | 'guide' | 'load';
const holds = (clamped: number, hold: Hold = 'clamp'): readonly Hold[] =>
  [0, 1, 2, 3, 4].map((i) => (i === clamped ? hold : 'guide'));

test('one in each section, at the support nearest its middle', () => {
  expect(found(outdoor())).toEqual([]);
  expect(found(outdoor({}, { first: holds(2, 'load') }))).toEqual([]);
});

test('anchor-none: at the support nearest the middle', () => {
  expect(found(outdoor({}, { first: holds(-1) }))).toEqual([['anchor-none', '1', 132, 0, 1]]);
  expect(found(outdoor({}, { second: holds(-1) }))).toEqual([['anchor-none', '1', 372, 0, 1]]);
});

test('anchor-many: each but the nearest; load counts as a clamp', () => {
  expect(found(outdoor({}, { first: ['clamp', 'guide', 'clamp', 'load', 'guide'] }))).toEqual([
    ['anchor-many', '1', 12, 3, 1],
    ['anchor-many', '1', 192, 3, 1],
  ]);
  // Neither is the nearest support: still each but the nearer of both.
  expect(found(outdoor({}, { first: ['clamp', 'clamp', 'guide', 'guide', 'guide'] }))).toEqual([
    ['anchor-many', '1', 12, 2, 1],
  ]);
});

describe('anchor-off-middle', () => {
  test('the middle of 0 … 240 is 120: 132 stands 12 from it, 72 stands 48', () => {
    expect(found(outdoor({}, { first: holds(1) }))).toEqual([['anchor-off-middle', '1', 72, 48, 12]]);
    expect(found(outdoor({}, { first: holds(3) }))).toEqual([['anchor-off-middle', '1', 192, 72, 12]]);
  });

  test('equally near are both right; one tick nearer is not', () => {
    const at = (places: readonly number[], clamped: number) =>
      outdoor({ supports: [...supports('1', places, holds(clamped)), ...supports('1', SECOND_HALF, HELD)] });
    const even = [12, 70, 110, 130, 228];
    expect(found(at(even, 2))).toEqual([]);
    expect(found(at(even, 3))).toEqual([]);
    const odd = [12, 70, 110, 130 - TICK, 228];
    expect(found(at(odd, 3))).toEqual([]);
    expect(found(at(odd, 2))).toEqual([['anchor-off-middle', '1', 110, 10, 10 - TICK]]);
  });

  test('round a corner it is measured along the working points', () => {
    const legs = [
      { id: 'a', from: 'start', fitting: null, dir: 'E', length: 122 },
      { id: 'b', from: 'a', fitting: 'card-4-elbow-90', dir: 'N', length: 119 },
    ];
    const run = (hold: readonly Hold[]): Given => ({
      ...wall({ legs, temps: { lowF: 10, highF: 110, nowF: 60 } }),
      joints: [{ leg: 'a', at: 61, kind: 'expansion', jumper: '8 AWG' }],
      supports: [
        ...supports('a', [20, 40], ['guide', 'clamp']),
        ...supports('a', [70, 100], hold.slice(0, 2)),
        ...supports('b', [20, 60, 100], hold.slice(2)),
      ],
    });
    // From the splice: 70 is 9 in along, 100 is 39, then 61 + 20, 61 + 60, 61 + 100, of 180 in all: middle 90.
    expect(found(run(['guide', 'guide', 'clamp', 'guide', 'guide']))).toEqual([]);
    expect(found(run(['guide', 'guide', 'guide', 'clamp', 'guide']))).toEqual([
      ['anchor-off-middle', 'b', 60, 31, 9],
    ]);
    expect(found(run(['guide', 'clamp', 'guide', 'guide', 'guide']))).toEqual([
      ['anchor-off-middle', 'a', 100, 51, 9],
    ]);
  });

  test('a section that branches has no middle: one anchor anywhere, more are too many', () => {
    const legs = [
      { id: 'a', from: 'start', fitting: null, dir: 'E', length: 120 },
      { id: 'b', from: 'a', fitting: 'card-4-tee', dir: 'E', length: 120 },
      { id: 'c', from: 'a:left', fitting: 'card-4-tee', dir: 'N', length: 70 },
    ];
    const run = (c: readonly Hold[], b: readonly Hold[] = ['guide', 'guide', 'guide']): Given => ({
      ...wall({ legs, temps: { lowF: 10, highF: 110, nowF: 60 } }),
      joints: [{ leg: 'a', at: 59, kind: 'expansion', jumper: '8 AWG' }],
      supports: [
        ...supports('a', [20, 40], ['clamp', 'guide']),
        ...supports('a', [70, 100], ['guide', 'guide']),
        ...supports('b', [20, 60, 108], b),
        ...supports('c', [20, 60], c),
      ],
    });
    expect(found(run(['guide', 'clamp']))).toEqual([]);
    expect(found(run(['guide', 'guide'])).map(([rule]) => rule)).toEqual(['anchor-none']);
    expect(found(run(['guide', 'clamp'], ['clamp', 'guide', 'guide']))).toEqual([
      ['anchor-many', 'c', 60, 2, 1],
    ]);
  });
});

test('a section between gaps alone may be held anywhere', () => {
  const gap = wall({
    joints: [{ leg: '1', at: 240, kind: 'gap', gap: 2, jumper: '8 AWG' }],
    supports: [...supports('1', FIRST_HALF), ...supports('1', SECOND_HALF, 'guide')],
  });
  expect(found(gap)).toEqual([]);
});

test('an expansion splice at the start or an end bounds its section too', () => {
  const temps = { lowF: 10, highF: 110, nowF: 60 };
  const legs = [{ id: '1', from: 'start', fitting: null, dir: 'E', length: 227 }];
  const free = { legs, joints: [], temps, supports: supports('1', [12, 72, 132, 192, 215]) };
  expect(found(wall(free))).toEqual([]);
  const atStart = wall({ ...free, start: { kind: 'free', joint: 'expansion', jumper: '8 AWG' } });
  expect(found(atStart).map(([rule, , at]) => [rule, at])).toEqual(
    [12, 72, 192, 215].map((at) => ['anchor-many', at]),
  );
  const atEnd = wall({ ...free, ends: [{ leg: '1', kind: 'tray', joint: 'expansion', jumper: '8 AWG' }] });
  expect(found(atEnd)).toHaveLength(4);
});
