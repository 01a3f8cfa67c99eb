import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type SectionGiven, section } from '../../src/trade/section.ts';
import cases from '../references/mechanics.json' with { type: 'json' };

const of = (id: string) => cases.find((c) => c.id === id)?.expect as unknown as Record<string, number>;
const plain = { widthIn: 4, depthIn: 1.75, thicknessIn: 0.0747 };

describe('outside cases (source beside each in tests/references/mechanics.json)', () => {
  test('S-SECT-01: parallel-axis theorem, any textbook', () => {
    const want = of('S-SECT-01');
    expect(section(plain).result).toEqual({
      areaIn2: expect.closeTo(want['area_in2'] ?? 0, 5),
      iIn4: expect.closeTo(want['I_weak_axis_in4'] ?? 0, 5),
      sLegIn3: expect.closeTo(want['S_leg_tip_in3'] ?? 0, 5),
      sWebIn3: expect.closeTo(want['S_web_in3'] ?? 0, 5),
      centroidIn: expect.closeTo(want['centroid_from_web_in'] ?? 0, 5),
      weightLbPerFt: expect.closeTo(want['weight_lb_per_ft'] ?? 0, 5),
    });
  });

  test('S-SECT-02: net area, geometry', () => {
    const want = of('S-SECT-02');
    const net = section({ ...plain, holes: [{ diameterIn: 0.5625, count: 2, in: 'web' }] }).result;
    expect(section(plain).result.areaIn2).toBeCloseTo(want['gross_area_in2'] ?? 0, 5);
    expect(net.areaIn2).toBeCloseTo(want['net_area_in2'] ?? 0, 5);
    expect(net.weightLbPerFt).toBe(section(plain).result.weightLbPerFt); // weight is gross
  });
});

type Corner = readonly [x: number, y: number];
/** Area, first and second moment about y = 0 of a closed outline run against the clock (Green's theorem). */
function outline(corners: readonly Corner[]) {
  let [area, first, second] = [0, 0, 0];
  corners.forEach(([x0, y0], i) => {
    const [x1, y1] = corners[(i + 1) % corners.length] as Corner;
    const cross = x0 * y1 - x1 * y0;
    area += cross / 2;
    first += (cross * (y0 + y1)) / 6;
    second += (cross * (y0 * y0 + y0 * y1 + y1 * y1)) / 12;
  });
  return { area, first, second };
}
const box = (left: number, low: number, right: number, high: number): readonly Corner[] => [
  [left, low],
  [right, low],
  [right, high],
  [left, high],
];

/** Second way: one outline round the whole channel, and one round each hole, taken out. */
function byOutline({ widthIn: w, depthIn: d, thicknessIn: t, lipIn, holes = [] }: SectionGiven) {
  const lip = lipIn ?? t;
  const whole = outline([
    [0, 0],
    [w, 0],
    [w, d],
    [w - lip, d],
    [w - lip, d - t],
    [w - t, d - t],
    [w - t, t],
    [t, t],
    [t, d - t],
    [lip, d - t],
    [lip, d],
    [0, d],
  ]);
  const out = holes.map(({ diameterIn: a, count, in: where, heightIn = 0 }) => {
    const one = outline(where === 'web' ? box(0, 0, a, t) : box(0, heightIn - a / 2, t, heightIn + a / 2));
    return { area: count * one.area, first: count * one.first, second: count * one.second };
  });
  const all = [whole, ...out.map((o) => ({ area: -o.area, first: -o.first, second: -o.second }))];
  const sum = (key: 'area' | 'first' | 'second') => all.reduce((s, one) => s + one[key], 0);
  const centroid = sum('first') / sum('area');
  const inertia = sum('second') - sum('area') * centroid ** 2;
  return { area: sum('area'), gross: whole.area, centroid, inertia };
}

const any: fc.Arbitrary<SectionGiven> = fc
  .record({
    widthIn: fc.double({ min: 1.5, max: 8, noNaN: true }),
    depthIn: fc.double({ min: 1, max: 4, noNaN: true }),
    thicknessIn: fc.double({ min: 0.03, max: 0.25, noNaN: true }),
    lip: fc.option(fc.double({ min: 0.1, max: 1, noNaN: true }), { nil: undefined }),
    holes: fc.array(
      fc.record({
        diameterIn: fc.double({ min: 0.05, max: 0.2, noNaN: true }),
        count: fc.integer({ min: 1, max: 2 }),
        in: fc.constantFrom('web' as const, 'legs' as const),
        up: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ lip, holes, ...measures }) => ({
    ...measures,
    ...(lip === undefined
      ? {}
      : { lipIn: measures.thicknessIn + lip * (measures.widthIn / 2 - measures.thicknessIn) }),
    holes: holes.map(({ up, ...hole }) =>
      hole.in === 'web'
        ? hole
        : { ...hole, heightIn: hole.diameterIn / 2 + up * (measures.depthIn - hole.diameterIn) },
    ),
  }));

describe('laws', () => {
  test('agrees with the outline run round by Green', () => {
    fc.assert(
      fc.property(any, (given) => {
        const got = section(given).result;
        const want = byOutline(given);
        expect(got.areaIn2).toBeCloseTo(want.area, 10);
        expect(got.centroidIn).toBeCloseTo(want.centroid, 10);
        expect(got.iIn4).toBeCloseTo(want.inertia, 10);
        expect(got.sLegIn3 * (given.depthIn - want.centroid)).toBeCloseTo(want.inertia, 10);
        expect(got.sWebIn3 * want.centroid).toBeCloseTo(want.inertia, 10);
        expect(got.weightLbPerFt).toBeCloseTo(want.gross * 12 * 0.2836, 10);
      }),
    );
  });

  test('all measures twice as large: area 4 times, I 16 times, S 8 times', () => {
    fc.assert(
      fc.property(any, (given) => {
        const twice = {
          widthIn: 2 * given.widthIn,
          depthIn: 2 * given.depthIn,
          thicknessIn: 2 * given.thicknessIn,
          ...(given.lipIn === undefined ? {} : { lipIn: 2 * given.lipIn }),
          holes: (given.holes ?? []).map((h) => ({
            ...h,
            diameterIn: 2 * h.diameterIn,
            ...(h.heightIn === undefined ? {} : { heightIn: 2 * h.heightIn }),
          })),
        };
        const [one, two] = [section(given).result, section(twice).result];
        expect(two.areaIn2 / one.areaIn2).toBeCloseTo(4, 9);
        expect(two.iIn4 / one.iIn4).toBeCloseTo(16, 9);
        expect(two.sLegIn3 / one.sLegIn3).toBeCloseTo(8, 9);
      }),
    );
  });
});

describe('working and sources', () => {
  test('density of steel is named when none is given, and not when one is', () => {
    expect(section(plain).sources.map((s) => s.id)).toEqual(['statics', 'steel-designers-handbook']);
    const light = section({ ...plain, densityLbIn3: 0.0975 });
    expect(light.sources.map((s) => s.id)).toEqual(['statics']);
    expect(light.result.weightLbPerFt).toBeCloseTo(0.54908982 * 12 * 0.0975, 9);
  });

  test('the lines of areas add up to the net area', () => {
    const holes = [
      { diameterIn: 0.5, count: 1, in: 'web' },
      { diameterIn: 0.25, count: 2, in: 'legs', heightIn: 1 },
    ] as const;
    const { steps, result } = section({ ...plain, lipIn: 0.5, holes });
    const parts = steps.filter((s) => /web$|legs$|lips|Holes/.test(s.say) && s.unit === 'in2');
    expect(parts).toHaveLength(5);
    expect(parts.reduce((sum, s) => sum + Number(s.value), 0)).toBeCloseTo(result.areaIn2, 12);
  });
});
