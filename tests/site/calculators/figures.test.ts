import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fieldsOf, workOut } from '../../../src/site/calculators/answer.ts';
import { formOf } from '../../../src/site/calculators/form.ts';
import { type SumId, sumIds } from '../../../src/site/calculators/sum.ts';
import { usual } from '../../../src/site/settings.ts';
import { fromInches } from '../../../src/trade/length.ts';
import { clashes, outside } from '../../drawing/measure.ts';
import { dataOf, figureHow, sums, tell } from './all.ts';

/** The figure of a sum for these values in one form, or undefined where it has none. */
function figureOf(id: SumId, values: Readonly<Record<string, unknown>>, form: 'phone' | 'desk') {
  const data = dataOf(id);
  const written = formOf(fieldsOf(sums[id], data), values, usual);
  const { answer } = workOut(sums[id], data, written, usual, tell);
  if (answer?.good !== true) return undefined;
  return sums[id].figure?.(answer.value.answered.result, answer.value.given, figureHow(form), data);
}

const drawn = sumIds.filter((id) => sums[id].figure !== undefined);
const forms = ['phone', 'desk'] as const;

test('these sums have a figure', () => {
  expect(drawn).toEqual([
    ...['length', 'offset', 'arc', 'mark', 'mitre', 'notch', 'beam', 'section', 'expansion', 'radius'],
  ]);
});

describe.each(drawn)('the example of %s', (id) => {
  test.each(forms)('%s: nothing runs into anything or out of the frame', (form) => {
    const sheet = figureOf(id, sums[id].example, form);
    if (sheet === undefined) throw new Error('the example has no figure');
    expect(clashes(sheet)).toEqual([]);
    expect(outside(sheet)).toEqual([]);
    expect(sheet.words).not.toMatch(/[{}]|undefined|NaN/);
    expect(sheet.words.length).toBeGreaterThan(20);
  });
});

const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((n) => Number(n.toFixed(3)));
const inch = (min: number, max: number) =>
  fc.integer({ min: min * 16, max: max * 16 }).map((n) => fromInches(n / 16));

const many: Partial<Record<SumId, fc.Arbitrary<Record<string, unknown>>>> = {
  offset: fc.record({
    offset: inch(1, 120),
    angleDeg: number(1, 89),
    roll: fc.option(inch(0, 60), { nil: undefined }),
  }),
  arc: fc.record({ insideRadiusIn: number(0, 60), widthIn: number(1, 12), turnDeg: number(5, 175) }),
  mark: fc.record({
    at: inch(0, 240),
    firstHole: inch(0, 24),
    pitch: inch(1, 24),
    holeWidth: fc.integer({ min: 2, max: 24 }).map((n) => fromInches(n / 16)),
    clearance: fc.option(inch(0, 2), { nil: undefined }),
  }),
  mitre: fc.record({ widthIn: number(0.5, 24), turnDeg: number(1, 175) }),
  notch: fc.record({ depthIn: number(0.5, 8), bendDeg: number(1, 175) }),
  beam: fc.record({
    spans: fc.array(fc.record({ length: inch(12, 240), lbPerFt: number(0, 60) }), {
      minLength: 1,
      maxLength: 6,
    }),
    points: fc.array(
      fc.record({ place: fc.constant('span'), span: fc.constant(0), at: inch(0, 12), lb: number(0, 400) }),
      { maxLength: 2 },
    ),
    overhangLeft: fc.option(inch(0, 48), { nil: undefined }),
    overhangRight: fc.option(inch(0, 48), { nil: undefined }),
    metal: fc.constant('aluminium'),
    iIn4: number(0.01, 9),
  }),
  section: fc.record({
    widthIn: number(2, 12),
    depthIn: number(1, 6),
    thicknessIn: number(0.03, 0.25),
    lipIn: fc.option(number(0.3, 1), { nil: undefined }),
    holes: fc.array(
      fc.record({ in: fc.constant('web'), diameterIn: number(0.1, 0.5), count: fc.constantFrom(1, 2) }),
      { maxLength: 1 },
    ),
  }),
  expansion: fc.tuple(number(-60, 60), number(1, 150), number(0.001, 0.999)).map(([lowF, range, share]) => ({
    metal: 'steel',
    lowF,
    highF: lowF + range,
    installF: Number((lowF + range * share).toFixed(6)),
  })),
  radius: fc.record({
    cable: fc.constantFrom('TC', 'MC smooth', 'MC interlocked'),
    odIn: number(0.1, 4),
    shielded: fc.boolean(),
    edition: fc.constant(2023),
  }),
};

describe.each(Object.keys(many) as SumId[])('%s with whatever is given', (id) => {
  test('no text on text, nothing outside', () => {
    let figures = 0;
    fc.assert(
      fc.property(
        many[id] as fc.Arbitrary<Record<string, unknown>>,
        fc.constantFrom(...forms),
        (values, form) => {
          const sheet = figureOf(id, values, form);
          if (sheet === undefined) return;
          figures++;
          expect(clashes(sheet)).toEqual([]);
          expect(outside(sheet)).toEqual([]);
        },
      ),
      { numRuns: 100 },
    );
    expect(figures).toBeGreaterThan(30);
  });
});
