import { fromInches, type Ticks } from '../../../src/trade/length.ts';
import type { SticksGiven } from '../../../src/trade/sticks/types.ts';
import reference from '../../references/cutting-stock.json' with { type: 'json' };

/** One unit of the reference: a sixteenth of an inch. */
export const UNIT = fromInches(1 / 16);
export const units = (n: number): Ticks => (n * UNIT) as Ticks;

type Pairs = readonly (readonly (number | null)[])[];
const bars = (pairs: Pairs) =>
  pairs.map(([length, count]) => ({
    length: units(length ?? 0),
    ...(count === null ? {} : { count: count ?? 0 }),
  }));
const counted = (pairs: Pairs) =>
  pairs.map(([length, count]) => ({ length: units(length ?? 0), count: count ?? 0 }));

export interface Published {
  readonly id: string;
  readonly bins: number;
  readonly source: string;
  readonly given: SticksGiven;
}

/** Published instances, as sticks without kerf. */
export const published: readonly Published[] = reference.published.map(
  ({ id, capacity, items, bins, source }) => ({
    id,
    bins,
    source,
    given: { stock: [{ length: units(capacity) }], pieces: counted(items), kerf: units(0) },
  }),
);

interface Row {
  readonly stock: Pairs;
  readonly offcuts: Pairs;
  readonly items: Pairs;
  readonly kerf: number;
  readonly minReusable: number;
}
const givenOf = ({ stock, offcuts, items, kerf, minReusable }: Row): SticksGiven => ({
  stock: bars(stock),
  offcuts: counted(offcuts),
  pieces: counted(items),
  kerf: units(kerf),
  minReusable: units(minReusable),
});

export const tray = reference.tray.map((row) => ({ ...row, given: givenOf(row) }));
export const ties = reference.ties.map((row) => ({ ...row, given: givenOf(row) }));
