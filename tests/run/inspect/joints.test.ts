/** Joints: what goes in, what stays open, which holes. Limits: common practice, no source, unless named. */
import { describe, expect, test } from 'vitest';
import { corner, found, type Given, outdoor, TICK, wall, wallWith } from './runs.ts';

describe('insertions', () => {
  // Practice catalogue (training values): sleeve 10 1/8 in, 5 in each side; hinge 1 1/2 in.
  test('short: 1/16 in below the catalogue, and one tick more; the shorter side', () => {
    expect(found(wallWith({ insertions: [5 - 1 / 16, 5] }))).toEqual([]);
    expect(found(wallWith({ insertions: [5 - 1 / 16 - TICK, 5] }))).toEqual([
      ['insertion-short', '1', 203.5, 5 - 1 / 16 - TICK, 5 - 1 / 16],
    ]);
    expect(found(wallWith({ insertions: [4.5, 4] }))).toEqual([
      ['insertion-short', '1', 203.5, 4, 5 - 1 / 16],
    ]);
  });

  test('long: 1/16 in above, and one tick more', () => {
    expect(found(wallWith({ insertions: [5, 5 + 1 / 16] }))).toEqual([]);
    expect(found(wallWith({ insertions: [5, 5 + 1 / 16 + TICK] }))).toEqual([
      ['insertion-long', '1', 203.5, 5 + 1 / 16 + TICK, 5 + 1 / 16],
    ]);
  });

  test('one side short, the other long: both', () => {
    expect(found(wallWith({ insertions: [4, 5.5] })).map(([rule]) => rule)).toEqual([
      'insertion-short',
      'insertion-long',
    ]);
  });

  test('a hinge', () => {
    const hinge = (insertions: readonly number[]) =>
      wall({
        joints: [{ leg: '1', at: 240, kind: 'hinged', jumper: '8 AWG', insertions }],
        supports: [12, 72, 132, 192, 225, 255, 312, 372, 432, 468].map((at) => ({
          leg: '1',
          at,
          way: 'horizontal',
          hold: 'clamp',
        })),
      });
    expect(found(hinge([1.5 - 1 / 16, 1.5]))).toEqual([]);
    expect(found(hinge([1.5, 1.25]))).toEqual([['insertion-short', '1', 240, 1.25, 1.5 - 1 / 16]]);
  });
});

test('ends-butted: no opening in a sleeve, and one tick of it', () => {
  expect(found(wallWith({ insertions: [5.0625, 5.0625 - TICK] }))).toEqual([]);
  expect(found(wallWith({ insertions: [5.0625, 5.0625] }))).toEqual([
    ['ends-butted', '1', 203.5, null, null],
  ]);
});

test('hole-wrong: the large holes; the small ones, said or not', () => {
  expect(found(wallWith({ hole: 'small' }))).toEqual([]);
  expect(found(wallWith({ hole: 'large' }))).toEqual([['hole-wrong', '1', 203.5, null, null]]);
});

describe('cut-in-hole', () => {
  // Practice catalogue (training values): holes 9/16 in wide, centres at 6, 12, 18 in … from the end.
  // The first piece is 1/16 in shorter than its sleeve's place.
  const cut = (first: number) => wallWith({ at: first + 1 / 16 });
  test('half a hole from its centre, and one tick nearer: the channel end', () => {
    expect(found(cut(204 + 9 / 32))).toEqual([]);
    expect(found(cut(204 + 9 / 32 - TICK))).toEqual([['cut-in-hole', '1', 204 + 9 / 32 - TICK, null, null]]);
    expect(found(cut(204 - 9 / 32))).toEqual([]);
    expect(found(cut(204 - 9 / 32 + TICK))).toEqual([['cut-in-hole', '1', 204 - 9 / 32 + TICK, null, null]]);
  });

  test('a piece that is one whole length is not cut', () => {
    const whole = (length: number) => ({
      ...wall({ joints: [] }),
      legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length }],
      supports: [12, 72, 132, 192, 228].map((at) => ({ leg: '1', at, way: 'horizontal', hold: 'clamp' })),
    });
    expect(found(whole(240))).toEqual([]);
    expect(found({ ...whole(240), stock: 300 })).toEqual([['cut-in-hole', '1', 240, null, null]]);
    // Longer than the stock: the take-off refuses it, an inspection does not judge it.
    expect(found({ ...whole(240), stock: 200 })).toEqual([]);
  });

  test('at a fitting the channel goes on into its socket', () => {
    // Cut: 122.5 - 7 + 1.5 = 117 in; 119.5 - 7 + 1.5 = 114 in, where a hole is.
    const coming = (length: number) => {
      const run = corner();
      const [a, b] = run['legs'] as readonly Given[];
      return { ...run, legs: [{ ...a, length }, b] };
    };
    expect(found(coming(122.5))).toEqual([]);
    expect(found(coming(119.5))).toEqual([['cut-in-hole', 'a', 114, null, null]]);
  });
});

describe('gap-wrong', () => {
  test('butt: 1/8 in, and one tick more', () => {
    const butt = (gap: number) => wallWith({ kind: 'butt', at: 202, gap });
    expect(found(butt(1 / 8))).toEqual([]);
    expect(found(butt(1 / 8 + TICK))).toEqual([['gap-wrong', '1', 202, 1 / 8 + TICK, 1 / 8]]);
  });

  // NEMA VE 2 (from memory): 1 in · (110 - 60)/(110 - 10) = 1/2 in.
  const set = (gap: number, over: Given = {}) => outdoor(over, { splice: { gap } });
  test('expansion: 1/16 in from the wanted gap, and one tick more, either way', () => {
    expect(found(set(0.5 + 1 / 16))).toEqual([]);
    expect(found(set(0.5 + 1 / 16 + TICK))).toEqual([['gap-wrong', '1', 240, 0.5 + 1 / 16 + TICK, 0.5]]);
    expect(found(set(0.5 - 1 / 16))).toEqual([]);
    expect(found(set(0.5 - 1 / 16 - TICK))).toEqual([['gap-wrong', '1', 240, 0.5 - 1 / 16 - TICK, 0.5]]);
  });

  test('no temperatures, or outside their range: no finding', () => {
    expect(found(set(1, { temps: undefined }))).toEqual([]);
    expect(found(set(1, { temps: { lowF: 10, highF: 110, nowF: 111 } }))).toEqual([]);
    expect(found(set(1, { temps: { lowF: 10, highF: 110, nowF: 10 } }))).toEqual([]);
  });
});

describe('open-gap-long', () => {
  // NFPA 70-2020 and -2023 392.30(B)(3): 6 ft; in 2017 worded for individual conductors, so not judged.
  const end = (open: number, over: Given = {}) =>
    wall({ ends: [{ leg: '1', kind: 'instrument', joint: 'free', open, jumper: '8 AWG' }], ...over });
  test('from an end to its instrument: 72 in, and one tick more', () => {
    expect(found(end(72))).toEqual([]);
    expect(found(end(72 + TICK))).toEqual([['open-gap-long', '1', 480, 72 + TICK, 72]]);
    expect(found(end(72 + TICK, { limits: { edition: 2020 } }))).toHaveLength(1);
    expect(found(end(720, { limits: { edition: 2017 } }))).toEqual([]);
  });

  test('between two channels', () => {
    const gap = (wide: number) =>
      wall({
        joints: [{ leg: '1', at: 241, kind: 'gap', gap: wide, jumper: '8 AWG' }],
        supports: [12, 72, 132, 192, 288, 312, 372, 432, 468].map((at) => ({
          leg: '1',
          at,
          way: 'horizontal',
          hold: 'clamp',
        })),
      });
    expect(found(gap(72))).toEqual([]);
    expect(found(gap(72 + TICK))).toEqual([['open-gap-long', '1', 241, 72 + TICK, 72]]);
  });
});
