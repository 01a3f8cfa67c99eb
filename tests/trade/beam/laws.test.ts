import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alongSpan } from '../../../src/trade/beam/alongSpan.ts';
import { type BeamGiven, beam, type PointLoad } from '../../../src/trade/beam/beam.ts';
import { frameOf, type Span } from '../../../src/trade/beam/frame.ts';
import { supportsOf } from '../../../src/trade/beam/supports.ts';
import { byElements } from './elements.ts';

const steel = { ePsi: 29e6, iIn4: 0.05 };

/** Whole inches and places in sixteenths of a length, so that no two nodes of the elements stand a hair apart. */
const anyBeam: fc.Arbitrary<BeamGiven> = fc
  .record({
    spansIn: fc.array(fc.integer({ min: 10, max: 240 }), { minLength: 1, maxLength: 5 }),
    overhangLeftIn: fc.constantFrom(0, 0, 7, 30, 61),
    overhangRightIn: fc.constantFrom(0, 0, 5, 24, 60),
  })
  .chain((frame) => {
    const n = frame.spansIn.length;
    const point = fc
      .record({
        span: fc.integer({
          min: frame.overhangLeftIn > 0 ? -1 : 0,
          max: frame.overhangRightIn > 0 ? n : n - 1,
        }),
        part: fc.integer({ min: 0, max: 16 }),
        lb: fc.integer({ min: 0, max: 500 }),
      })
      .map(({ span, part, lb }): PointLoad => {
        const length = span === -1 ? frame.overhangLeftIn : (frame.spansIn[span] ?? frame.overhangRightIn);
        return { span, atIn: (length * part) / 16, lb };
      });
    return fc.record({
      spansIn: fc.constant(frame.spansIn),
      overhangLeftIn: fc.constant(frame.overhangLeftIn),
      overhangRightIn: fc.constant(frame.overhangRightIn),
      loads: fc.array(
        fc.record({ span: fc.integer({ min: 0, max: n - 1 }), lbPerFt: fc.integer({ min: 0, max: 90 }) }),
        { maxLength: 7 },
      ),
      points: fc.array(point, { maxLength: 6 }),
      ePsi: fc.constant(steel.ePsi),
      iIn4: fc.constant(steel.iIn4),
    });
  });

const result = (given: BeamGiven) => beam(given).result;
/** Distances from the left tip. */
const placesOf = (given: BeamGiven) => {
  const supports = [given.overhangLeftIn ?? 0];
  for (const span of given.spansIn) supports.push((supports.at(-1) ?? 0) + span);
  return supports;
};
/** Every load as a weight and the place of its middle, from the left tip. */
function weights(given: BeamGiven): { lb: number; x: number }[] {
  const supports = placesOf(given);
  const { overhangLeftIn: left = 0, overhangRightIn: right = 0, spansIn } = given;
  const perIn = (span: number) =>
    (given.loads ?? []).filter((l) => l.span === span).reduce((sum, l) => sum + l.lbPerFt / 12, 0);
  const last = spansIn.length - 1;
  return [
    { lb: perIn(0) * left, x: left / 2 },
    ...spansIn.map((length, i) => ({ lb: perIn(i) * length, x: (supports[i] ?? 0) + length / 2 })),
    { lb: perIn(last) * right, x: (supports.at(-1) ?? 0) + right / 2 },
    ...(given.points ?? []).map(({ span, atIn, lb }) => ({
      lb,
      x: span === -1 ? atIn : (supports[span] ?? 0) + atIn,
    })),
  ];
}
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
/** Room in proportion to the numbers at hand. */
const near = (got: number, want: number, scale: number) =>
  expect(Math.abs(got - want)).toBeLessThanOrEqual(1e-9 * scale + 1e-9);

describe('laws of beams', () => {
  test('forces and moments are in balance', () => {
    fc.assert(
      fc.property(anyBeam, (given) => {
        const { reactionsLb } = result(given);
        const loads = weights(given);
        const supports = placesOf(given);
        const total = sum(loads.map((l) => l.lb));
        near(sum(reactionsLb), total, total);
        const about = sum(loads.map((l) => l.lb * l.x));
        near(sum(reactionsLb.map((r, i) => r * (supports[i] ?? 0))), about, 100 * about);
      }),
    );
  });

  test('seen in a mirror it is the same beam', () => {
    fc.assert(
      fc.property(anyBeam, (given) => {
        const n = given.spansIn.length;
        const lengthOf = (span: number) =>
          (span === -1 ? given.overhangLeftIn : (given.spansIn[span] ?? given.overhangRightIn)) ?? 0;
        const mirrored: BeamGiven = {
          ...given,
          spansIn: given.spansIn.toReversed(),
          overhangLeftIn: given.overhangRightIn,
          overhangRightIn: given.overhangLeftIn,
          loads: (given.loads ?? []).map((l) => ({ ...l, span: n - 1 - l.span })),
          points: (given.points ?? []).map(({ span, atIn, lb }) => ({
            span: n - 1 - span,
            atIn: lengthOf(span) - atIn,
            lb,
          })),
        };
        const [a, b] = [result(given), result(mirrored)];
        const load = sum(weights(given).map((l) => l.lb));
        a.reactionsLb.forEach((r, i) => {
          near(b.reactionsLb[n - i] ?? Number.NaN, r, 100 * load);
        });
        a.supportMomentsLbIn.forEach((m, i) => {
          near(b.supportMomentsLbIn[n - i] ?? Number.NaN, m, 1000 * load);
        });
        a.spanMaxima.forEach((m, i) => {
          near(b.spanMaxima[n - 1 - i]?.lbIn ?? Number.NaN, m.lbIn, 1000 * load);
        });
        a.deflections.forEach((d, i) => {
          near(b.deflections[n - 1 - i]?.in ?? Number.NaN, d.in, 100 * load);
        });
        [0, 1].forEach((i) => {
          const [one, other] = [a.tipDeflectionsIn[i], b.tipDeflectionsIn[1 - i]];
          expect(one === null).toBe(other === null);
          near(other ?? 0, one ?? 0, 100 * load);
        });
      }),
    );
  });

  test('two loads at once make what each makes, added', () => {
    fc.assert(
      fc.property(anyBeam, fc.integer({ min: 0, max: 9 }), (given, seed) => {
        const part = <T>(list: readonly T[] | undefined, first: boolean) =>
          (list ?? []).filter((_, i) => ((i + seed) % 2 === 0) === first);
        const [one, other] = [true, false].map((first) =>
          result({ ...given, loads: part(given.loads, first), points: part(given.points, first) }),
        );
        const both = result(given);
        const load = sum(weights(given).map((l) => l.lb));
        both.reactionsLb.forEach((r, i) => {
          near((one?.reactionsLb[i] ?? 0) + (other?.reactionsLb[i] ?? 0), r, 100 * load);
        });
        both.supportMomentsLbIn.forEach((m, i) => {
          near((one?.supportMomentsLbIn[i] ?? 0) + (other?.supportMomentsLbIn[i] ?? 0), m, 1000 * load);
        });
        both.tipDeflectionsIn.forEach((tip, i) => {
          if (tip !== null)
            near((one?.tipDeflectionsIn[i] ?? 0) + (other?.tipDeflectionsIn[i] ?? 0), tip, 100 * load);
        });
      }),
    );
  });

  test('a load cut into parts is the same load', () => {
    fc.assert(
      fc.property(anyBeam, fc.double({ min: 0, max: 1, noNaN: true }), (given, share) => {
        const apart = result({
          ...given,
          loads: (given.loads ?? []).flatMap(({ span, lbPerFt }) => [
            { span, lbPerFt: share * lbPerFt },
            { span, lbPerFt: lbPerFt - share * lbPerFt },
          ]),
          points: (given.points ?? []).flatMap((p) => [
            { ...p, lb: share * p.lb },
            { ...p, lb: p.lb - share * p.lb },
          ]),
        });
        const whole = result(given);
        const load = sum(weights(given).map((l) => l.lb));
        whole.reactionsLb.forEach((r, i) => {
          near(apart.reactionsLb[i] ?? Number.NaN, r, 100 * load);
        });
        whole.spanMaxima.forEach((m, i) => {
          near(apart.spanMaxima[i]?.lbIn ?? Number.NaN, m.lbIn, 1000 * load);
        });
        whole.deflections.forEach((d, i) => {
          near(apart.deflections[i]?.in ?? Number.NaN, d.in, 100 * load);
        });
      }),
    );
  });

  test('a uniform load is what ever more small weights come to', () => {
    const spansIn = [120, 75, 96];
    const whole = result({ ...steel, spansIn, loadLbPerFt: 30, overhangRightIn: 24 });
    const off = [10, 100, 1000].map((parts) => {
      const points = [...spansIn, 24].flatMap((length, span) =>
        Array.from({ length: parts }, (_, i) => ({
          span,
          atIn: ((i + 0.5) * length) / parts,
          lb: (2.5 * length) / parts,
        })),
      );
      const got = result({ ...steel, spansIn, loads: [], points, overhangRightIn: 24 });
      return Math.max(
        ...whole.supportMomentsLbIn.map((m, i) => Math.abs(m - (got.supportMomentsLbIn[i] ?? 0))),
        ...whole.deflections.map((d, i) => Math.abs(d.in - (got.deflections[i]?.in ?? 0))),
      );
    });
    // The error of the middle rule falls with the square of the parts.
    expect(off[1]).toBeLessThan((off[0] ?? 0) / 90);
    expect(off[2]).toBeLessThan((off[1] ?? 0) / 90);
  });

  test('agrees everywhere with elements in a dense matrix', () => {
    fc.assert(
      fc.property(anyBeam, (given) => {
        const got = result(given);
        const other = byElements(given);
        const load = sum(weights(given).map((l) => l.lb)) + 1;
        const room = 1e-7 * load;
        got.reactionsLb.forEach((r, i) => {
          expect(Math.abs(r - (other.reactions[i] ?? Number.NaN))).toBeLessThan(100 * room);
        });
        got.supportMomentsLbIn.forEach((m, i) => {
          expect(Math.abs(m - other.at((other.supports[i] ?? 0) - 1e-12).moment)).toBeLessThan(100 * room);
        });
        given.spansIn.forEach((length, span) => {
          const from = other.supports[span] ?? 0;
          const samples = Array.from({ length: 161 }, (_, i) => other.at(from + (length * i) / 160));
          const [moment, sag] = [got.spanMaxima[span], got.deflections[span]];
          const at = (x = Number.NaN) => other.at(from + x);
          // What is said to stand there stands there, and nothing in the span is greater.
          expect(Math.abs((moment?.lbIn ?? 0) - at(moment?.atIn).moment)).toBeLessThan(100 * room);
          expect(Math.abs((sag?.in ?? 0) - at(sag?.atIn).deflection)).toBeLessThan(room);
          const most = Math.max(...samples.slice(1, -1).map((s) => s.moment));
          expect(moment?.lbIn).toBeGreaterThanOrEqual(most - 100 * room);
          expect(sag?.in).toBeGreaterThanOrEqual(Math.max(0, ...samples.map((s) => s.deflection)) - room);
        });
        got.tipDeflectionsIn.forEach((tip, i) => {
          if (tip !== null)
            expect(Math.abs(tip - other.at(other.ends[i] ?? 0).deflection)).toBeLessThan(room);
        });
      }),
      { numRuns: 300 },
    );
  });
});

describe('many spans of very unequal lengths', () => {
  const uneven = fc.record({
    spans: fc.array(fc.double({ min: -2, max: 3, noNaN: true }), { minLength: 200, maxLength: 200 }),
    loads: fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 200, maxLength: 200 }),
  });
  const read = ({ spans, loads }: { spans: readonly number[]; loads: readonly number[] }): BeamGiven => ({
    ...steel,
    spansIn: spans.map((power) => 10 ** power),
    loads: loads.map((lbPerFt, span) => ({ span, lbPerFt })),
    points: spans.map((power, span) => ({ span, atIn: 10 ** power / 3, lb: loads[span] ?? 0 })),
  });

  test('both sides of every support have one slope; forces are in balance', () => {
    fc.assert(
      fc.property(uneven, (one) => {
        const frame = frameOf(read(one));
        const { momentsLbIn, reactionsLb } = supportsOf(frame);
        const along = frame.spans.map((s, i) => alongSpan(s, momentsLbIn[i] ?? 0, momentsLbIn[i + 1] ?? 0));
        along.slice(1).forEach((right, i) => {
          const [before, after] = [along[i]?.slopes.right ?? 0, right.slopes.left];
          // In proportion to what each slope is the sum of: the load's own share and the moments'.
          const parts = [i, i + 1].map((s) => {
            const span = frame.spans[s] as Span;
            const moments = Math.abs(momentsLbIn[s] ?? 0) + Math.abs(momentsLbIn[s + 1] ?? 0);
            return span.lbPerIn * span.lengthIn ** 3 + span.lengthIn * moments;
          });
          expect(Math.abs(before - after)).toBeLessThanOrEqual(1e-12 * Math.max(...parts));
        });
        const total = sum(weights(read(one)).map((l) => l.lb));
        near(sum(reactionsLb), total, Math.max(total, ...reactionsLb.map(Math.abs)));
      }),
      { numRuns: 50 },
    );
  });

  test('200 spans under one load: away from the ends every support carries a whole span', () => {
    const { reactionsLb } = result({ spansIn: Array(200).fill(24), loadLbPerFt: 20, ...steel });
    // By symmetry about each support: 20 lb/ft over 2 ft.
    for (const lb of reactionsLb.slice(60, 140)) near(lb, 40, 40);
    near(sum(reactionsLb), 8000, 8000);
  });

  test('agrees with turning angles at the supports in place of moments', () => {
    fc.assert(
      fc.property(uneven, (one) => {
        const given = read(one);
        const { momentsLbIn } = supportsOf(frameOf(given));
        const other = bySlopes(frameOf(given).spans);
        const scale = Math.max(...momentsLbIn.map(Math.abs));
        momentsLbIn.forEach((m, i) => {
          expect(Math.abs(m - (other[i] ?? Number.NaN))).toBeLessThanOrEqual(1e-9 * scale);
        });
      }),
      { numRuns: 50 },
    );
  });
});

/**
 * Second way for long beams: the unknowns are the slopes over the supports (times EI), one equation of moments a
 * support; each span holds its ends with 4/L and 2/L. Downward deflection, slope to the right, sagging moment.
 */
function bySlopes(spans: readonly Span[]): readonly number[] {
  const n = spans.length;
  // Sagging moments of a span held fast at both ends.
  const fixed = spans.map(({ lengthIn: l, lbPerIn: w, points }) => {
    const all = { left: (-w * l * l) / 12, right: (-w * l * l) / 12 };
    for (const { atIn: a, lb } of points) {
      const b = l - a;
      all.left -= (lb * a * b * b) / (l * l);
      all.right -= (lb * a * a * b) / (l * l);
    }
    return all;
  });
  // Left: M = fixed + 4θ/L + 2θ′/L; right: M = fixed − 2θ/L − 4θ′/L.
  const rows = Array.from({ length: n + 1 }, (_, i) => {
    const [before, after] = [spans[i - 1], spans[i]];
    const left = before === undefined ? 0 : 4 / before.lengthIn;
    const right = after === undefined ? 0 : 4 / after.lengthIn;
    return {
      before: before === undefined ? 0 : 2 / before.lengthIn,
      at: left + right,
      after: after === undefined ? 0 : 2 / after.lengthIn,
      right: (fixed[i - 1]?.right ?? 0) - (fixed[i]?.left ?? 0),
    };
  });
  const above: { factor: number; rest: number }[] = [];
  for (const { before, at, after, right } of rows) {
    const last = above.at(-1) ?? { factor: 0, rest: 0 };
    const pivot = at - before * last.factor;
    above.push({ factor: after / pivot, rest: (right - before * last.rest) / pivot });
  }
  const slopes = new Array<number>(n + 1).fill(0);
  for (let i = n; i >= 0; i--)
    slopes[i] = (above[i]?.rest ?? 0) - (above[i]?.factor ?? 0) * (slopes[i + 1] ?? 0);
  return Array.from({ length: n + 1 }, (_, i) => {
    const after = spans[i];
    if (after === undefined) return 0;
    const l = after.lengthIn;
    return (fixed[i]?.left ?? 0) + (4 * (slopes[i] ?? 0) + 2 * (slopes[i + 1] ?? 0)) / l;
  });
}
