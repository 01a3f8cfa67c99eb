/** Which filling of a bar is worth most at the prices that a linear programme sets on the pieces. */
import { bestFilling } from './branchKnapsack.ts';
import { type Knapsack, KnapsackTable } from './knapsack.ts';
import type { Pattern } from './plan.ts';

export interface Priced {
  readonly value: number;
  /** Kinds by their place in the lists that were priced. */
  readonly pattern: Pattern;
}

const MOST_NODES = 400_000;

/** Fillings handed out for one bar at most. */
const MOST_FILLINGS = 12;
/** The same where one table takes long. */
const MANY_FILLINGS = 60;
const LONG_ROOM = 50_000;
export interface PricedBars {
  /** By room. */
  readonly fillings: readonly (readonly Priced[])[];
  /** Whether the first of each is the best there is. */
  readonly exact: boolean;
}

/** Coarser units that are tried first, as long as a bar has `COARSE_ROOM` of them. */
const GRAINS = [25, 5, 1];
const COARSE_ROOM = 3000;
/** Rooms of more units than this have no table. */
const LARGEST_TABLE = 4_000_000;

export class Pricer {
  readonly #room: number;
  /** Numbers gone through in linear programmes. */
  simplexWork = 0;
  #table: KnapsackTable | undefined;

  /** @param room  the largest of all bars */
  constructor(room: number) {
    this.#room = room;
  }

  /** Numbers gone through so far, a measure of time that is the same on every machine. */
  get work(): number {
    return this.simplexWork + (this.#table?.work ?? 0);
  }

  /** Undefined when the bars have too many units for one. */
  get table(): KnapsackTable | undefined {
    if (this.#room <= LARGEST_TABLE) this.#table ??= new KnapsackTable(this.#room);
    return this.#table;
  }

  /** The greatest whole weight that goes into each of `rooms`; undefined when that is not known exactly. */
  heaviest(
    sizes: readonly number[],
    counts: readonly number[],
    weights: readonly number[],
    rooms: readonly number[],
  ): readonly number[] | undefined {
    if (this.table !== undefined) {
      const { best } = this.table.fill(sizes, counts, weights);
      return rooms.map((room) => best[room] as number);
    }
    const fillings = rooms.map((room) => bestFilling(sizes, counts, weights, room, 0, MOST_NODES));
    return fillings.every((f) => f.exact) ? fillings.map((f) => f.value) : undefined;
  }

  /**
   * For each of `rooms` the fillings worth most, the best first, as far as they are worth more than `least`.
   * @param least  by room
   * @param rough  does without the last digit where bars have very many units: something worth more may be missed
   */
  price(
    sizes: ArrayLike<number>,
    counts: ArrayLike<number>,
    values: ArrayLike<number>,
    rooms: readonly number[],
    least: readonly number[],
    rough = false,
  ): PricedBars {
    if (this.table === undefined)
      return {
        exact: false,
        fillings: rooms.map((room, i) => {
          const filling = bestFilling(sizes, counts, values, room, least[i] as number, MOST_NODES);
          return filling.value > (least[i] as number) ? [filling] : [];
        }),
      };
    const largest = Math.max(...rooms);
    for (const grain of GRAINS) {
      if (grain > 1 && largest / grain < COARSE_ROOM) continue;
      // Sizes up and rooms down: what fits in coarse units fits, but the best may be missed.
      const coarse = grain === 1 ? sizes : Float64Array.from(sizes, (s) => Math.ceil(s / grain));
      const coarseRooms = rooms.map((room) => Math.floor(room / grain));
      const { best, filling } = this.table.fill(coarse, counts, values, Math.max(...coarseRooms));
      const found = coarseRooms.map((room, i) =>
        several(coarse, counts, values, { best, filling }, room, least[i] as number),
      );
      if (grain === 1 || rough || found.some((f) => f.length > 0))
        return { fillings: found, exact: grain === 1 };
    }
    return { fillings: [], exact: false };
  }
}

/** The best filling, and the best that have one more of some kind than the best for the rest of the bar. */
function several(
  sizes: ArrayLike<number>,
  counts: ArrayLike<number>,
  values: ArrayLike<number>,
  { best, filling }: Knapsack,
  room: number,
  least: number,
): readonly Priced[] {
  const top = best[room] as number;
  if (top <= least) return [];
  const found: Priced[] = [{ value: top, pattern: filling(room) }];
  const others: (readonly [value: number, kind: number])[] = [];
  for (let kind = 0; kind < sizes.length; kind++) {
    const rest = room - (sizes[kind] as number);
    const value = rest < 0 ? 0 : (best[rest] as number) + (values[kind] as number);
    if (value > least && value < top - 1e-9) others.push([value, kind]);
  }
  others.sort((a, b) => b[0] - a[0] || a[1] - b[1]);
  for (const [value, kind] of others.slice(0, (room < LONG_ROOM ? MOST_FILLINGS : MANY_FILLINGS) - 1)) {
    const pattern = withOne(filling(room - (sizes[kind] as number)), kind, counts);
    if (pattern !== undefined) found.push({ value, pattern });
  }
  return found;
}

function withOne(pattern: Pattern, kind: number, counts: ArrayLike<number>): Pattern | undefined {
  const pairs = new Map<number, number>();
  for (let k = 0; k < pattern.length; k += 2) pairs.set(pattern[k] as number, pattern[k + 1] as number);
  const times = (pairs.get(kind) ?? 0) + 1;
  if (times > (counts[kind] as number)) return undefined;
  pairs.set(kind, times);
  return [...pairs].sort(([a], [b]) => a - b).flat();
}
