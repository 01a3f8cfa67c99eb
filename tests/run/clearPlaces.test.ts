import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutAtHole } from '../../src/run/clearPlaces.ts';
import { cutOnHole } from '../../src/run/hole.ts';
import { formatLength, readLength as L, type Ticks, ticks } from '../../src/trade/length.ts';
import { item } from './practice.ts';

const holes = item('card-4', 'tray').webHoles;
const stock = L(`20'`);
const text = (length: Ticks | null) => (length === null ? null : formatLength(length, 64));

// Holes 9/16 wide at 6, 12, 18 … in (training values), so 9/32 + 9/16 = 27/32 to each side is blocked.
test.each([
  ['42', 'on', `3'-5 5/32"`, `3'-6 27/32"`, 'hand: 42 less and more 27/32'],
  ['42 1/4', 'on', `3'-5 5/32"`, `3'-6 27/32"`, 'hand: 1/4 is less than 9/32'],
  ['42 9/32', 'near', `3'-5 5/32"`, `3'-6 27/32"`, 'hand: beside the hole, in its clearance'],
  ['42 53/64', 'near', `3'-5 5/32"`, `3'-6 27/32"`, 'hand: 1/64 within the clearance'],
  ['234', 'on', `19'-5 5/32"`, `19'-6 27/32"`, 'hand: the last hole'],
])('a cut at %s falls %s a hole; clear at %s and %s (%s)', (cut, falls, shorter, longer) => {
  const found = cutAtHole(L(cut), holes, stock);
  expect(found?.falls).toBe(falls);
  expect([text(found?.shorter ?? null), text(found?.longer ?? null)]).toEqual([shorter, longer]);
  expect(found?.steps.map(({ say }) => say)).toContain('mark.longer');
});

test.each([
  ['42 27/32', 'hand: just clear'],
  ['41 5/32', 'hand: just clear'],
  ['43 1/8', 'hand: 1 1/8 away'],
  ['239 63/64', 'hand: no hole at the very end of the stock'],
  [`20'`, 'the end of the stock is not cut'],
])('a cut at %s is clear (%s)', (cut) => {
  expect(cutAtHole(L(cut), holes, stock)).toBeNull();
});

test('no place is offered beyond the length, and the working does not name one', () => {
  const found = cutAtHole(L('42'), holes, L('42 1/2'));
  expect(found?.longer).toBeNull();
  expect(text(found?.shorter ?? null)).toBe(`3'-5 5/32"`);
  const says = found?.steps.map(({ say }) => say) ?? [];
  expect(says).toContain('mark.noLonger');
  expect(says).not.toContain('mark.longer');
  expect(says.filter((say) => say === 'mark.tape')).toHaveLength(1);
});

test('a place that is offered is clear itself, and whatever is on a hole is found', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: stock - 1 }), (n) => {
      const cut = ticks(n);
      const found = cutAtHole(cut, holes, stock);
      if (cutOnHole(cut, holes, stock)) expect(found?.falls).toBe('on');
      for (const place of [found?.shorter, found?.longer]) {
        if (place != null) expect(cutAtHole(place, holes, stock)).toBeNull();
      }
    }),
  );
});
