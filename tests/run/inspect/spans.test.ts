/** Spans and the splices in them. Source of the rules: NEMA VE 2, splices of straight runs (from memory). */
import { describe, expect, test } from 'vitest';
import { cable, found, type Given, supports, TICK, WALL_PLACES, wall, wallWith } from './runs.ts';

test('the wall run has nothing wrong', () => {
  expect(found(wall())).toEqual([]);
});

describe('span-too-long', () => {
  test('the greatest span that the run gives: one tick below it breaks, at the middle of each', () => {
    expect(found(wall({ limits: { maxSpan: 60 } }))).toEqual([]);
    const short = found(wall({ limits: { maxSpan: 60 - TICK } }));
    expect(short.map(([rule, , at]) => [rule, at])).toEqual(
      [42, 102, 162, 222, 282, 342, 402].map((at) => ['span-too-long', at]),
    );
    expect(short[0]?.slice(3)).toEqual([60, 60 - TICK]);
  });

  test('one span of 5 ft 1 tick', () => {
    const places = [12, 72 + TICK, 132, 192, 252, 312, 372, 432, 468];
    const run = wall({ supports: supports('1', places), limits: { maxSpan: 60 } });
    expect(found(run)).toEqual([['span-too-long', '1', (12 + 72 + TICK) / 2, 60 + TICK, 60]]);
  });

  // Practice catalogue: 5 ft carries 22 lb/ft, 4 ft 34; the channel weighs 1.2 lb/ft (training values).
  const loaded = (lbPerFt: number, over: Given = {}) =>
    wall({ cables: [cable('1', { lbPerFt, count: 4, type: 'PLTC', ...over })] });

  test('the load table at the channel and all that lies in it, air too', () => {
    expect(found(loaded((22 - 1.2) / 4))).toEqual([]);
    const over = found(loaded((22 - 1.2) / 4 + 1e-6));
    expect(over).toHaveLength(7);
    expect(over[0]).toEqual(['span-too-long', '1', 42, 60, 48]);
    const air = { type: 'tube', use: 'air' };
    expect(found(loaded((22 - 1.2) / 4 + 1e-6, air))).toHaveLength(7);
  });

  test('no row carries it: the run alone; neither: no finding', () => {
    expect(found(loaded(100))).toEqual([]);
    const [first] = found({ ...loaded(100), limits: { maxSpan: 59 } });
    expect(first).toEqual(['span-too-long', '1', 42, 60, 59]);
  });

  test('the lesser of both', () => {
    const [first] = found({ ...loaded((22 - 1.2) / 4 + 1e-6), limits: { maxSpan: 50 } });
    expect(first?.[4]).toBe(48);
  });

  test('plumb legs alike', () => {
    const drop = (at: number) => ({
      v: 1,
      tray: 'card-4',
      start: { kind: 'free', joint: 'free' },
      legs: [{ id: 'd', from: 'start', fitting: null, dir: 'D', length: 121 }],
      supports: supports('d', [12, at, 100], ['load', 'guide', 'guide'], 'vertical'),
      limits: { maxSpan: 60 },
    });
    expect(found(drop(72))).toEqual([]);
    expect(found(drop(72 + TICK))).toEqual([['span-too-long', 'd', 42 + TICK / 2, 60 + TICK, 60]]);
  });
});

describe('splice-past-quarter', () => {
  test('a quarter of the span of 5 ft, and one tick more', () => {
    expect(found(wallWith({ at: 192 + 15 }))).toEqual([]);
    expect(found(wallWith({ at: 192 + 15 + TICK }))).toEqual([
      ['splice-past-quarter', '1', 207 + TICK, 15 + TICK, 15],
    ]);
    expect(found(wallWith({ at: 252 - 15 }))).toEqual([]);
    expect(found(wallWith({ at: 252 - 15 - TICK }))).toEqual([
      ['splice-past-quarter', '1', 237 - TICK, 15 + TICK, 15],
    ]);
  });

  test('a butt splice too', () => {
    const butt = { kind: 'butt', at: 208 };
    expect(found(wallWith(butt))).toEqual([['splice-past-quarter', '1', 208, 16, 15]]);
  });
});

describe('two-splices-in-span', () => {
  const with3 = (at: number) =>
    wall({
      joints: [
        { leg: '1', at: 203.5, kind: 'socketed' },
        { leg: '1', at, kind: 'socketed' },
        { leg: '1', at: 383, kind: 'socketed' },
      ],
    });
  test('two in one span, at the second; one in each of two neighbours', () => {
    expect(found(with3(240.5))).toEqual([['two-splices-in-span', '1', 240.5, null, null]]);
    expect(found(with3(261.5))).toEqual([]);
  });
});

describe('splice-in-end-span', () => {
  const last = (at: number) =>
    wall({
      joints: [
        { leg: '1', at: 203.5, kind: 'socketed' },
        { leg: '1', at, kind: 'socketed' },
      ],
    });
  test('just inside the span before it, on the inner side of the quarter; and just past its support', () => {
    expect(found(last(432 - 5.0625))).toEqual([]);
    expect(found(last(439))).toEqual([['splice-in-end-span', '1', 439, null, null]]);
  });
  test('in the middle of it, beyond the last support, before the first: only that', () => {
    for (const at of [437, 451, 463, 474.5])
      expect(found(last(at)).map(([rule]) => rule)).toEqual(['splice-in-end-span']);
    const early = (at: number) =>
      wall({
        joints: [
          { leg: '1', at, kind: 'socketed' },
          { leg: '1', at: 203.5, kind: 'socketed' },
          { leg: '1', at: 383, kind: 'socketed' },
        ],
      });
    expect(found(early(6.5))).toEqual([['splice-in-end-span', '1', 6.5, null, null]]);
    const on = { ...early(11), supports: supports('1', [11, ...WALL_PLACES.slice(1)]) };
    expect(found(on)).toEqual([['splice-in-end-span', '1', 11, null, null]]);
    expect(found(early(41))).toEqual([['splice-in-end-span', '1', 41, null, null]]);
  });
  test('fewer than three spans hold none; three hold one in the middle', () => {
    const short = (places: readonly number[], at: number) => ({
      ...wall(),
      legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: 160 }],
      joints: [{ leg: '1', at, kind: 'socketed' }],
      supports: supports('1', places),
    });
    expect(found(short([20, 140], 40.5))).toEqual([['splice-in-end-span', '1', 40.5, null, null]]);
    expect(found(short([20, 80, 140], 90.5))).toEqual([['splice-in-end-span', '1', 90.5, null, null]]);
    expect(found(short([20, 60, 100, 140], 69.5))).toEqual([]);
  });
});

describe('splice-on-support', () => {
  // Half a sleeve is 5 1/16 in, half a plate 3 in (training values of the practice catalogue).
  test('half a sleeve, and one tick nearer', () => {
    const sleeve = (at: number, places: readonly number[] = WALL_PLACES) =>
      wall({
        joints: [
          { leg: '1', at, kind: 'socketed' },
          { leg: '1', at: 382, kind: 'socketed' },
        ],
        supports: supports('1', places),
      });
    expect(found(sleeve(192 + 5.0625))).toEqual([]);
    expect(found(sleeve(192 + 5.0625 - TICK))).toEqual([
      ['splice-on-support', '1', 197.0625 - TICK, 5.0625 - TICK, 5.0625],
    ]);
    const on193 = WALL_PLACES.map((at) => (at === 192 ? 193 : at));
    expect(found(sleeve(193, on193))).toEqual([['splice-on-support', '1', 193, 0, 5.0625]]);
  });
  test('half a plate, and one tick nearer', () => {
    expect(found(wallWith({ kind: 'butt', at: 192 + 3 }))).toEqual([]);
    expect(found(wallWith({ kind: 'butt', at: 195 - TICK }))).toEqual([
      ['splice-on-support', '1', 195 - TICK, 3 - TICK, 3],
    ]);
  });
});
