import fc from 'fast-check';
import { ticks } from '../../../src/trade/length.ts';
import type { SticksGiven } from '../../../src/trade/sticks/types.ts';

interface Range {
  readonly kinds: number;
  readonly each: number;
  /** Longest stock and piece, in sixteenths. */
  readonly stock: number;
  readonly piece: number;
}

/** Jobs with one or two stock lengths, off-cuts, kerf, limited counts; every piece fits on some bar listed. */
export function randomGiven({ kinds, each, stock, piece }: Range): fc.Arbitrary<SticksGiven> {
  const sixteenths = (n: number) => ticks(n * 508);
  const length = (from: number, to: number) => fc.integer({ min: from, max: to }).map(sixteenths);
  return fc
    .record({
      stock: fc.array(
        fc.record({
          length: length(Math.ceil(stock / 3), stock),
          count: fc.option(fc.nat(each), { nil: undefined }),
        }),
        { minLength: 1, maxLength: 2 },
      ),
      offcuts: fc.array(fc.record({ length: length(3, stock - 5), count: fc.nat(2) }), { maxLength: 2 }),
      pieces: fc.array(fc.record({ length: length(3, piece), count: fc.integer({ min: 1, max: each }) }), {
        minLength: 1,
        maxLength: kinds,
      }),
      kerf: length(0, 2),
      minReusable: length(0, 20),
    })
    .filter(({ stock, offcuts, pieces }) =>
      pieces.every((p) => [...stock, ...offcuts].some((b) => b.length >= p.length)),
    );
}
