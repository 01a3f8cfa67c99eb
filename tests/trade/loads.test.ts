import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beam } from '../../src/trade/beam/beam.ts';
import { equivalent } from '../../src/trade/equivalent.ts';
import { vertical } from '../../src/trade/vertical.ts';
import cases from '../references/mechanics.json' with { type: 'json' };

describe('a weight as a uniform load (source beside each case in tests/references/mechanics.json)', () => {
  test.each(cases.filter((c) => c.topic === 'concentrated_load'))(
    '$id: $source',
    ({ given, expect: want }) => {
      const {
        static_load_lb: staticLb = Number.NaN,
        span_ft: spanFt = Number.NaN,
        other_uniform_lb_per_ft: otherLbPerFt = Number.NaN,
      } = given as Readonly<Record<string, number>>;
      expect(equivalent({ staticLb, spanFt, otherLbPerFt }).result).toEqual({
        equivalentLbPerFt: want.equivalent_lb_per_ft,
        totalLbPerFt: want.total_lb_per_ft,
      });
    },
  );

  test('both make the same greatest moment', () => {
    const number = fc.double({ min: 0.5, max: 400, noNaN: true });
    fc.assert(
      fc.property(number, number, (staticLb, spanFt) => {
        const { equivalentLbPerFt } = equivalent({ staticLb, spanFt, otherLbPerFt: 0 }).result;
        const of = (given: object) =>
          beam({ spansIn: [12 * spanFt], ePsi: 1, iIn4: 1, ...given }).result.spanMaxima[0]?.lbIn ?? 0;
        const point = of({ loads: [], points: [{ span: 0, atIn: 6 * spanFt, lb: staticLb }] });
        expect(of({ loadLbPerFt: equivalentLbPerFt }) / point).toBeCloseTo(1, 9);
      }),
    );
  });
});

test('a drop is shared by what bears weight (statics, any textbook)', () => {
  expect(vertical({ dropFt: 24, lbPerFt: 3.5, loadSupports: 2 }).result).toEqual({ lb: 42 });
  expect(vertical({ dropFt: 24, lbPerFt: 3.5, loadSupports: 1 }).result).toEqual({ lb: 84 });
  expect(vertical({ dropFt: 10, lbPerFt: 0, loadSupports: 3 }).result).toEqual({ lb: 0 });
});
