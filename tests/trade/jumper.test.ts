import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareSizes, isSize, type JumperGiven, jumper, SIZES } from '../../src/trade/jumper.ts';
import { tables } from './tables.ts';

const ask = (devicesA: readonly number[], more: Partial<JumperGiven> = {}) =>
  jumper({ devicesA, metal: 'copper', ...more }, tables.jumper);
const sizes = (deviceA: number) =>
  (['copper', 'aluminium'] as const).map((metal) => ask([deviceA], { metal }).result.size);

/** NFPA 70-2020 and -2023, Table 250.122: device, copper, aluminium. */
const rows = [
  [15, '14 AWG', '12 AWG'],
  [20, '12 AWG', '10 AWG'],
  [60, '10 AWG', '8 AWG'],
  [100, '8 AWG', '6 AWG'],
  [200, '6 AWG', '4 AWG'],
  [300, '4 AWG', '2 AWG'],
  [400, '3 AWG', '1 AWG'],
  [500, '2 AWG', '1/0 AWG'],
  [600, '1 AWG', '2/0 AWG'],
  [800, '1/0 AWG', '3/0 AWG'],
  [1000, '2/0 AWG', '4/0 AWG'],
  [1200, '3/0 AWG', '250 kcmil'],
] as const;

describe('Table 250.122 of NFPA 70-2020 and -2023', () => {
  test.each(rows)('%d A: copper %s, aluminium %s', (deviceA, copper, aluminium) => {
    expect(sizes(deviceA)).toEqual([copper, aluminium]);
    expect(sizes(deviceA + 1e-10)).toEqual([copper, aluminium]); // within the hair
    expect(ask([deviceA]).result).toEqual({ size: copper, rowA: deviceA, table: '250.122', refer: false });
  });

  test.each(rows.slice(1).map((row, i) => [rows[i]?.[0] ?? 0, ...row] as const))(
    'just above %d A the row of %d A holds',
    (below, deviceA, copper, aluminium) => {
      expect(sizes(below + 0.01)).toEqual([copper, aluminium]);
      expect(ask([below + 0.01]).result.rowA).toBe(deviceA);
    },
  );

  test('has these rows and no other', () => {
    expect(tables.jumper.rows.map((r) => [r.deviceA, r.copper, r.aluminium])).toEqual(rows);
  });

  test('above 1200 A it is referred, with no size', () => {
    expect(ask([1200.01]).result).toEqual({
      size: null,
      rowA: null,
      table: '250.122',
      refer: true,
      why: [
        { say: 'jumper.beyond', values: { table: '250.122', last: '1200', device: '1200.01' } },
        { say: 'jumper.ask' },
      ],
    });
  });
});

test('the largest device rules, in whatever order (NFPA 70, 250.102(D))', () => {
  expect(ask([20, 30, 100]).result).toMatchObject({ size: '8 AWG', rowA: 100 });
  expect(ask([100, 20, 30]).result).toEqual(ask([20, 30, 100]).result);
  expect(ask([20, 1300]).result.refer).toBe(true);
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0.1, max: 1500, noNaN: true }), { minLength: 1 }), (devices) => {
      expect(ask(devices).result).toEqual(ask([Math.max(...devices)]).result);
    }),
  );
});

test('without a device there is nothing to go by', () => {
  expect(() => ask([])).toThrow(RangeError);
});

test.each([
  [2017, 'memory'],
  [2020, 'page'],
  [2023, 'page'],
] as const)('edition %d: the same sizes, its own source (%s)', (edition, seen) => {
  const { result, sources } = ask([70], { edition });
  expect(result).toEqual(ask([70]).result);
  expect(sources.map((s) => [s.id, s.edition, s.where, s.seen])).toEqual([
    ['nfpa-70', String(edition), 'Table 250.122', seen],
    ['nfpa-70', String(edition), '250.102(D)', seen],
  ]);
});

describe('sizes of wire', () => {
  test('smallest first: 14 to 1, then 1/0 to 4/0, then 250 kcmil (NFPA 70, Chapter 9, Table 8, from memory)', () => {
    const names = '14 12 10 8 6 4 3 2 1 1/0 2/0 3/0 4/0'.split(' ').map((n) => `${n} AWG`);
    expect(SIZES).toEqual([...names, '250 kcmil']);
    for (const [i, a] of SIZES.entries())
      for (const [j, b] of SIZES.entries()) expect(Math.sign(compareSizes(a, b))).toBe(Math.sign(i - j));
  });

  test.each(['3 AWG', '1 AWG', '1/0 AWG', '250 kcmil'])('%s is one', (text) => {
    expect(isSize(text)).toBe(true);
  });

  test.each(['5 AWG', '8', '8AWG', '8 awg', '250', '300 kcmil', '', 'none', 'toString'])(
    '%j is none',
    (text) => {
      expect(isSize(text)).toBe(false);
    },
  );
});
