/** Rigid splices placed on a leg, whether named by a catalogue or by measures alone. */
import { type Ticks, ticks } from '../trade/length.ts';
import type { RigidJoint } from './straight.ts';

type Pair<T> = readonly [T, T];
const NONE = ticks(0);

/** The two halves of a length; an odd tick goes to the second, so that they add up. */
export function halves(length: Ticks): Pair<Ticks> {
  const first = ticks(Math.floor(length / 2));
  return [first, ticks(length - first)];
}

/** What a joint is made with, whether named by a catalogue or by measures alone. */
export type Splice =
  | { readonly kind: 'socketed'; readonly length: Ticks; readonly insertions: Pair<Ticks> }
  | { readonly kind: 'butt'; readonly length: Ticks; readonly gap: Ticks };

/** Space left between the two channel ends. */
export function openingOf(splice: Splice): Ticks {
  return splice.kind === 'butt'
    ? splice.gap
    : ticks(splice.length - splice.insertions[0] - splice.insertions[1]);
}

/**
 * Places a splice on a leg.
 *
 * @param at  middle of the opening, from the leg's first working point
 */
export function placeSplice(name: string, at: Ticks, splice: Splice, item: string | null): RigidJoint {
  const opening = openingOf(splice);
  const [before, behind] = halves(opening);
  const channelEnds: Pair<Ticks> = [ticks(at - before), ticks(at + behind)];
  const common = { name, at, item, length: splice.length, opening, channelEnds, given: null, field: null };
  if (splice.kind === 'butt') {
    return {
      ...common,
      kind: 'butt',
      insertions: [NONE, NONE],
      takeOuts: [NONE, NONE],
      shares: [before, behind],
      edges: channelEnds,
    };
  }
  const [first, second] = splice.insertions;
  const takeOuts: Pair<Ticks> = [ticks(first + before), ticks(second + behind)];
  return {
    ...common,
    kind: 'socketed',
    insertions: splice.insertions,
    takeOuts,
    shares: [NONE, NONE],
    edges: [ticks(at - takeOuts[0]), ticks(at + takeOuts[1])],
  };
}
