import { describe, expect, test } from 'vitest';
import { entryAt } from '../../../src/site/calculators/answer.ts';
import type { Form } from '../../../src/site/calculators/fields.ts';
import { formOf, readForm } from '../../../src/site/calculators/form.ts';
import { usual } from '../../../src/site/settings.ts';
import { cutList } from '../../../src/site/sticks/cutList.ts';
import { jobOf, type SticksForm, sticksExample, sticksFields } from '../../../src/site/sticks/fields.ts';
import { answerOf, proofOf, rowsOf } from '../../../src/site/sticks/said.ts';
import { GivenError } from '../../../src/trade/given.ts';
import { fromInches as L, type Ticks } from '../../../src/trade/length.ts';
import { sticks } from '../../../src/trade/sticks/sticks.ts';
import type { SticksGiven } from '../../../src/trade/sticks/types.ts';
import { tell } from '../calculators/all.ts';

const form = formOf(sticksFields, sticksExample, usual);
const read = (part: Form) => readForm(sticksFields, { ...form, ...part }, usual);
const row = (id: number, length: Ticks | null, rest: Record<string, string>) => ({
  id,
  form: {
    length: length === null ? ({ read: 'blank' } as const) : { read: 'length' as const, length },
    ...rest,
  },
});

describe('the form', () => {
  test('reads its example, whose stock has no end', () => {
    const { given, messages } = read({});
    expect(messages).toEqual({});
    expect(jobOf(given as SticksForm, [])).toEqual({
      pieces: sticksExample.pieces,
      stock: [{ length: L(240) }],
      kerf: L(0.125),
      minReusable: L(12),
    });
  });
  test('a mark is any words, and may be left out', () => {
    const { given } = read({
      pieces: [row(1, L(60), { count: '2', mark: ' north <1> ' }), row(2, L(9), { count: '1', mark: '' })],
    });
    expect((given as SticksForm).pieces).toEqual([
      { length: L(60), count: 2, mark: 'north <1>' },
      { length: L(9), count: 1 },
    ]);
  });
  test.each([
    ['count', '0', 'sums.from'],
    ['count', '2.5', 'sums.whole'],
    ['count', 'two', 'sums.notNumber'],
    ['count', '', 'sums.blank'],
  ])('a piece whose %s is "%s": %s, at its own entry', (name, text, key) => {
    const { given, messages } = read({ pieces: [row(4, L(60), { count: '1', mark: '', [name]: text })] });
    expect(given).toBeUndefined();
    expect(Object.entries(messages).map(([at, message]) => [at, message.key])).toEqual([
      [`pieces.4.${name}`, key],
    ]);
  });
  test('a piece longer than all there is is refused at its row, whatever rows went before', () => {
    const pieces = [row(2, L(60), { count: '1', mark: '' }), row(5, L(240.0625), { count: '1', mark: '' })];
    const { given } = read({ pieces });
    let fields: readonly string[] = [];
    try {
      sticks(jobOf(given as SticksForm, []));
    } catch (thrown) {
      if (!(thrown instanceof GivenError)) throw thrown;
      fields = thrown.faults.map(({ field }) => entryAt(field, { ...form, pieces }));
    }
    expect(fields).toEqual(['pieces.5.length']);
    // With a remnant as long as it is, it is no longer refused.
    expect(() => sticks(jobOf(given as SticksForm, [{ length: L(240.0625), count: 1 }]))).not.toThrow();
  });
});

const plain = (stock: SticksGiven['stock'], pieces: readonly (readonly [number, number])[]): SticksGiven => ({
  stock,
  pieces: pieces.map(([inch, count]) => ({ length: L(inch), count })),
  kerf: L(0),
});
const stick = [{ length: L(120) }];
const said = (given: SticksGiven, looking = false) => {
  const { result } = sticks(given);
  return [answerOf(result, given, looking, tell), proofOf(result, given, tell)];
};
const remnants = (inch: number, count: number) => [{ length: L(inch), count }];

describe('what is said', () => {
  // By hand: pieces over half a stick need one each; the rest follows from the sum of the lengths.
  test.each<[string, SticksGiven, string, string | undefined]>([
    [
      'one of all',
      plain(stick, [[60, 1]]),
      '1 stick for 1 piece',
      'Proven: it does not go without a new stick.',
    ],
    ['two', plain(stick, [[61, 2]]), '2 sticks for 2 pieces', 'Proven: 1 stick cannot hold them.'],
    ['many', plain(stick, [[61, 7]]), '7 sticks for 7 pieces', 'Proven: 6 sticks cannot hold them.'],
    [
      'from the rack',
      { ...plain(stick, [[60, 2]]), offcuts: remnants(60, 3) },
      '2 remnants for 2 pieces',
      'Proven: no new stick is needed.',
    ],
    [
      'from both',
      {
        ...plain(stick, [
          [61, 3],
          [60, 1],
        ]),
        offcuts: remnants(60, 1),
      },
      '3 new sticks and 1 remnant for 4 pieces',
      'Proven: the rack and 2 new sticks cannot hold them.',
    ],
    [
      'several lengths',
      plain(
        [{ length: L(120) }, { length: L(96) }],
        [
          [96, 1],
          [120, 1],
        ],
      ),
      '2 sticks for 2 pieces',
      `Proven: with less than 18'-0" of new stock it cannot be done.`,
    ],
    [
      'too little',
      plain([{ length: L(120), count: 1 }], [[61, 2]]),
      'Not enough stock for 2 pieces',
      undefined,
    ],
  ])('%s', (_, given, answer, proof) => {
    expect(said(given)).toEqual([answer, proof]);
  });

  test('while it is looked for: no plan yet, and the bound with its gap', () => {
    const given = plain([{ length: L(120), count: 1 }], [[61, 2]]);
    expect(said(given, true)[0]).toBe('No plan yet for 2 pieces');
    const result = { ...sticks(plain(stick, [[61, 7]])).result, proven: false, lowerBoundIn: 481 };
    expect(proofOf(result, plain(stick, [[61, 7]]), tell)).toBe(
      'Best so far; not proven. It takes at least 5 sticks: the gap is 2 sticks.',
    );
    const several = plain([...stick, { length: L(96) }], [[61, 7]]);
    expect(proofOf({ ...result, newStockIn: 672 }, several, tell)).toBe(
      `Best so far; not proven. It takes at least 40'-1" of new stock, and this plan takes 56'-0": the gap is 15'-11".`,
    );
  });

  test('what it comes to leaves out what there is none of', () => {
    const labels = (given: SticksGiven) => rowsOf(sticks(given).result).map(({ label }) => label.key);
    const always = ['sticksSheet.setups', 'sticksSheet.stops'];
    expect(labels(plain(stick, [[120, 1]]))).toEqual(['sticksSheet.stock', ...always]);
    expect(labels({ ...plain(stick, [[60, 2]]), offcuts: remnants(90, 1) })).toEqual([
      ...['sticksSheet.stock', 'sticksSheet.fromRack', 'sticksSheet.longest'],
      ...always,
    ]);
  });
});

describe('the cut list', () => {
  const bar = (pieces: readonly { in: number; mark?: string }[], leftIn: number) => ({
    fromIn: 240,
    offcut: false,
    pieces,
    leftIn,
  });
  const two = [{ in: 100, mark: 'A' }, { in: 100, mark: 'A' }, { in: 20 }];
  test('sticks cut alike once, a box for every cut of each', () => {
    const list = cutList([bar(two, 12), bar(two, 12), bar([{ in: 240 }], 0)], L(12));
    expect(list.map(({ alike, left, keeps }) => [alike.from, alike.to, left, keeps])).toEqual([
      [1, 2, `1'-0"`, true],
      [3, 3, '', false],
    ]);
    expect(list[0]?.cuts).toEqual([
      { length: `8'-4"`, mark: 'A', times: 2, boxes: 4, cuts: 4 },
      { length: `1'-8"`, mark: '', times: 1, boxes: 2, cuts: 2 },
    ]);
    expect(cutList([bar(two, 11.9375)], L(12))[0]?.keeps).toBe(false);
  });
  test('a box of its own for each of 100 cuts, one for all of 101', () => {
    const many = (count: number) =>
      cutList(
        [
          bar(
            Array.from({ length: count }, () => ({ in: 2 })),
            0,
          ),
        ],
        L(12),
      )[0]?.cuts[0];
    expect(many(100)).toMatchObject({ boxes: 100, cuts: 100 });
    expect(many(101)).toMatchObject({ boxes: 1, cuts: 101 });
  });
  test('every piece wanted is in the list', () => {
    const given = jobOf(sticksExample, []);
    const list = cutList(sticks(given).result.lengths, L(12));
    const counts = list.flatMap(({ cuts }) => cuts.map(({ cuts: all }) => all));
    expect(counts.reduce((a, b) => a + b, 0)).toBe(26);
  });
});
