/** The rack of remnants: what lies on it, what a plan takes off it and puts on it. */
import { fromInches, type Ticks } from '../../trade/length.ts';
import type { CutLength } from '../../trade/sticks/types.ts';

/** So many remnants of one length. */
export interface Remnant {
  /** In ticks. */
  readonly length: Ticks;
  readonly count: number;
}

export type Rack = readonly Remnant[];

/** Longest first, one entry to a length, none that there is nothing of. */
export function tidyRack(rack: Rack): Rack {
  const counts = new Map<Ticks, number>();
  for (const { length, count } of rack) counts.set(length, (counts.get(length) ?? 0) + count);
  return [...counts]
    .filter(([, count]) => count > 0)
    .map(([length, count]) => ({ length, count }))
    .sort((a, b) => b.length - a.length);
}

export const onRack = (rack: Rack, length: Ticks, count = 1): Rack => tidyRack([...rack, { length, count }]);

/** Takes off at most as many as there are. */
export const offRack = (rack: Rack, length: Ticks, count = 1): Rack =>
  tidyRack(
    rack.map((one) => (one.length === length ? { ...one, count: Math.max(0, one.count - count) } : one)),
  );

/** What a plan leaves that is worth keeping, longest first. */
export const leftOvers = (lengths: readonly CutLength[], least: Ticks): Rack =>
  tidyRack(
    lengths
      .map(({ leftIn }) => ({ length: fromInches(leftIn), count: 1 }))
      .filter(({ length }) => length > 0 && length >= least),
  );

/** Remnants that a plan cuts into, longest first. */
export const usedUp = (lengths: readonly CutLength[]): Rack =>
  tidyRack(
    lengths.filter(({ offcut }) => offcut).map(({ fromIn }) => ({ length: fromInches(fromIn), count: 1 })),
  );

/** The rack when the plan has been cut: what it used is off, what it left that is worth keeping is on. */
export const cutFrom = (rack: Rack, lengths: readonly CutLength[], least: Ticks): Rack =>
  tidyRack([
    ...usedUp(lengths).reduce((left, { length, count }) => offRack(left, length, count), rack),
    ...leftOvers(lengths, least),
  ]);
