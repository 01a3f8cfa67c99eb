/**
 * What lies in the channel. Fill: NFPA 70 Table 392.22(A)(5), ventilated, [one | several] in²: 3 in 2.3 | 1.3, 4 in
 * 4.5 | 2.5, 6 in 7.0 | 3.8, no 2-in row (page, 2020 and 2023). Radius: 336.24, 330.24 (page); ITC, PLTC no figure.
 */
import { describe, expect, test } from 'vitest';
import { cable, corner, found, type Given, wall } from './runs.ts';

/** Diameter of a cable of which `count` take this area together. */
const odOf = (areaIn2: number, count: number) => Math.sqrt((4 * areaIn2) / (Math.PI * count));
const light = { type: 'PLTC', lbPerFt: 0 };
const over = (cables: readonly Given[], leg: Given = {}, tray = 'card-4'): Given => ({
  ...wall({ tray, cables }),
  legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: 480, ...leg }],
});

describe('fill-over', () => {
  test.each([
    ['card-4', 1, 4.5],
    ['card-4', 2, 2.5],
    ['card-4', 8, 2.5],
    ['card-6', 1, 7],
    ['card-6', 5, 3.8],
  ])('%s, %d cables: %d in², and a hair more', (tray, count, allowed) => {
    const at = (area: number) => over([cable('1', { ...light, count, odIn: odOf(area, count) })], {}, tray);
    expect(found(at(allowed))).toEqual([]);
    const [row, ...others] = found(at(allowed + 1e-6));
    expect(others).toEqual([]);
    expect(row?.slice(0, 3)).toEqual(['fill-over', '1', null]);
    expect(row?.[3]).toBeCloseTo(allowed + 1e-6, 9);
    expect(row?.[4]).toBe(allowed);
  });

  test('with a barrier each side by itself, against the row of half the width; a leg has one finding', () => {
    const sides = (left: number, right: number) =>
      over(
        [
          cable('1', { ...light, id: 'L', count: 2, side: 'left', odIn: odOf(left, 2) }),
          cable('1', { ...light, id: 'R', count: 2, side: 'right', odIn: odOf(right, 2) }),
        ],
        { barrier: true },
        'card-6',
      );
    expect(found(sides(1.3, 1.3))).toEqual([]);
    const [row, ...others] = found(sides(1.3, 1.4));
    expect(others).toEqual([]);
    expect(row?.[3]).toBeCloseTo(1.4, 9);
    expect(row?.[4]).toBe(1.3);
    expect(found(sides(1.5, 1.4)).map(([rule, , , measured]) => [rule, Number(measured).toFixed(6)])).toEqual(
      [['fill-over', '1.500000']],
    );
  });

  test('air is no cable; single conductors refer and are no finding', () => {
    const air = cable('1', { id: 'air', type: 'tube', use: 'air', odIn: 3, lbPerFt: 0 });
    expect(found(over([air]))).toEqual([]);
    expect(found(over([cable('1', { ...light, make: 'single', count: 20, odIn: 1 })]))).toEqual([]);
  });
});

test('fill-no-row: 2 in ventilated, and behind a barrier 4 in', () => {
  const two = (cables: readonly Given[]) => over(cables, {}, 'card-2');
  const [row, ...others] = found(two([cable('1', light)]));
  expect(others).toEqual([]);
  expect(row).toEqual(['fill-no-row', '1', null, Math.PI / 16, null]);
  expect(found(two([]))).toEqual([]);
  const single = cable('1', { ...light, id: 'S', make: 'single' });
  expect(found(two([single]))).toEqual([]);
  // Beside single conductors all is referred, and nothing found.
  expect(found(two([cable('1', light), single]))).toEqual([]);
  const split = over([cable('1', { ...light, side: 'left' })], { barrier: true });
  expect(found(split)).toEqual([['fill-no-row', '1', null, Math.PI / 16, null]]);
});

describe('radius-small', () => {
  // Practice catalogue (training values): flat elbow of 4 in 5 in inside radius, vertical ones 6 in.
  const round = (cables: readonly Given[], fitting = 'card-4-elbow-90', dir = 'N') =>
    corner(fitting, dir, { cables });
  test.each<readonly [string, number, Given, number]>([
    ['TC', 1, {}, 4], // 4 diameters to 1 in
    ['MC interlocked', 5 / 7, {}, 5],
    ['MC smooth', 0.5, {}, 5],
    ['TC', 5 / 12, { shielded: true }, 5],
    ['over 1000 V', 5 / 8, {}, 5],
  ])('%s of %d in holds', (type, odIn, more) => {
    expect(found(round([cable('b', { type, odIn, ...more })]))).toEqual([]);
  });
  test.each<readonly [string, number, Given, number]>([
    ['TC', 1.001, {}, 5.005], // 5 diameters above 1 in
    ['MC interlocked', 0.75, {}, 5.25],
    ['MC smooth', 0.51, {}, 5.1],
    ['TC', 0.42, { shielded: true }, 5.04],
    ['over 1000 V', 0.63, {}, 5.04],
  ])('%s of %d in does not', (type, odIn, more, needed) => {
    const [row, ...others] = found(round([cable('b', { type, odIn, ...more })]));
    expect(others).toEqual([]);
    expect(row?.slice(0, 4)).toEqual(['radius-small', 'b', 0, 5]);
    expect(row?.[4]).toBeCloseTo(needed, 9);
  });

  test('the worst cable, once', () => {
    const cables = [
      cable('b', { id: 'a', type: 'MC interlocked', odIn: 0.8 }),
      cable('b', { id: 'b', type: 'MC interlocked', odIn: 0.9 }),
      cable('b', { id: 'c', type: 'MC interlocked', odIn: 0.75 }),
    ];
    expect(found(round(cables))).toEqual([['radius-small', 'b', 0, 5, 7 * 0.9]]);
  });

  test('only cables that go round it', () => {
    const thick = { type: 'MC interlocked', odIn: 1.2 };
    expect(found(round([cable('a', thick)]))).toEqual([]);
    expect(found(round([cable('b', thick)], 'card-4-outside-90', 'D')).map(([rule]) => rule)).toEqual([
      'radius-small',
    ]);
  });

  test('not judged: MC shielded, ITC, PLTC, tube; fittings without a radius', () => {
    for (const type of ['MC shielded', 'ITC', 'PLTC'])
      expect(found(round([cable('b', { type, odIn: 1.5 })]))).toEqual([]);
    expect(found(round([cable('b', { type: 'tube', use: 'air', odIn: 1.5 })]))).toEqual([]);
    const tee = corner('card-4-tee', 'E', { cables: [cable('b', { type: 'MC interlocked', odIn: 1.5 })] });
    expect(found(tee)).toEqual([]);
  });
});

describe('power-with-signal', () => {
  const both = (power: Given, signal: Given, leg: Given = {}, tray = 'card-6') =>
    over(
      [
        cable('1', { ...light, id: 'P', use: 'power', ...power }),
        cable('1', { ...light, id: 'S', use: 'signal', ...signal }),
      ],
      leg,
      tray,
    );
  test('side by side; a barrier between them parts them, on one side of it it does not', () => {
    expect(found(both({}, {}))).toEqual([['power-with-signal', '1', null, null, null]]);
    expect(found(both({ side: 'left' }, { side: 'right' }))).toHaveLength(1);
    const barrier = { barrier: true };
    expect(found(both({ side: 'left' }, { side: 'right' }, barrier))).toEqual([]);
    expect(found(both({ side: 'left' }, { side: 'left' }, barrier))).toEqual([
      ['power-with-signal', '1', null, null, null],
    ]);
    expect(found(both({}, { use: 'power' }))).toEqual([]);
  });
  test('only on the legs that both run over', () => {
    const cables = [cable('a', { ...light, id: 'P' }), cable('b', { ...light, id: 'S', use: 'signal' })];
    expect(found(corner('card-4-elbow-90', 'N', { cables }))).toEqual([
      ['power-with-signal', 'a', null, null, null],
    ]);
  });
});

test('air-with-cables: a barrier does not part them; air alone is right', () => {
  const air = cable('1', { ...light, id: 'air', type: 'tube', use: 'air' });
  const power = cable('1', { ...light, side: 'left' });
  expect(found(over([air, power]))).toEqual([['air-with-cables', '1', null, null, null]]);
  expect(found(over([air, power], { barrier: true }, 'card-6'))).toEqual([
    ['air-with-cables', '1', null, null, null],
  ]);
  expect(found(over([air]))).toEqual([]);
  expect(found(over([power]))).toEqual([]);
});
