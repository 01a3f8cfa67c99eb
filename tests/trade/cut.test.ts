import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CutGiven, cut, cutLength } from '../../src/trade/cut.ts';
import { fromInches, inches, readLength, ticks } from '../../src/trade/length.ts';
import cases from '../references/cut.json' with { type: 'json' };

const ends = fc.constantFrom(0, 1, 2);
const length = fc.nat(240 * 8128).map(ticks);

describe('cut', () => {
  test.each(cases)('$id: $source', ({ given, expect: want }) => {
    const { result } = cut({
      toSpliceEdge: fromInches(given.start_to_splice_edge_in),
      insertedEnds: given.splices_entered as 0 | 1 | 2,
      insertion: fromInches(given.insertion_per_splice_in),
    });
    expect(result.cutIn).toBe(want.cut_length_in);
    expect(result.cutMm).toBeCloseTo(want.cut_length_in * 25.4, 9);
  });

  test.each([
    // clear length, ends, insertion, stock, cut, fits: by hand
    [`7'-4 1/2"`, 1, undefined, undefined, `7'-9 1/2"`, true],
    [`19'-7"`, 1, undefined, undefined, `20'-0"`, true], // exactly one stock length
    [`19'-7 1/16"`, 1, undefined, undefined, `20'-0 1/16"`, false],
    [`19'-2"`, 2, undefined, undefined, `20'-0"`, true],
    [`0"`, 0, undefined, undefined, `0'-0"`, true],
    [`0"`, 2, undefined, undefined, `0'-10"`, true],
    [`3'-0"`, 2, `1 1/2"`, `39"`, `3'-3"`, true],
    [`3'-0"`, 2, `1 1/2"`, `38 15/16"`, `3'-3"`, false],
    [`3'-0"`, 1, `0"`, undefined, `3'-0"`, true],
    ['2350 mm', 1, '127 mm', '2477 mm', `8'-1 1/2"`, true],
  ] as const)('%s with %d ends: %s', (clear, insertedEnds, insertion, stock, text, fitsStock) => {
    const { result } = cut({
      toSpliceEdge: readLength(clear),
      insertedEnds,
      insertion: insertion === undefined ? undefined : readLength(insertion),
      stock: stock === undefined ? undefined : readLength(stock),
    });
    expect(result).toMatchObject({ text, fitsStock });
  });

  test('one tick above the stock does not fit', () => {
    const given = { insertedEnds: 1, stock: fromInches(100) } as const;
    expect(cut({ ...given, toSpliceEdge: fromInches(95) }).result.fitsStock).toBe(true);
    expect(cut({ ...given, toSpliceEdge: ticks(fromInches(95) + 1) }).result.fitsStock).toBe(false);
  });

  test('the cut less its insertions is what was measured; an end more adds one insertion', () => {
    fc.assert(
      fc.property(length, ends, length, (toSpliceEdge, insertedEnds, insertion) => {
        const given: CutGiven = { toSpliceEdge, insertedEnds: insertedEnds as 0 | 1 | 2, insertion };
        expect(cutLength(given) - insertedEnds * insertion).toBe(toSpliceEdge);
        expect(cut(given).result.cutIn).toBe(inches(cutLength(given)));
      }),
    );
  });

  test('sources name the figures that were used, and no others', () => {
    const where = (given: Omit<CutGiven, 'toSpliceEdge'>) =>
      cut({ toSpliceEdge: fromInches(10), ...given }).sources.map((s) => s.where);
    expect(where({ insertedEnds: 1 })).toEqual([
      'every end that goes into a splice adds its insertion',
      '5 in of channel go into a splice',
      'one length of channel is 20 ft',
      '1 in = 25.4 mm, exactly',
    ]);
    expect(where({ insertedEnds: 1, insertion: fromInches(4), stock: fromInches(120) })).toEqual([
      'every end that goes into a splice adds its insertion',
      '1 in = 25.4 mm, exactly',
    ]);
    expect(where({ insertedEnds: 0 })).toEqual(['one length of channel is 20 ft', '1 in = 25.4 mm, exactly']);
  });
});
