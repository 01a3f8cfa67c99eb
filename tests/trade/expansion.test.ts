import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EXPANSION_METALS, type ExpansionGiven, expansion } from '../../src/trade/expansion.ts';
import { GivenError } from '../../src/trade/given.ts';
import { tables } from './tables.ts';

const ask = (more: Partial<ExpansionGiven> = {}) =>
  expansion({ metal: 'steel', lowF: 0, highF: 100, installF: 50, ...more }, tables.expansion);

/** NEMA VE 2-2013, Table 3-2 (steel and aluminium read in a copy, stainless from memory): ft for 1 in of movement. */
const rows = [
  [25, 512, 260, 347, 379],
  [50, 256, 130, 174, 189],
  [75, 171, 87, 116, 126],
  [100, 128, 65, 87, 95],
  [125, 102, 52, 69, 76],
  [150, 85, 43, 58, 63],
  [175, 73, 37, 50, 54],
] as const;
const cells = rows.flatMap(([rangeF, ...spacings]) =>
  EXPANSION_METALS.map((metal, i) => [metal, rangeF, spacings[i] ?? 0] as const),
);
/** What a metal gains for 1 °F, millionths (handbooks; stainless 316 and aluminium from memory). */
const RATES = { steel: 6.5, aluminium: 12.8, 'stainless 304': 9.6, 'stainless 316': 8.9 };

describe('spacing', () => {
  test.each(cells)('%s over %d °F: the table prints %d ft', (metal, rangeF, spacingFt) => {
    const { result } = ask({ metal, lowF: -20, highF: rangeF - 20, installF: 0 });
    expect(result.tableFt).toBe(spacingFt);
    // Movement 1 in / (12 × rate × range); the printed columns come of slightly other rates: within 2 %.
    expect(result.maxSpacingFt).toBeCloseTo(1e6 / (12 * RATES[metal] * rangeF), 8);
    expect(Math.abs((result.maxSpacingFt ?? 0) / spacingFt - 1)).toBeLessThan(0.02);
  });

  test('has these rows and no other', () => {
    expect(tables.expansion.rows.map((r) => [r.rangeF, ...EXPANSION_METALS.map((m) => r[m])])).toEqual(rows);
  });

  test('the table is read at its own ranges and 1 in of movement alone', () => {
    expect(ask({ highF: 101 }).result.tableFt).toBeNull();
    expect(ask({ highF: 100 + 1e-10 }).result.tableFt).toBe(128);
    expect(ask({ movementIn: 1 }).result.tableFt).toBe(128);
    expect(ask({ movementIn: 1.001 }).result.tableFt).toBeNull();
    expect(ask({ highF: 200, installF: 50 }).result.tableFt).toBeNull();
  });

  test('half the movement, half the spacing', () => {
    expect(ask({ movementIn: 0.5 }).result.maxSpacingFt).toBeCloseTo(64.1025641, 6);
  });

  test('segments: rounded up, a whole number of spacings stays whole', () => {
    const spacing = ask().result.maxSpacingFt ?? 0;
    const of = (lengthFt: number) => ask({ lengthFt }).result.segments;
    expect([of(1), of(spacing), of(spacing + 0.001), of(2 * spacing), of(3 * spacing)]).toEqual([
      1, 1, 2, 2, 3,
    ]);
    expect(ask().result.segments).toBeNull();
  });
});

describe('gap', () => {
  test.each([
    // NEMA VE 2 gap chart, linear, from memory
    [100, -28, 50, 0.390625],
    [110, -10, 70, 1 / 3],
    [130, 30, 130, 0],
    [130, 30, 30, 1],
  ])('hottest %d, coldest %d, now %d: %d in', (highF, lowF, installF, gapIn) => {
    expect(ask({ highF, lowF, installF }).result).toMatchObject({
      gapIn: expect.closeTo(gapIn, 9),
      refer: false,
    });
    expect(ask({ highF, lowF, installF, movementIn: 0.75 }).result.gapIn).toBeCloseTo(0.75 * gapIn, 9);
  });

  test.each([
    [-0.01, 'outside'],
    [0, 'inside'],
    [100, 'inside'],
    [100.01, 'outside'],
  ])('set at %d °F is %s its range of 0 to 100', (installF, where) => {
    const { result } = ask({ installF, lengthFt: 150, movementOf: { lengthFt: 10, dF: 50 } });
    const outside = where === 'outside';
    expect(result.refer).toBe(outside);
    expect(result.gapIn === null).toBe(outside);
    expect(result.why?.map((w) => w.say)).toEqual(
      outside ? ['expansion.outside', 'expansion.ask'] : undefined,
    );
    // The rest does not hang on the temperature of the day.
    expect(result).toMatchObject({ segments: 2, tableFt: 128, movedIn: expect.closeTo(0.039, 9) });
  });
});

describe('movement of a length', () => {
  test.each([
    // rate × length × 12 × degrees
    ['steel', 100, 100, 0.78],
    ['aluminium', 20, 100, 0.3072],
    ['aluminium', 20, -100, -0.3072],
    ['stainless 304', 10, 0, 0],
  ] as const)('%s, %d ft, %d °F: %d in', (metal, lengthFt, dF, movedIn) => {
    expect(ask({ metal, movementOf: { lengthFt, dF } }).result.movedIn).toBeCloseTo(movedIn, 9);
  });

  test('none is asked, none is given', () => {
    expect(ask().result.movedIn).toBeNull();
  });
});

test('hottest as cold as the coldest: every number null, referred', () => {
  const { result } = ask({ highF: 0, lengthFt: 100, movementOf: { lengthFt: 10, dF: 50 } });
  expect(result).toEqual({
    maxSpacingFt: null,
    tableFt: null,
    segments: null,
    gapIn: null,
    movedIn: null,
    refer: true,
    why: [{ say: 'expansion.noRange' }, { say: 'expansion.ask' }],
  });
});

test('hottest below the coldest is refused', () => {
  expect(() => ask({ highF: -1 })).toThrow(GivenError);
});

test('sources: the rate, the movement where none was given, the column that was read, the setting', () => {
  const where = (more: Partial<ExpansionGiven>) => ask(more).sources.map((s) => `${s.where} (${s.seen})`);
  expect(where({})).toEqual([
    'steel, expansion (page)',
    'movement of an expansion splice (memory)',
    'Table 3-2, steel and aluminium (page)',
    'gap at installation (memory)',
  ]);
  expect(where({ metal: 'stainless 316', movementIn: 1 })).toEqual([
    'stainless 316, expansion (memory)',
    'Table 3-2, stainless (memory)',
    'gap at installation (memory)',
  ]);
});

test('a movement that was taken is said to be a training value; one that was given is not', () => {
  expect(ask().steps.map((s) => s.say)).toContain('rests.training');
  expect(ask({ movementIn: 1 }).steps.map((s) => s.say)).not.toContain('rests.training');
});

test('laws: spacing and gap are what the movement comes to', () => {
  const degrees = fc.double({ min: -60, max: 160, noNaN: true });
  const metal = fc.constantFrom(...EXPANSION_METALS);
  fc.assert(
    fc.property(
      metal,
      degrees,
      fc.double({ min: 1, max: 200, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (of, lowF, rangeF, share) => {
        const highF = lowF + rangeF;
        const installF = Math.min(highF, lowF + share * rangeF);
        const { maxSpacingFt, gapIn } = ask({ metal: of, lowF, highF, installF }).result;
        const moved = ask({
          metal: of,
          movementOf: { lengthFt: maxSpacingFt ?? 0, dF: highF - lowF },
        }).result.movedIn;
        expect(moved).toBeCloseTo(1, 9);
        // What the metal still has to warm closes the gap.
        const closing = ask({
          metal: of,
          movementOf: { lengthFt: maxSpacingFt ?? 0, dF: highF - installF },
        }).result.movedIn;
        expect(closing).toBeCloseTo(gapIn ?? Number.NaN, 9);
      },
    ),
  );
});
