import { describe, expect, test } from 'vitest';
import { type BeamGiven, beam } from '../../../src/trade/beam/beam.ts';
import { solved } from '../../../src/trade/beam/supports.ts';
import equalSpans from '../../references/continuous-beams.json' with { type: 'json' };
import cases from '../../references/mechanics.json' with { type: 'json' };

const steel = { ePsi: 29e6, iIn4: 0.05 };
const result = (given: Partial<BeamGiven> & Pick<BeamGiven, 'spansIn'>) =>
  beam({ ...steel, ...given }).result;
const greatest = (given: Partial<BeamGiven> & Pick<BeamGiven, 'spansIn'>) => {
  const { spanMaxima, deflections } = result(given);
  return {
    moment: Math.max(...spanMaxima.map((m) => m.lbIn)),
    deflection: Math.max(...deflections.map((d) => d.in)),
  };
};
const num = (fraction: string | number): number => {
  if (typeof fraction === 'number') return fraction;
  const [top = '0', bottom = '1'] = fraction.split('/');
  return Number(top) / Number(bottom);
};

describe('equal spans, some loaded (source beside each row of tests/references/continuous-beams.json)', () => {
  // w and L of 1 in the table; here 12 lb/in on 100 in.
  const [w, l] = [12, 100];
  test.each(equalSpans)('$loaded: $source', ({ loaded, reactions, moments, greatest: most, deflection }) => {
    const given = {
      spansIn: loaded.map(() => l),
      loads: loaded.flatMap((on, span) => (on === 1 ? [{ span, lbPerFt: 12 * w }] : [])),
    };
    const got = result(given);
    // The table's four decimals are rounded; its fractions are exact.
    const places = typeof reactions[0] === 'string' ? 9 : 4;
    got.reactionsLb.forEach((r, i) => {
      expect(r / (w * l)).toBeCloseTo(num(reactions[i] ?? Number.NaN), places);
    });
    got.supportMomentsLbIn.forEach((m, i) => {
      expect(m / (w * l * l)).toBeCloseTo(num(moments[i] ?? Number.NaN), places);
    });
    const { moment, deflection: sag } = greatest(given);
    expect(moment / (w * l * l)).toBeCloseTo(num(most), typeof most === 'string' ? 9 : 4);
    const unit = (w * l ** 4) / (steel.ePsi * steel.iIn4);
    expect(sag / unit).toBeCloseTo(num(deflection), typeof deflection === 'string' ? 9 : 5);
  });
});

describe('outside cases (source beside each in tests/references/mechanics.json)', () => {
  interface Given {
    readonly spans_ft?: readonly number[];
    readonly spans_m?: readonly number[];
    readonly w_lb_per_ft?: readonly number[] | number;
    readonly w_kN_per_m?: readonly number[];
    readonly points?: readonly Readonly<Record<string, number>>[];
  }
  /** Feet and pounds, or metres and kilonewtons taken for feet and pounds: the equations have no unit. */
  const read = (given: Given): BeamGiven => {
    const spans = given.spans_ft ?? given.spans_m ?? [];
    const loads = (given.w_lb_per_ft ?? given.w_kN_per_m ?? []) as readonly number[];
    return {
      ...steel,
      spansIn: spans.map((s) => 12 * s),
      loads: loads.map((lbPerFt, span) => ({ span, lbPerFt })),
      points: (given.points ?? []).map((p) => ({
        span: p['span_index'] ?? Number.NaN,
        atIn: 12 * (p['x_ft'] ?? p['x_m'] ?? Number.NaN),
        lb: p['P_lb'] ?? p['P_kN'] ?? Number.NaN,
      })),
    };
  };

  test.each(cases.filter((c) => c.topic === 'beam_continuous'))('$id: $source', ({ given, expect: want }) => {
    const read_ = read(given as Given);
    const got = result(read_);
    const reactions = want.reactions_lb ?? want.reactions_kN ?? [];
    const moments = want.support_moments_lb_ft ?? want.support_moments_kN_m ?? [];
    expect(got.reactionsLb).toEqual(reactions.map((r) => expect.closeTo(r, 5)));
    expect(got.supportMomentsLbIn.map((m) => m / 12)).toEqual(moments.map((m) => expect.closeTo(m, 5)));
    expect(greatest(read_).moment / 12).toBeCloseTo(
      want.max_positive_moment_lb_ft ?? want.max_positive_moment_kN_m ?? Number.NaN,
      5,
    );
  });

  const of = (id: string) => {
    const found = cases.find((c) => c.id === id);
    if (found === undefined) throw new Error(`no case ${id}`);
    return found as unknown as {
      readonly given: Readonly<Record<string, number>>;
      readonly expect: Readonly<Record<string, number>>;
    };
  };

  test('S-BEAM-01: one span, uniform (AISC Manual, beam table, from memory)', () => {
    const { expect: want } = of('S-BEAM-01');
    const got = result({ spansIn: [96], loadLbPerFt: 10 });
    expect(got.reactionsLb).toEqual([want['reaction_lb'], want['reaction_lb']]);
    expect(got.spanMaxima).toEqual([{ span: 0, atIn: 48, lbIn: 12 * (want['moment_lb_ft'] ?? 0) }]);
    expect(got.deflections[0]?.in).toBeCloseTo(want['deflection_in'] ?? 0, 5);
  });

  test('S-BEAM-14: one overhang, uniform (formulas on a public page)', () => {
    const { expect: want } = of('S-BEAM-14');
    const got = result({ spansIn: [96], overhangRightIn: 24, loadLbPerFt: 10 });
    expect(got.reactionsLb).toEqual([
      expect.closeTo(want['reaction_inner_end_lb'] ?? 0, 9),
      expect.closeTo(want['reaction_at_overhang_lb'] ?? 0, 9),
    ]);
    expect(got.supportMomentsLbIn[1]).toBeCloseTo(12 * (want['moment_at_overhang_support_lb_ft'] ?? 0), 9);
    expect(got.spanMaxima[0]?.lbIn).toBeCloseTo(12 * (want['max_positive_moment_lb_ft'] ?? 0), 9);
  });

  test('S-BEAM-15: a cantilever is an overhang (AISC Manual, cantilever cases, from memory)', () => {
    const { expect: want } = of('S-BEAM-15');
    const got = result({
      spansIn: [120],
      overhangLeftIn: 24,
      loadLbPerFt: 12,
      points: [{ span: -1, atIn: 0, lb: 40 }],
    });
    expect(got.supportMomentsLbIn[0]).toBeCloseTo(12 * (want['moment_at_support_lb_ft'] ?? 0), 9);
    const span = result({ spansIn: [120], loadLbPerFt: 12 }).reactionsLb[0] ?? 0;
    const tilt = (got.supportMomentsLbIn[0] ?? 0) / -120;
    expect((got.reactionsLb[0] ?? 0) - span - tilt).toBeCloseTo(want['shear_lb'] ?? 0, 9);
  });

  test('S-BEAM-16: three equations as they stand (worked problem on a public page)', () => {
    const equations = [
      { support: 1, before: 0, at: 6, after: 3, right: -6.3 },
      { support: 2, before: 3, at: 12, after: 3, right: -27 },
      { support: 3, before: 3, at: 6, after: 0, right: -20.7 },
    ];
    expect(solved(equations, 0, 0)).toEqual([-0.3, -1.5, -2.7].map((m) => expect.closeTo(m, 9)));
  });

  test('S-STR-01: the load of a strut makes the moment that its stress allows (any textbook)', () => {
    const { given, expect: want } = of('S-STR-01');
    const allowed = (given['S_in3'] ?? 0) * (given['allow_stress_psi'] ?? 0);
    const span = given['span_in'] ?? 0;
    const along = { spansIn: [span], loadLbPerFt: ((want['uniform_load_total_lb'] ?? 0) / span) * 12 };
    const middle = {
      spansIn: [span],
      loads: [],
      points: [{ span: 0, atIn: span / 2, lb: want['mid_point_load_lb'] ?? 0 }],
    };
    expect(greatest(along).moment).toBeCloseTo(allowed, 3);
    expect(greatest(middle).moment).toBeCloseTo(allowed, 3);
  });
});

describe('points and overhangs', () => {
  const [p, l] = [1000, 120];
  const ei = steel.ePsi * steel.iIn4;
  const mid = (span: number) => ({ span, atIn: l / 2, lb: p });

  test('one span, a load at its middle: P/2, PL/4, PL³/48EI (any textbook)', () => {
    const got = result({ spansIn: [l], loads: [], points: [mid(0)] });
    expect(got.reactionsLb).toEqual([p / 2, p / 2]);
    expect(got.spanMaxima).toEqual([{ span: 0, atIn: l / 2, lbIn: (p * l) / 4 }]);
    expect(got.deflections[0]?.in).toBeCloseTo((p * l ** 3) / (48 * ei), 9);
    expect(got.deflections[0]?.atIn).toBeCloseTo(l / 2, 6);
  });

  test('two spans, a load at the middle of one (a public page; 0.480 L by calculation)', () => {
    const got = result({ spansIn: [l, l], loads: [], points: [mid(0)] });
    expect(got.reactionsLb.map((r) => r / p)).toEqual(
      [13 / 32, 11 / 16, -3 / 32].map((r) => expect.closeTo(r, 9)),
    );
    expect((got.supportMomentsLbIn[1] ?? 0) / (p * l)).toBeCloseTo(-3 / 32, 9);
    expect((got.spanMaxima[0]?.lbIn ?? 0) / (p * l)).toBeCloseTo(13 / 64, 9);
    expect((got.deflections[0]?.in ?? 0) / ((p * l ** 3) / ei)).toBeCloseTo(0.015, 4);
    expect((got.deflections[0]?.atIn ?? 0) / l).toBeCloseTo(0.48, 3);
    expect(got.deflections[1]).toEqual({ span: 1, atIn: 0, in: 0 }); // lifts everywhere
    expect(got.spanMaxima[1]).toMatchObject({ atIn: l, lbIn: 0 }); // hogs everywhere: greatest at its end
  });

  test('three spans, a load at every middle (by calculation)', () => {
    const got = result({ spansIn: [l, l, l], loads: [], points: [mid(0), mid(1), mid(2)] });
    expect(got.reactionsLb.map((r) => r / p)).toEqual(
      [0.35, 1.15, 1.15, 0.35].map((r) => expect.closeTo(r, 9)),
    );
    expect((got.supportMomentsLbIn[1] ?? 0) / (p * l)).toBeCloseTo(-0.15, 9);
    expect(
      greatest({ spansIn: [l, l, l], loads: [], points: [mid(0), mid(1), mid(2)] }).moment / (p * l),
    ).toBeCloseTo(0.175, 9);
  });

  test('a load over a support goes into it, and bends nothing', () => {
    const at = (span: number, atIn: number) =>
      result({ spansIn: [100, 80], loads: [], points: [{ span, atIn, lb: 500 }] });
    for (const got of [at(0, 100), at(1, 0)]) {
      expect(got.reactionsLb).toEqual([0, 500, 0]);
      expect(got.supportMomentsLbIn).toEqual([0, 0, 0]);
      expect(got.deflections.map((d) => d.in)).toEqual([0, 0]);
    }
    expect(at(0, 0).reactionsLb).toEqual([500, 0, 0]);
    expect(at(1, 80).reactionsLb).toEqual([0, 0, 500]);
  });

  test('a load at the tip of an overhang, and one at its root', () => {
    const tip = result({
      spansIn: [96],
      overhangLeftIn: 24,
      loads: [],
      points: [{ span: -1, atIn: 0, lb: 100 }],
    });
    expect(tip.supportMomentsLbIn).toEqual([-2400, 0]);
    expect(tip.reactionsLb).toEqual([125, -25]);
    // Overhang a of a span L, P at the tip: Pa²(L + a)/3EI (any textbook).
    expect(tip.tipDeflectionsIn).toEqual([expect.closeTo((100 * 24 ** 2 * 120) / (3 * ei), 12), null]);
    const root = result({
      spansIn: [96],
      overhangRightIn: 24,
      loads: [],
      points: [{ span: 1, atIn: 0, lb: 100 }],
    });
    expect(root).toMatchObject({
      supportMomentsLbIn: [0, 0],
      reactionsLb: [0, 100],
      tipDeflectionsIn: [null, 0],
    });
  });

  test('an overhang carries the load of the span beside it, and no other', () => {
    const got = result({
      spansIn: [60, 60, 60],
      overhangLeftIn: 20,
      overhangRightIn: 30,
      loads: [
        { span: 0, lbPerFt: 12 },
        { span: 2, lbPerFt: 24 },
      ],
    });
    expect(got.supportMomentsLbIn[0]).toBeCloseTo(-(1 * 20 ** 2) / 2, 12);
    expect(got.supportMomentsLbIn[3]).toBeCloseTo(-(2 * 30 ** 2) / 2, 12);
  });

  test('a tip that rises is below 0; an overhang of nothing is none', () => {
    const got = result({ spansIn: [120], overhangLeftIn: 1, overhangRightIn: 0, loadLbPerFt: 10 });
    expect(got.tipDeflectionsIn).toEqual([expect.any(Number), null]);
    expect(got.tipDeflectionsIn[0]).toBeLessThan(0);
  });

  test('loads of any size bend in proportion: no square of them overflows or vanishes', () => {
    const at = (times: number) =>
      result({
        spansIn: [96, 120],
        overhangRightIn: 24,
        loadLbPerFt: 10 * times,
        points: [{ span: 0, atIn: 30, lb: 50 * times }],
      });
    const one = at(1);
    for (const times of [1e-290, 1e-170, 1e160, 1e290]) {
      const many = at(times);
      one.deflections.forEach((sag, span) => {
        expect(sag.in).toBeGreaterThan(0);
        expect((many.deflections[span]?.in ?? 0) / times / sag.in).toBeCloseTo(1, 12);
      });
      one.spanMaxima.forEach(({ lbIn }, span) => {
        expect((many.spanMaxima[span]?.lbIn ?? 0) / times / lbIn).toBeCloseTo(1, 12);
      });
    }
  });

  test('nothing on it: nothing anywhere, and no minus before a nought', () => {
    expect(result({ spansIn: [96, 48], overhangLeftIn: 12, overhangRightIn: 12, loads: [] })).toEqual({
      reactionsLb: [0, 0, 0],
      supportMomentsLbIn: [0, 0, 0],
      spanMaxima: [
        { span: 0, atIn: 0, lbIn: 0 },
        { span: 1, atIn: 0, lbIn: 0 },
      ],
      deflections: [
        { span: 0, atIn: 0, in: 0 },
        { span: 1, atIn: 0, in: 0 },
      ],
      tipDeflectionsIn: [0, 0],
    });
  });
});
