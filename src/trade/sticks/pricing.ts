/** Which filling of a bar is worth most at the prices that a linear programme sets on the pieces. */
import { bestFilling } from './branchKnapsack.ts';
import { KnapsackTable } from './knapsack.ts';
import type { Pattern } from './plan.ts';

export interface Priced {
  readonly value: number;
  /** Kinds by their place in the lists that were priced. */
  readonly pattern: Pattern;
}

/** Beyond this many steps of a table the branching search is tried first. */
const LARGE_TABLE = 3_000_000;
const MOST_NODES = 400_000;

export class Pricer {
  readonly table: KnapsackTable;

  /** @param room  the largest of all bars */
  constructor(room: number) {
    this.table = new KnapsackTable(room);
  }

  /** The best filling for each of `rooms`. */
  price(
    sizes: ArrayLike<number>,
    counts: ArrayLike<number>,
    values: ArrayLike<number>,
    rooms: readonly number[],
  ): readonly Priced[] {
    const largest = Math.max(...rooms);
    if (largest * sizes.length > LARGE_TABLE) {
      const fillings = rooms.map((room) => bestFilling(sizes, counts, values, room, 0, MOST_NODES));
      if (fillings.every((f) => f.exact)) return fillings;
    }
    const { best, filling } = this.table.fill(sizes, counts, values, largest);
    return rooms.map((room) => ({ value: best[room] as number, pattern: filling(room) }));
  }
}
