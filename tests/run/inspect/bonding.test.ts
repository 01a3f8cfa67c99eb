/**
 * Jumpers. Places: NEMA VE 2 (from memory); sizes: NFPA 70 Table 250.122 (page, 2020 and 2023), copper: 20 A 12, 60 A 10,
 * 100 A 8, 200 A 6, 400 A 3 AWG, 1200 A 3/0 AWG.
 */
import { describe, expect, test } from 'vitest';
import { cable, corner, found, type Given, inspected, outdoor, supports, wall, wallWith } from './runs.ts';

const device = (deviceA: number, to = '1') => [cable(to, { deviceA })];
const start = (over: Given) =>
  wall({ start: { kind: 'ladder', joint: 'butt', ...over }, cables: device(100) });
const end = (over: Given, kind = 'instrument') =>
  wall({ ends: [{ leg: '1', kind, joint: 'free', ...over }], cables: device(100) });
const HINGE_PLACES = [12, 72, 132, 192, 225, 255, 312, 372, 432, 468];
const joint = (over: Given) =>
  wall({
    joints: [{ leg: '1', at: 240, ...over }],
    supports: supports('1', HINGE_PLACES),
    cables: device(100),
  });

describe('jumper-missing, and none missing', () => {
  const cases: readonly (readonly [string, (jumper: Given) => Given, string, number])[] = [
    ['start at a ladder', (j) => start(j), '1', 0],
    ['start at a tray', (j) => start({ kind: 'tray', ...j }), '1', 0],
    ['end at an instrument', (j) => end(j), '1', 480],
    ['end at a tray', (j) => end(j, 'tray'), '1', 480],
    ['hinge standing straight', (j) => joint({ kind: 'hinged', ...j }), '1', 240],
    ['gap', (j) => joint({ kind: 'gap', gap: 2, ...j }), '1', 240],
    [
      'faces of a sleeve not bare',
      (j) => wallWith({ bare: false, ...j }, { cables: device(100) }),
      '1',
      203.5,
    ],
    [
      'faces of an elbow not bare',
      (j) => {
        const run = corner('card-4-elbow-90', 'N', { cables: device(100, 'b') });
        const [a, b] = run['legs'] as readonly Given[];
        return { ...run, legs: [a, { ...b, bare: false, ...j }] };
      },
      'b',
      0,
    ],
    [
      'a hinge that turns',
      (j) => {
        const run = corner('card-4-hinge', { azimuthDeg: 60, slopeDeg: 0 }, { cables: device(100, 'b') });
        const [a, b] = run['legs'] as readonly Given[];
        return { ...run, legs: [a, { ...b, length: 121, ...j }] };
      },
      'b',
      0,
    ],
  ];
  test.each(cases)('%s', (_, of, leg, at) => {
    expect(found(of({ jumper: '8 AWG' }))).toEqual([]);
    expect(found(of({}))).toEqual([['jumper-missing', leg, at, null, '8 AWG']]);
    expect(found(of({ jumper: null }))).toEqual([['jumper-missing', leg, at, null, '8 AWG']]);
  });

  test('expansion splice', () => {
    const with8 = (jumper: string | null) => outdoor({ cables: device(100) }, { splice: { jumper } });
    expect(found(with8('8 AWG'))).toEqual([]);
    expect(found(with8(null))).toEqual([['jumper-missing', '1', 240, null, '8 AWG']]);
  });

  test('no device is named over the leg: no finding, whether one is there or not, and a step says so', () => {
    const run = { ...start({}), cables: [cable('1')] };
    expect(found(run)).toEqual([]);
    expect(found({ ...run, cables: [] })).toEqual([]);
    expect(found({ ...run, start: { kind: 'ladder', joint: 'butt', jumper: '14 AWG' } })).toEqual([]);
    expect(inspected(run).steps.map(({ say }) => say)).toContain('inspect.noSize');
  });

  test('a device above the table: it is missing, and its size is not known', () => {
    expect(found({ ...start({}), cables: device(1201) })).toEqual([['jumper-missing', '1', 0, null, null]]);
  });
});

describe('jumper-small', () => {
  const of = (jumper: string, deviceA: number, over: Given = {}) => ({
    ...start({ jumper }),
    cables: device(deviceA),
    ...over,
  });
  test.each([
    ['8 AWG', 100, '8 AWG'],
    ['6 AWG', 101, '6 AWG'],
    ['3 AWG', 400, '3 AWG'],
    ['3/0 AWG', 1200, '3/0 AWG'],
    ['4/0 AWG', 1200, '3/0 AWG'],
  ])('%s holds for %d A', (jumper, deviceA) => {
    expect(found(of(jumper, deviceA))).toEqual([]);
  });
  test.each([
    ['10 AWG', 61, '8 AWG'],
    ['8 AWG', 100.1, '6 AWG'],
    ['4 AWG', 400, '3 AWG'],
    ['2/0 AWG', 1200, '3/0 AWG'],
  ])('%s is too small for %d A', (jumper, deviceA, size) => {
    expect(found(of(jumper, deviceA))).toEqual([['jumper-small', '1', 0, jumper, size]]);
  });
  test('the largest device over the leg; above the table no size is known', () => {
    const several = [
      cable('1', { id: 'a', deviceA: 20 }),
      cable('1', { id: 'b', deviceA: 200 }),
      cable('1', { id: 'c' }),
    ];
    expect(found(of('8 AWG', 1, { cables: several }))).toEqual([['jumper-small', '1', 0, '8 AWG', '6 AWG']]);
    expect(found(of('14 AWG', 1201))).toEqual([]);
  });
});

describe('jumper-needless', () => {
  test.each([
    ['over a sleeve', wallWith({ jumper: '14 AWG' }, { cables: device(100) }), '1', 203.5],
    ['at a free start', wall({ start: { kind: 'free', joint: 'free', jumper: '8 AWG' } }), '1', 0],
    ['at a free end', end({ jumper: '14 AWG' }, 'free'), '1', 480],
  ] as const)('%s; too small or not, one finding', (_, run, leg, at) => {
    const [row, ...others] = found(run);
    expect(others).toEqual([]);
    expect(row?.slice(0, 3)).toEqual(['jumper-needless', leg, at]);
    expect(row?.[4]).toBe(null);
  });
  test('none given is none', () => {
    expect(found(wallWith({ jumper: null, bare: true }))).toEqual([]);
  });
});
