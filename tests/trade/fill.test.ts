import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, type Bottom, type FillCable, type FillGiven, fill } from '../../src/trade/fill.ts';
import cases from '../references/fill.json' with { type: 'json' };
import { fillTables } from './tables.ts';

type Case = (typeof cases)[number];
interface CaseGiven {
  readonly tray_kind: `${Bottom}_channel`;
  readonly inside_width_in?: number;
  readonly inside_width_mm?: number;
  readonly cables?: readonly { readonly od_in?: number; readonly od_mm?: number; readonly count: number }[];
  readonly cable_area_in2?: readonly number[];
  readonly multiconductor_area_in2?: readonly number[];
  readonly single_conductor_od_in?: readonly number[];
  readonly industrial_qualified_only?: boolean;
  readonly od_in?: number;
}

/** The nominal inch width of each metric row; the tables name both for one row. */
const NOMINAL: Readonly<Record<number, number>> = { 50: 2, 75: 3, 100: 4, 150: 6 };

function read(given: CaseGiven): FillGiven {
  const widthIn = given.inside_width_in ?? NOMINAL[given.inside_width_mm ?? 0] ?? Number.NaN;
  const areas = [...(given.cable_area_in2 ?? []), ...(given.multiconductor_area_in2 ?? [])];
  return {
    tray: { bottom: given.tray_kind.replace('_channel', '') as Bottom, widthIn },
    qualifiedOnly: given.industrial_qualified_only ?? given.single_conductor_od_in !== undefined,
    cables: [
      ...(given.cables ?? []).map(({ od_in, od_mm = 0, count }) => multi(od_in ?? od_mm / 25.4, count)),
      ...areas.map((areaIn2): FillCable => ({ make: 'multiconductor', areaIn2, count: 1 })),
      ...(given.single_conductor_od_in ?? []).map((od) => single(od, 1)),
    ],
  };
}

const multi = (odIn: number, count: number): FillCable => ({ make: 'multiconductor', odIn, count });
const single = (odIn: number, count: number): FillCable => ({ make: 'single', odIn, count });
const ventilated = (widthIn: number, cables: readonly FillCable[], more: Partial<FillGiven> = {}) =>
  fill({ tray: { bottom: 'ventilated', widthIn }, cables, ...more }, fillTables).result;
const solid = (widthIn: number, cables: readonly FillCable[], more: Partial<FillGiven> = {}) =>
  fill({ tray: { bottom: 'solid', widthIn }, cables, ...more }, fillTables).result;
const of = (...topics: string[]) => cases.filter((c: Case) => topics.includes(c.topic));
const near = (want: number) => expect.closeTo(want, 5);

describe('outside cases (source beside each in tests/references/fill.json)', () => {
  test.each(of('fill_multiconductor', 'fill_multiconductor_by_area'))(
    '$id: $source',
    ({ given, expect: want }) => {
      const got = fill(read(given as CaseGiven), fillTables).result;
      // A metric row is a soft conversion of the same row; what it allows is held by its verdict, not by its number.
      const area = want.total_area_in2 ?? (want.total_area_mm2 ?? Number.NaN) / 25.4 ** 2;
      expect(got).toMatchObject({
        areaIn2: near(area),
        column: want.table_column,
        within: want.ok,
        refer: want.refer ?? false,
        ...('limit_area_in2' in want ? { allowedIn2: want.limit_area_in2 } : {}),
      });
    },
  );

  test.each(of('fill_max_count'))('$id: $source', ({ given, expect: want }) => {
    const count = want.max_count ?? Number.NaN;
    const { tray } = read(given as CaseGiven);
    const holds = (n: number) =>
      fill({ tray, cables: [multi(given.od_in ?? Number.NaN, n)] }, fillTables).result.within;
    expect([holds(count), holds(count + 1)]).toEqual([true, false]);
  });

  test.each(of('fill_single_conductor'))('$id: $source', ({ given, expect: want }) => {
    expect(fill(read(given as CaseGiven), fillTables).result).toMatchObject({
      sumOfDiametersIn: near(want.sum_of_diameters_in ?? Number.NaN),
      allowedIn: want.limit_in,
      within: want.ok,
      refer: want.refer,
      table: '392.22(B)(2)',
      column: null,
      allowedIn2: null,
      spareIn2: null,
    });
  });

  test.each(of('fill_combined'))('$id: $source', ({ given, expect: want }) => {
    expect(fill(read(given as CaseGiven), fillTables).result).toMatchObject({
      fraction: near((want.total_percent ?? Number.NaN) / 100),
      within: want.ok,
      refer: true,
      table: '392.22(A)(5)',
      column: 2,
      allowedIn2: 2.5,
      allowedIn: 4,
    });
  });
});

describe('both sides of every limit (NFPA 70-2023, Tables 392.22(A)(5) and (A)(6))', () => {
  test.each([
    // bottom, width, column 1, column 2
    ['ventilated', 3, 2.3, 1.3],
    ['ventilated', 4, 4.5, 2.5],
    ['ventilated', 6, 7, 3.8],
    ['solid', 2, 1.3, 0.8],
    ['solid', 3, 2, 1.1],
    ['solid', 4, 3.7, 2.1],
    ['solid', 6, 5.5, 3.2],
  ] as const)('%s %d in: %d alone, %d together', (bottom, widthIn, one, several) => {
    const within = (areaIn2: number, count: number) =>
      fill({ tray: { bottom, widthIn }, cables: [{ make: 'multiconductor', areaIn2, count }] }, fillTables)
        .result.within;
    expect([within(one, 1), within(one + 1e-8, 1)]).toEqual([true, false]);
    expect([within(several / 2, 2), within(several / 2 + 1e-8, 2)]).toEqual([true, false]);
    expect(within(several / 2 + 4e-10, 2)).toBe(true); // 8e-10 above the limit: within the hair that sums may lose
  });

  test.each([2, 3, 4, 6])(
    'single conductors in %d in: diameters up to the width (392.22(B)(2))',
    (widthIn) => {
      const within = (odIn: number) => ventilated(widthIn, [single(odIn, 2)], { qualifiedOnly: true }).within;
      expect([within(widthIn / 2), within(widthIn / 2 + 1e-8)]).toEqual([true, false]);
    },
  );

  test('one cable means a count of one in all, in whichever way it is listed', () => {
    expect(ventilated(4, [multi(1, 1)])).toMatchObject({ column: 1, cables: 1, allowedIn2: 4.5 });
    expect(ventilated(4, [multi(1, 2)])).toMatchObject({ column: 2, cables: 2, allowedIn2: 2.5 });
    expect(ventilated(4, [multi(1, 1), multi(1, 1)])).toMatchObject({
      column: 2,
      cables: 2,
      allowedIn2: 2.5,
    });
  });

  test('the thinnest second cable can turn a channel that held into one that does not', () => {
    expect(ventilated(4, [multi(2.3, 1)]).within).toBe(true); // 4.15 of 4.5
    expect(ventilated(4, [multi(2.3, 1), multi(0.01, 1)]).within).toBe(false); // 4.15 of 2.5
  });

  test('diameter and area of the same cable give the same answer', () => {
    const byArea: FillCable = { make: 'multiconductor', areaIn2: areaOf(multi(0.6, 1)), count: 5 };
    expect(ventilated(4, [byArea])).toEqual(ventilated(4, [multi(0.6, 5)]));
  });
});

describe('what is kept spare', () => {
  test('within and fraction are against what is left, the limit stays the table’s own', () => {
    const cables: FillCable[] = [{ make: 'multiconductor', areaIn2: 1, count: 2 }];
    expect(ventilated(4, cables, { spare: 0.2 })).toMatchObject({
      allowedIn2: 2.5,
      within: true,
      fraction: near(1),
      spareIn2: near(0),
    });
    expect(ventilated(4, cables, { spare: 0.21 })).toMatchObject({
      allowedIn2: 2.5,
      within: false,
      spareIn2: near(-0.025),
    });
    expect(ventilated(4, cables)).toMatchObject({ fraction: near(0.8), spareIn2: near(0.5) });
  });

  test('single conductors keep a share of the width', () => {
    const at = (spare: number) => ventilated(4, [single(1, 3)], { qualifiedOnly: true, spare });
    expect(at(0.25)).toMatchObject({ allowedIn: 4, within: true, fraction: near(1), spareIn2: null });
    expect(at(0.26)).toMatchObject({ allowedIn: 4, within: false });
  });

  test('both makes: both shares are against what is left', () => {
    const cables: FillCable[] = [{ make: 'multiconductor', areaIn2: 0.5, count: 2 }, single(1, 1)];
    expect(ventilated(4, cables, { qualifiedOnly: true })).toMatchObject({
      fraction: near(0.65),
      within: true,
    });
    expect(ventilated(4, cables, { qualifiedOnly: true, spare: 0.35 })).toMatchObject({
      fraction: near(1),
      within: true,
    });
    expect(ventilated(4, cables, { qualifiedOnly: true, spare: 0.36 }).within).toBe(false);
  });
});

describe('what the tables do not say is referred', () => {
  const none = { allowedIn2: null, within: null, fraction: null, spareIn2: null, refer: true };
  test.each([
    ['2 in ventilated', ventilated(2, [multi(0.4, 3)]), { areaIn2: near(0.376991), column: 2 }],
    ['5 in solid', solid(5, [multi(0.5, 4)]), { areaIn2: near(0.785398), column: 2 }],
    ['3.99 in', ventilated(3.99, [multi(0.5, 1)]), { areaIn2: near(0.19635), column: 1 }],
    [
      'singles in solid',
      solid(4, [single(0.8, 2)], { qualifiedOnly: true }),
      { sumOfDiametersIn: near(1.6), allowedIn: null },
    ],
    [
      'singles, service not stated',
      ventilated(4, [single(0.8, 2)]),
      { sumOfDiametersIn: near(1.6), allowedIn: null },
    ],
    [
      'singles, others service it',
      ventilated(4, [single(0.8, 2)], { qualifiedOnly: false }),
      { allowedIn: null },
    ],
    [
      'singles in 5 in',
      ventilated(5, [single(0.8, 2)], { qualifiedOnly: true }),
      { allowedIn: null, column: null },
    ],
    [
      'both makes, no row',
      ventilated(2, [multi(0.4, 1), single(0.4, 1)], { qualifiedOnly: true }),
      { allowedIn: null },
    ],
    [
      'both makes, service not stated',
      ventilated(4, [multi(0.4, 1), single(0.4, 1)]),
      { allowedIn: null, column: 1 },
    ],
  ] as const)('%s', (_, got, more) => {
    expect(got).toMatchObject({ ...none, ...more });
    expect(got.why?.at(-1)).toEqual({ say: 'fill.ask' });
  });

  test('every reason is given', () => {
    expect(solid(5, [multi(0.4, 1), single(0.4, 1)]).why?.map((w) => w.say)).toEqual([
      'fill.noRow',
      'fill.singlesSolid',
      'fill.notQualified',
      'fill.ask',
    ]);
  });
});

describe('sources', () => {
  const sources = (edition: 2017 | 2020 | 2023, bottom: Bottom, cables: readonly FillCable[]) =>
    fill({ tray: { bottom, widthIn: 4 }, cables, qualifiedOnly: true, edition }, fillTables).sources.map(
      (s) => `${s.id} ${s.edition} ${s.where} (${s.seen})`,
    );
  test('name the edition asked for, and how it was seen', () => {
    expect(sources(2023, 'ventilated', [multi(1, 1)])).toEqual(['nfpa-70 2023 Table 392.22(A)(5) (page)']);
    expect(sources(2020, 'solid', [multi(1, 1)])).toEqual(['nfpa-70 2020 Table 392.22(A)(6) (page)']);
    expect(sources(2017, 'ventilated', [multi(1, 1), single(1, 1)])).toEqual([
      'nfpa-70 2017 Table 392.22(A)(5) (memory)',
      'nfpa-70 2017 392.22(B)(2) (memory)',
      'nfpa-70 2017 392.10(B)(1) (memory)',
      'nfpa-70 2017 392.80(A)(3) (memory)',
    ]);
  });

  test('the three editions give the same answer', () => {
    const at = (edition: 2017 | 2020 | 2023) => ventilated(6, [multi(0.75, 4), multi(0.5, 6)], { edition });
    expect(at(2017)).toEqual(at(2023));
    expect(at(2020)).toEqual(at(2023));
  });
});

describe('laws', () => {
  const od = fc.double({ min: 0.01, max: 3, noNaN: true });
  const cable = fc.oneof(
    fc.record({
      make: fc.constant('multiconductor' as const),
      odIn: od,
      count: fc.integer({ min: 1, max: 9 }),
    }),
    fc.record({
      make: fc.constant('multiconductor' as const),
      areaIn2: od,
      count: fc.integer({ min: 1, max: 9 }),
    }),
    fc.record({ make: fc.constant('single' as const), odIn: od, count: fc.integer({ min: 1, max: 9 }) }),
  );
  const given = fc.record({
    tray: fc.record({
      bottom: fc.constantFrom('ventilated' as const, 'solid' as const),
      widthIn: fc.constantFrom(2, 3, 4, 5, 6),
    }),
    cables: fc.array(cable, { minLength: 1, maxLength: 6 }),
    qualifiedOnly: fc.boolean(),
    spare: fc.double({ min: 0, max: 0.9, noNaN: true }),
  });

  test('a cable added never lowers the fill, and never makes what was over hold', () => {
    fc.assert(
      fc.property(given, cable, (before, added) => {
        const was = fill(before, fillTables).result;
        const is = fill({ ...before, cables: [...before.cables, added] }, fillTables).result;
        expect(is.areaIn2).toBeGreaterThanOrEqual(was.areaIn2);
        expect(is.cables).toBe(was.cables + added.count);
        if (was.fraction === null || is.fraction === null) return;
        expect(is.fraction).toBeGreaterThanOrEqual(was.fraction);
        if (was.within === false) expect(is.within).toBe(false);
      }),
    );
  });

  test('the working shows enough decimals to see which of two numbers is greater', () => {
    const cables: FillCable[] = [{ make: 'multiconductor', areaIn2: 1.250001, count: 2 }];
    const { steps } = fill({ tray: { bottom: 'ventilated', widthIn: 4 }, cables }, fillTables);
    expect(steps.at(-1)).toMatchObject({ say: 'fill.overArea', values: { used: '2.500002', usable: '2.5' } });
  });

  test('the order of cables and the way counts are split change nothing', () => {
    fc.assert(
      fc.property(given, (one) => {
        const apart = one.cables.flatMap((c) => Array.from({ length: c.count }, () => ({ ...c, count: 1 })));
        const [a, b] = [
          fill(one, fillTables).result,
          fill({ ...one, cables: apart.reverse() }, fillTables).result,
        ];
        expect(b).toMatchObject({ column: a.column, cables: a.cables, refer: a.refer, table: a.table });
        expect(b.areaIn2).toBeCloseTo(a.areaIn2, 9);
      }),
    );
  });

  test('numbers and refer go together', () => {
    fc.assert(
      fc.property(given, (one) => {
        const { refer, within, fraction, allowedIn2, spareIn2, allowedIn, why } = fill(
          one,
          fillTables,
        ).result;
        expect(refer).toBe(why !== undefined);
        expect((within === null) === (fraction === null)).toBe(true);
        if (within === null)
          expect([allowedIn2, spareIn2, allowedIn ?? null, refer]).toEqual([null, null, null, true]);
        if (within !== null && refer)
          expect(one.cables.map((c) => c.make)).toEqual(expect.arrayContaining(['single', 'multiconductor']));
      }),
    );
  });
});
