/**
 * The best filling of a bar: which pieces, each taken at most as often as it is wanted, are worth most together.
 * One table over every room from 0 upwards serves all bars at once. Values are not negative; whole values below 2^53
 * are summed exactly.
 */
import type { Pattern } from './plan.ts';

export interface Knapsack {
  /** Greatest value that goes into a room: `best[room]`. */
  readonly best: Float64Array;
  /** A filling of that value. */
  filling(room: number): Pattern;
}

/** Bundles of 1, 2, 4 … pieces of a kind that add up to its count. */
interface Bundle {
  readonly kind: number;
  readonly times: number;
  readonly row: Uint8Array;
}

/** Keeps its tables from call to call. */
export class KnapsackTable {
  readonly #room: number;
  /** Rooms gone through so far. */
  work = 0;
  readonly #best: Float64Array;
  readonly #rows: Uint8Array[] = [];

  /** @param room  the largest that will be asked for */
  constructor(room: number) {
    this.#room = room;
    this.#best = new Float64Array(room + 1);
  }

  /**
   * @param sizes  above 0
   * @param counts  how often a kind may be taken at most
   */
  fill(
    sizes: ArrayLike<number>,
    counts: ArrayLike<number>,
    values: ArrayLike<number>,
    room = this.#room,
  ): Knapsack {
    const best = this.#best;
    best.fill(0, 0, room + 1);
    const bundles: Bundle[] = [];
    for (let kind = 0; kind < sizes.length; kind++) {
      const size = sizes[kind] as number;
      const value = values[kind] as number;
      if (!(value > 0) || size > room) continue;
      let left = Math.min(counts[kind] as number, Math.floor(room / size));
      for (let times = 1; left > 0; times *= 2) {
        const taken = Math.min(times, left);
        left -= taken;
        bundles.push({
          kind,
          times: taken,
          row: this.#take(bundles.length, size * taken, value * taken, room),
        });
      }
    }
    return { best, filling: (asked) => trace(bundles, sizes, asked) };
  }

  #take(index: number, size: number, value: number, room: number): Uint8Array {
    const best = this.#best;
    const row = this.#rows[index] ?? new Uint8Array(this.#room + 1);
    this.#rows[index] = row;
    this.work += room;
    row.fill(0, 0, Math.min(size, room + 1));
    for (let c = room; c >= size; c--) {
      const with1 = (best[c - size] as number) + value;
      if (with1 > (best[c] as number)) {
        best[c] = with1;
        row[c] = 1;
      } else row[c] = 0;
    }
    return row;
  }
}

function trace(bundles: readonly Bundle[], sizes: ArrayLike<number>, room: number): Pattern {
  const counts = new Map<number, number>();
  let c = room;
  for (let k = bundles.length - 1; k >= 0; k--) {
    const { kind, times, row } = bundles[k] as Bundle;
    if (row[c] !== 1) continue;
    counts.set(kind, (counts.get(kind) ?? 0) + times);
    c -= times * (sizes[kind] as number);
  }
  return [...counts].sort(([a], [b]) => a - b).flat();
}
