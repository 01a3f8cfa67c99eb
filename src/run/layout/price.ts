/** What a piece costs, when the cheapest lay-out of a line is sought; and prices that bound the stock. */
import type { Stock } from './pack.ts';

/** Whole numbers throughout, so that sums are exact. Dearer the longer: `upTo` and `cost` rise. */
export interface Price {
  readonly steps: readonly {
    /** The step holds pieces up to and with this length; the last one ends at the stock. */
    readonly upTo: number;
    readonly cost: number;
  }[];
}

/** Cost of a piece; none is longer than the last step. */
export function costOf({ steps }: Price, cut: number): number {
  for (const { upTo, cost } of steps) if (cut <= upTo) return cost;
  throw new RangeError(`a piece of ${cut} is beyond the last step`);
}

/**
 * A price with the most that the pieces of one stock length can cost. Whatever the lay-out, its pieces take as many
 * stock lengths as their cost holds `most`.
 */
export interface Bounding {
  readonly price: Price;
  readonly most: number;
}

/**
 * A piece of more than t parts in `parts`, its cut counted, costs t. Fekete and Schepers, Mathematical Programming 91
 * (2001): with v its share of the stock, ⌈parts·v⌉ − 1, and all pieces of one length together parts − 1 at most.
 */
export function byParts(parts: number, { length, kerf }: Stock): Bounding {
  const steps = Array.from({ length: parts }, (_, t) => ({
    upTo: Math.floor(((t + 1) * (length + kerf)) / parts) - kerf,
    cost: t,
  }));
  return { price: { steps: steps.filter(({ upTo }) => upTo > 0) }, most: parts - 1 };
}

/** Every piece costs the same: the fewest pieces. */
export const byPiece = ({ length }: Stock, cost = 1): Price => ({ steps: [{ upTo: length, cost }] });

/** From two to six steps at whole 1/240 of the stock, dearer than their length or cheaper, more or less. */
export function byChance(chance: () => number, { length }: Stock): Price {
  const whole = (from: number, to: number) => from + Math.floor(chance() * (to - from + 1));
  const tops = Array.from({ length: whole(1, 5) }, () => whole(12, 238)).sort((a, b) => a - b);
  const bend = chance() * 1.5 - 0.5;
  const steps: { upTo: number; cost: number }[] = [];
  let cost = 0;
  for (const top of new Set([...tops, 240])) {
    const share = top / 240;
    cost = Math.max(cost, Math.round(1000 * share * (1 - bend + bend * share) * (0.8 + 0.4 * chance())));
    steps.push({ upTo: Math.floor((top * length) / 240), cost });
  }
  return { steps };
}
