import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barsOf, cutRows, cutsAtHoles, pieceSum, runSum, splicePlaces } from '../../src/site/sums.ts';
import { tried } from '../../src/site/tried.ts';
import { formatLength, readLength, type Ticks, ticks } from '../../src/trade/length.ts';

const tell = (key: string) => key;
const run = (length: string) => ({
  length: readLength(length),
  insertion: readLength('5"'),
  gap: readLength('1/8"'),
  kerf: readLength('1/8"'),
  stock: readLength(`20'`),
});

describe('one piece', () => {
  test.each([
    // ends  measured     cut            checked by
    [0, `7'-8 5/8"`, `7'-8 5/8"`, 'hand: nothing goes in'],
    [1, `7'-8 5/8"`, `8'-1 5/8"`, 'hand: + 5 in'],
    [2, `7'-8 5/8"`, `8'-6 5/8"`, 'hand: + 2 × 5 in'],
  ] as [0 | 1 | 2, string, string, string][])(
    '%i ends, %s measured: %s (%s)',
    (insertedEnds, measured, want) => {
      const given = {
        toSpliceEdge: readLength(measured),
        insertedEnds,
        insertion: readLength('5"'),
        stock: readLength(`20'`),
      };
      const { answer, piece } = pieceSum(given);
      expect(answer.result.text).toBe(want);
      // The piece in the figure is cut to the same length as the sum says, by another room.
      expect(formatLength(piece.cut)).toBe(want);
      expect(formatLength(piece.clear)).toBe(measured);
    },
  );

  test('figure and sum agree for every measure', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 240 * 16 }),
        fc.constantFrom(0, 1, 2),
        fc.integer({ min: 0, max: 12 * 16 }),
        (measured, insertedEnds, insertion) => {
          const given = {
            toSpliceEdge: ticks(measured * 508),
            insertedEnds,
            insertion: ticks(insertion * 508),
          };
          const { answer, piece } = pieceSum(given as Parameters<typeof pieceSum>[0]);
          expect(answer.result.cutIn).toBe(piece.cut / 8128);
          expect(piece.clear).toBe(given.toSpliceEdge);
        },
      ),
    );
  });
});

describe('a whole run', () => {
  test('63 ft 7 1/2 in: four lengths, one cut (hand: 3 × 20 ft + 3 × 1/8 + 3 ft 7 1/8 in)', () => {
    const { result } = runSum(run(`63'-7 1/2"`));
    expect(cutRows(result)).toEqual([
      { number: 1, cut: `20'-0"`, whole: true, left: '', clear: `19'-7"`, into: ['5"'] },
      { number: 2, cut: `20'-0"`, whole: true, left: '', clear: `19'-2"`, into: ['5"', '5"'] },
      { number: 3, cut: `20'-0"`, whole: true, left: '', clear: `19'-2"`, into: ['5"', '5"'] },
      { number: 4, cut: `3'-7 1/8"`, whole: false, left: `16'-4 3/4"`, clear: `3'-2 1/8"`, into: ['5"'] },
    ]);
    expect(splicePlaces(result).map(({ at }) => at)).toEqual([`20'-0 1/16"`, `40'-0 3/16"`, `60'-0 5/16"`]);
    const bars = barsOf(result, readLength(`20'`), tell as never);
    expect(bars.map(({ share }) => share)).toEqual([1, 1, 1, (3 * 12 + 7 + 1 / 8) / 240]);
  });

  test('a cut at a hole is said of its piece (hand: 43 1/8 in is clear; 1 in shorter is on the hole at 42)', () => {
    const webHoles = { width: readLength('9/16'), first: readLength('6'), pitch: readLength('6') };
    const stock = readLength(`20'`);
    const said = (length: string) => cutsAtHoles(runSum(run(length)).result, stock, { webHoles });
    expect(said(`63'-7 1/2"`)).toEqual([]);
    const [one, ...others] = said(`63'-6 1/2"`);
    expect([one?.piece, one?.found.falls, others]).toEqual([4, 'on', []]);
    expect(one?.found.shorter).toBe(readLength('41 5/32'));
    expect(one?.found.longer).toBe(readLength('42 27/32'));
  });

  test('a run that cannot be is refused with faults, not thrown', () => {
    const none = tried(() => runSum({ ...run(`10'`), length: ticks(0) as Ticks }));
    expect(none.good).toBe(false);
    if (!none.good) expect(none.faults.map(({ field }) => field)).toContain('length');
  });

  test('what is no refusal goes on up', () => {
    expect(() =>
      tried(() => {
        throw new Error('a slip of the program');
      }),
    ).toThrow('a slip of the program');
  });
});
