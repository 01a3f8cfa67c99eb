import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutOnHole } from '../../src/run/hole.ts';
import { readLength as L, ticks } from '../../src/trade/length.ts';
import { item } from './practice.ts';

const holes = item('card-4', 'tray').webHoles;
const stock = L(`20'`);

// Holes 9/16 wide at 6, 12, 18 … in: training values. The rule is open: half a width away is off the hole.
test.each([
  ['43 1/8', false, 'hand: 42 is 1 1/8 away'],
  ['42', true, 'hand: on the centre'],
  ['42 1/4', true, 'hand: 1/4 is less than 9/32'],
  ['42 9/32', false, 'hand: just half a hole away'],
  ['41 47/64', true, 'hand: 9/32 less 1/64'],
  ['41 23/32', false, 'hand: half a hole before it'],
  ['5/16', false, 'hand: no hole before the first at 6'],
  ['234', true, 'hand: the last hole, 6 from the other end'],
  [`20'`, false, "the stock's own end is not cut"],
])('a cut at %s: on a hole %s (%s)', (cut, on) => {
  expect(cutOnHole(L(cut), holes, stock)).toBe(on);
});

test('as counting the holes one by one', () => {
  const centres = Array.from({ length: 39 }, (_, k) => holes.first + k * holes.pitch);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: stock - 1 }), (cut) => {
      expect(cutOnHole(ticks(cut), holes, stock)).toBe(
        centres.some((c) => Math.abs(c - cut) < holes.width / 2),
      );
    }),
  );
});
