import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arc } from '../../src/trade/arc.ts';
import { fromInches, inches } from '../../src/trade/length.ts';
import { mitre } from '../../src/trade/mitre.ts';
import { notch } from '../../src/trade/notch.ts';
import { offset } from '../../src/trade/offset.ts';
import cases from '../references/geometry.json' with { type: 'json' };

type Numbers = Readonly<Record<string, number>>;
const of = (topic: string) =>
  cases
    .filter((c) => c.topic === topic)
    .map((c) => ({ ...c, given: c.given as unknown as Numbers, want: c.expect as unknown as Numbers }));
const at = (numbers: Numbers, key: string) => numbers[key] ?? Number.NaN;
const near = (numbers: Numbers, key: string) => expect.closeTo(at(numbers, key), 5);

describe('outside cases (source beside each in tests/references/geometry.json)', () => {
  test.each(of('offset'))('$id: $source', ({ given, want }) => {
    const got = offset({ offset: fromInches(at(given, 'offset_in')), angleDeg: at(given, 'angle_deg') });
    expect(got.result).toMatchObject({
      trueOffsetIn: at(given, 'offset_in'),
      multiplier: near(want, 'multiplier'),
      travelIn: near(want, 'travel_in'),
      advanceIn: near(want, 'run_in'),
      shrinkIn: near(want, 'shrink_in'),
    });
  });

  test.each(of('offset_trade_table'))('$id: $source', ({ given, want }) => {
    const got = offset({ offset: fromInches(at(given, 'offset_in')), angleDeg: at(given, 'angle_deg') });
    expect(got.result.trade).toMatchObject({
      travelIn: at(want, 'travel_in'),
      shrinkIn: at(want, 'shrink_in'),
    });
  });

  test.each(of('rolling_offset'))('$id: $source', ({ given, want }) => {
    const got = offset({
      offset: fromInches(at(given, 'rise_in')),
      roll: fromInches(at(given, 'roll_in')),
      angleDeg: at(given, 'angle_deg'),
    });
    expect(got.result).toMatchObject({
      trueOffsetIn: near(want, 'true_offset_in'),
      travelIn: near(want, 'travel_in'),
      advanceIn: near(want, 'run_in'),
    });
  });

  test.each(of('mitre'))('$id: $source', ({ given, want }) => {
    expect(mitre({ widthIn: at(given, 'channel_width_in'), turnDeg: at(given, 'turn_deg') }).result).toEqual({
      cutBackIn: near(want, 'cut_back_in'),
      angleDeg: at(want, 'cut_angle_from_square_deg'),
    });
  });

  test.each(of('leg_notch'))('$id: $source', ({ given, want }) => {
    expect(notch({ depthIn: at(given, 'leg_depth_in'), bendDeg: at(given, 'bend_deg') }).result).toEqual({
      edgeWidthIn: at(want, 'notch_full_width_at_edge_in'),
    });
  });

  test.each(of('fitting_arc'))('$id: $source', ({ given, want }) => {
    const got = arc({
      insideRadiusIn: at(given, 'inside_radius_in'),
      widthIn: at(given, 'width_in'),
      turnDeg: at(given, 'angle_deg'),
    });
    expect(got.result).toEqual({
      insideIn: near(want, 'inside_arc_in'),
      centreIn: near(want, 'centre_arc_in'),
      outsideIn: near(want, 'outside_arc_in'),
      tangentIn: near(want, 'centre_tangent_in'),
    });
  });
});

describe("the trade's figures (multipliers and shrink of offsets, seen on public pages; common practice)", () => {
  // angle, exact multiplier to four decimals, the trade's, exact shrink an inch, the trade's
  const figures = [
    [10, 5.7588, 6, 0.0875, 1 / 16],
    [22.5, 2.6131, 2.6, 0.1989, 3 / 16],
    [30, 2, 2, 0.2679, 1 / 4],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: four decimals, as the reference has it
    [45, 1.4142, 1.4, 0.4142, 3 / 8],
    [60, 1.1547, 1.2, 0.5774, 1 / 2],
  ] as const;

  test.each(figures)('%d°', (angleDeg, exact, multiplier, shrink, rounded) => {
    const { result } = offset({ offset: fromInches(30), angleDeg });
    expect(result.multiplier).toBeCloseTo(exact, 4);
    expect(result.shrinkIn / 30).toBeCloseTo(shrink, 4);
    expect(result.trade).toEqual({
      multiplier,
      travelIn: expect.closeTo(30 * multiplier, 9),
      shrinkIn: 30 * rounded,
      travelDifferenceIn: expect.closeTo(30 * multiplier - result.travelIn, 9),
      shrinkDifferenceIn: expect.closeTo(30 * rounded - result.shrinkIn, 9),
    });
  });

  test('30 in at 45°: the trade is 1.18 in short of the shrink', () => {
    const { trade } = offset({ offset: fromInches(30), angleDeg: 45 }).result;
    expect(trade?.shrinkDifferenceIn).toBeCloseTo(-1.18, 2);
  });

  test.each([9.9, 10.1, 15, 22.4, 22.6, 29.999, 44.9, 60.1, 75, 89])('none at %d°', (angleDeg) => {
    const { result, steps, sources } = offset({ offset: fromInches(6), angleDeg });
    expect(result.trade).toBeNull();
    expect(steps.map((s) => s.say)).toContain('offset.noTrade');
    expect(sources.map((s) => s.id)).toEqual(['plane-geometry']);
  });

  test('plain angles give plain numbers', () => {
    expect(offset({ offset: fromInches(6), angleDeg: 30 }).result.trade?.travelDifferenceIn).toBe(0);
    expect(mitre({ widthIn: 4, turnDeg: 90 }).result.cutBackIn).toBe(4);
  });
});

describe('laws', () => {
  const length = fc.double({ min: 0.1, max: 500, noNaN: true }).map(fromInches);
  const angle = fc.double({ min: 0.5, max: 89.5, noNaN: true });

  test('travel² = offset² + roll² + advance², and shrink is travel less advance', () => {
    fc.assert(
      fc.property(length, fc.option(length, { nil: undefined }), angle, (over, roll, angleDeg) => {
        const { trueOffsetIn, travelIn, advanceIn, shrinkIn, multiplier } = offset({
          offset: over,
          ...(roll === undefined ? {} : { roll }),
          angleDeg,
        }).result;
        const squares = inches(over) ** 2 + (roll === undefined ? 0 : inches(roll) ** 2);
        expect(trueOffsetIn ** 2 / squares).toBeCloseTo(1, 12);
        expect((trueOffsetIn ** 2 + advanceIn ** 2) / travelIn ** 2).toBeCloseTo(1, 12);
        expect((travelIn - advanceIn - shrinkIn) / travelIn).toBeCloseTo(0, 12);
        expect(travelIn / trueOffsetIn / multiplier).toBeCloseTo(1, 12);
      }),
    );
  });

  test('a roll of nothing is no roll; offset and roll may be exchanged', () => {
    fc.assert(
      fc.property(length, length, angle, (a, b, angleDeg) => {
        const one = offset({ offset: a, angleDeg }).result;
        expect(offset({ offset: a, roll: fromInches(0), angleDeg }).result).toEqual(one);
        const [ab, ba] = [offset({ offset: a, roll: b, angleDeg }), offset({ offset: b, roll: a, angleDeg })];
        expect(ab.result).toEqual(ba.result);
      }),
    );
  });

  const size = fc.double({ min: 0.1, max: 48, noNaN: true });
  const turn = fc.double({ min: 0.5, max: 179, noNaN: true });
  test('the mitred edge is as long as the width over the cosine of the cut', () => {
    fc.assert(
      fc.property(size, turn, (widthIn, turnDeg) => {
        const { cutBackIn, angleDeg } = mitre({ widthIn, turnDeg }).result;
        expect(2 * angleDeg).toBe(turnDeg);
        const edge = Math.sqrt(widthIn ** 2 + cutBackIn ** 2);
        expect((edge * Math.cos((angleDeg * Math.PI) / 180)) / widthIn).toBeCloseTo(1, 9);
      }),
    );
  });

  test('a notch is two mitres of the depth', () => {
    fc.assert(
      fc.property(size, turn, (depthIn, bendDeg) => {
        const half = mitre({ widthIn: depthIn, turnDeg: bendDeg }).result.cutBackIn;
        expect(notch({ depthIn, bendDeg }).result.edgeWidthIn / half).toBeCloseTo(2, 12);
      }),
    );
  });

  test('the centre line is half way between the walls; the walls differ by width × angle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        size,
        turn,
        (insideRadiusIn, widthIn, turnDeg) => {
          const { insideIn, centreIn, outsideIn, tangentIn } = arc({
            insideRadiusIn,
            widthIn,
            turnDeg,
          }).result;
          expect((insideIn + outsideIn) / (2 * centreIn)).toBeCloseTo(1, 12);
          expect((outsideIn - insideIn) / ((widthIn * turnDeg * Math.PI) / 180)).toBeCloseTo(1, 9);
          expect(2 * tangentIn).toBeGreaterThan(centreIn); // two sides of a corner are longer than the curve
        },
      ),
    );
  });
});
