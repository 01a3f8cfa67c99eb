/** What a piece costs, when the cheapest lay-out of a line is sought. */

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
