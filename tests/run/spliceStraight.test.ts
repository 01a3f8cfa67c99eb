import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Splice } from '../../src/run/joints.ts';
import { spliceStraightRun } from '../../src/run/spliceStraight.ts';
import { GivenError } from '../../src/trade/given.ts';
import { formatLength, readLength, ticks } from '../../src/trade/length.ts';

const L = readLength;
const sleeve = { kind: 'socketed', length: L('10 1/8'), insertions: [L(5), L(5)] } satisfies Splice;
const plate = { kind: 'butt', length: L(6), gap: L(0) } satisfies Splice;
const fill = (length: string, splice: Splice = sleeve, stock = `20'`) =>
  spliceStraightRun({ length: L(length), stock: L(stock), kerf: L('1/8'), splice });

describe('whole lengths, then the remainder', () => {
  test.each<[string, Splice, string[], string]>([
    [`63'-7 1/2"`, sleeve, [`20'-0"`, `20'-0"`, `20'-0"`, `3'-7 1/8"`], 'hand: 763 1/2 − 3·240 − 3/8'],
    [`47'-3"`, plate, [`20'-0"`, `20'-0"`, `7'-3"`], 'hand: 567 − 480'],
    [`19'-11 15/16"`, sleeve, [`19'-11 15/16"`], 'hand: shorter than a length'],
    [`20'`, sleeve, [`20'-0"`], 'hand: one length, nothing cut'],
    [`40'-0 1/8"`, sleeve, [`20'-0"`, `20'-0"`], 'hand: two lengths and a gap, nothing cut'],
    [`20'-10 1/4"`, sleeve, [`20'-0"`, `0'-10 1/8"`], 'hand: the last is just as long as its sleeve'],
    [`20'-5 1/8"`, sleeve, [`19'-6 7/8"`, `0'-10 1/8"`], 'hand: 245 1/8 less 1/8 less the sleeve’s 10 1/8'],
    [`20'-5"`, sleeve, [`19'-6 3/4"`, `0'-10 1/8"`], 'hand: 245 less 1/8 less 10 1/8'],
    [
      `20'-0 1/16"`,
      sleeve,
      [`19'-1 13/16"`, `0'-10 1/8"`],
      'hand: the length ends inside the opening; 240 1/16 less 1/8 less 10 1/8',
    ],
    [`20'-2"`, plate, [`19'-8"`, `0'-6"`], 'hand: 242 less the plate’s 6'],
  ])('%s %o gives %s (%s)', (length, splice, cuts) => {
    const { result } = fill(length, splice);
    expect(result.leg.pieces.map((p) => formatLength(p.cut))).toEqual(cuts);
    expect(result.lengths).toBe(cuts.length);
    expect(result.cuts.map((p) => formatLength(p.cut))).toEqual(cuts.filter((c) => c !== `20'-0"`));
  });

  test('splice centres, what is left, and the sum both ways', () => {
    const { result, steps } = fill(`63'-7 1/2"`);
    // Hand: k·240 + (k − 1/2)·1/8.
    expect(result.leg.joints.map((j) => `${j.name} ${formatLength(j.at)}`)).toEqual([
      `S1 20'-0 1/16"`,
      `S2 40'-0 3/16"`,
      `S3 60'-0 5/16"`,
    ]);
    // Hand: 240 − 43 1/8 − 1/8.
    expect(result.leftOver.map((l) => formatLength(l.length))).toEqual([`16'-4 3/4"`]);
    expect(steps.map((s) => s.say)).toEqual([
      'run.wholes',
      'run.plusPiece',
      'run.plusGaps',
      'run.isRun',
      ...new Array(4).fill('run.pieceIn'),
      'run.sleeve',
    ]);
    expect(steps.slice(4, 8).map((s) => s.values)).toEqual([
      { number: 1, clear: `19'-7"`, into: '5"', cut: `20'-0"` },
      { number: 2, clear: `19'-2"`, into: '10"', cut: `20'-0"` },
      { number: 3, clear: `19'-2"`, into: '10"', cut: `20'-0"` },
      { number: 4, clear: `3'-2 1/8"`, into: '5"', cut: `3'-7 1/8"` },
    ]);
  });

  test('a saw that takes the rest leaves nothing, never less than nothing', () => {
    expect(fill(`19'-11 15/16"`).result.leftOver[0]?.length).toBe(0);
  });
});

const splices = fc.oneof(
  fc
    .record({
      kind: fc.constant('socketed' as const),
      insertions: fc.tuple(fc.integer({ min: 0, max: 50_000 }), fc.integer({ min: 0, max: 50_000 })),
      opening: fc.integer({ min: 0, max: 9000 }),
    })
    .map(
      ({ insertions: [a, b], opening }): Splice => ({
        kind: 'socketed',
        length: ticks(Math.max(1, a + b + opening)),
        insertions: [ticks(a), ticks(b)],
      }),
    ),
  fc
    .record({ gap: fc.integer({ min: 0, max: 9000 }), length: fc.integer({ min: 1, max: 60_000 }) })
    .map(({ gap, length }): Splice => ({ kind: 'butt', length: ticks(length), gap: ticks(gap) })),
);

test('any length is filled exactly, by pieces that come out of the stock and go fully into their splices', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 40_000_000 }),
      fc.integer({ min: 218_001, max: 3_000_000 }), // more than two splices of the longest
      splices,
      (length, stock, splice) => {
        const { leg, cuts } = spliceStraightRun({
          length: ticks(length),
          stock: ticks(stock),
          kerf: ticks(1016),
          splice,
        }).result;
        const opening = leg.joints[0]?.opening ?? 0;
        const sum = leg.pieces.reduce((s, p) => s + p.cut, 0) + leg.joints.length * opening;
        expect(sum).toBe(length);
        const least = splice.length;
        for (const { cut } of leg.pieces) {
          expect(cut).toBeGreaterThan(0);
          expect(cut).toBeLessThanOrEqual(stock);
          if (leg.pieces.length > 1) expect(cut).toBeGreaterThanOrEqual(least);
        }
        // No other plan has fewer cuts but the one of whole lengths alone.
        expect(cuts.length).toBeLessThanOrEqual(2);
      },
    ),
  );
});

test.each([
  [{ length: ticks(0) }, 'length'],
  [{ kerf: ticks(-1) }, 'kerf'],
  [{ splice: { ...sleeve, insertions: [L('5 1/8'), L('5 1/16')] } as Splice }, 'insertions'],
  [{ splice: { ...plate, gap: ticks(-1) } as Splice }, 'gap'],
  [{ stock: L(10) }, 'stock'],
])('refuses %o', (change, field) => {
  const given = { length: L(`50'`), stock: L(`20'`), kerf: L('1/8'), splice: sleeve, ...change };
  try {
    spliceStraightRun(given);
  } catch (error) {
    expect(error instanceof GivenError && error.faults.map((f) => f.field)).toEqual([field]);
    return;
  }
  throw new Error('taken');
});
