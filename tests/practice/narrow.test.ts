/** A sheet that narrows what a family draws: only within it, and every draw keeps to it. */
import { describe, expect, test } from 'vitest';
import { canNarrow, narrowed, narrowFaults, sizeOf } from '../../src/practice/narrow.ts';
import { type Sheet, sheetDraws } from '../../src/practice/sheet.ts';
import { readLength } from '../../src/trade/length.ts';
import { families, family, practice } from './means.ts';

const cut = family('cut-with-insertion');
const lengths = (from: string, to: string, step = '1/16') => ({
  length: { from: readLength(from), to: readLength(to), step: readLength(step) },
});

describe('what may be narrowed', () => {
  test.each([
    ['inside', { distance: lengths(`6'`, `12'`) }, []],
    ['the whole of it', { distance: lengths(`2'-6"`, `17'-6"`) }, []],
    ['in coarser steps', { distance: lengths(`6'`, `12'`, '1/2') }, []],
    ['one word', { width: { choice: ['card-4'] } }, []],
    ['below', { distance: lengths(`2'`, `12'`) }, ['distance']],
    ['above', { distance: lengths(`6'`, `18'`) }, ['distance']],
    ['the wrong way round', { distance: lengths(`12'`, `6'`) }, ['distance']],
    ['in finer steps', { distance: lengths(`6'`, `12'`, '1/64') }, ['distance']],
    ['off the steps', { distance: lengths('72 1/32', `12'`) }, ['distance']],
    ['another kind', { distance: { whole: { from: 1, to: 2 } } }, ['distance']],
    ['a word it never draws', { width: { choice: ['card-4', 'card-8'] } }, ['width']],
    ['a name it has not', { colour: { choice: ['red'] } }, ['colour']],
  ])('%s', (_, narrow, wanted) => {
    const faults = narrowFaults(cut, narrow);
    expect(faults.map(({ field }) => field)).toEqual(wanted);
    for (const { todo } of faults) expect(todo.split(' ').length).toBeGreaterThan(2);
  });

  test('of every family, its own ranges narrow nothing', () => {
    for (const [id, { parameters }] of families) {
      const all = Object.fromEntries(Object.entries(parameters).filter(([, one]) => canNarrow(one)));
      expect(narrowFaults(family(id), all), id).toEqual([]);
    }
  });

  test('how many values are left', () => {
    // 6 ft of sixteenths, both ends included.
    expect(sizeOf(lengths(`6'`, `12'`))).toBe(72 * 16 + 1);
    expect(sizeOf({ decimal: { from: 0.3, to: 0.9, step: 0.1 } })).toBe(7);
    expect(sizeOf({ choice: ['a', 'a', 'b'] })).toBe(2);
    expect(sizeOf({ whole: { from: 3, to: 3 } })).toBe(1);
  });
});

test('draws of a sheet keep to what it narrows', () => {
  const sheet: Sheet = {
    id: 'short-pieces',
    number: 900,
    title: { en: 'Short pieces' },
    tasks: ['T05'],
    families: [
      { family: 'cut-with-insertion', draws: 2 },
      {
        family: 'cut-with-insertion',
        draws: 3,
        narrow: { distance: lengths(`6'`, `7'`), width: { choice: ['card-6'] } },
      },
    ],
    rule: { need: 5, of: 5 },
  };
  let outside = 0;
  for (let bench = 1; bench <= 20; bench++)
    for (const { place, draw } of sheetDraws(sheet, bench, practice)) {
      const { distance, width } = draw.facts;
      const at = distance?.kind === 'length' ? distance.ticks : Number.NaN;
      const inside =
        at >= readLength(`6'`) &&
        at <= readLength(`7'`) &&
        width?.kind === 'word' &&
        width.value === 'card-6';
      if (place > 2) expect(inside).toBe(true);
      else if (!inside) outside++;
    }
  // The first two are as the family draws.
  expect(outside).toBeGreaterThan(20);
  expect(narrowed(cut, undefined)).toBe(cut);
});
