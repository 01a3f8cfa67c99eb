/** A joint of a run with everything filled in from the catalogue. */
import type { Fault } from '../trade/given.ts';
import { formatLength, type Ticks, ticks } from '../trade/length.ts';
import type { Catalogue, Plate, Sleeve, Tray } from './catalogue.ts';
import type { ResolvedJoint } from './straight.ts';
import type { Joint } from './types.ts';

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
export function placeSplice(name: string, at: Ticks, splice: Splice, item: string | null): ResolvedJoint {
  const opening = openingOf(splice);
  const [before, behind] = halves(opening);
  const channelEnds: Pair<Ticks> = [ticks(at - before), ticks(at + behind)];
  const common = { name, at, item, length: splice.length, opening, channelEnds };
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

/** A joint of a kind that is built so far; `notYet` refuses a run with any other. */
export type BuiltJoint = Joint & { readonly kind: keyof typeof ITEM_KIND };
export const isBuilt = (joint: Joint): joint is BuiltJoint => joint.kind in ITEM_KIND;

const ITEM_KIND = { socketed: 'sleeve', butt: 'plate' } as const;

/**
 * Fills in a joint of kind `socketed` or `butt`: the item, insertions and gap that it leaves out.
 *
 * @param field  path of the joint, `joints[2]`
 * @returns      the joint, or every fault of it
 */
export function resolveJoint(
  joint: BuiltJoint,
  name: string,
  field: string,
  tray: Tray,
  catalogue: Catalogue,
): ResolvedJoint | { readonly faults: readonly Fault[] } {
  const faults: Fault[] = [];
  const id = joint.item ?? tray.own[joint.kind];
  const item = catalogue.get(id);
  const wanted = ITEM_KIND[joint.kind];
  const bad = (part: string, value: unknown, message: string, todo: string) =>
    faults.push({ field: `${field}.${part}`, value, message, todo });

  if (item === undefined) {
    bad('item', id, 'the catalogue has no such item', `name a ${wanted} of the catalogue, or leave it out`);
  } else if (item.kind !== wanted) {
    bad(
      'item',
      id,
      `a ${joint.kind} joint is made with a ${wanted}, and this is a ${item.kind}`,
      `name a ${wanted}`,
    );
  } else if (item.width !== tray.width) {
    bad('item', id, 'the item is not of the width it stands in', `name one of the width of ${tray.id}`);
  }
  if (joint.kind === 'butt' && joint.insertions !== undefined) {
    bad(
      'insertions',
      joint.insertions,
      'nothing goes into a butt joint',
      'leave it out, or make it socketed',
    );
  }
  if (joint.kind === 'socketed' && joint.gap !== undefined) {
    bad('gap', joint.gap, 'the opening of a sleeve follows from its insertions', 'give insertions instead');
  }
  if (faults.length > 0) return { faults };

  const part = item as Sleeve | Plate;
  if (part.kind === 'plate') {
    return placeSplice(name, joint.at, { kind: 'butt', length: part.length, gap: joint.gap ?? NONE }, id);
  }
  const insertions = joint.insertions ?? [part.insertion, part.insertion];
  if (insertions[0] + insertions[1] > part.length) {
    bad(
      'insertions',
      insertions,
      `together more than the sleeve, which is ${formatLength(part.length)} long`,
      'let both ends together go in no farther than its length',
    );
    return { faults };
  }
  return placeSplice(name, joint.at, { kind: 'socketed', length: part.length, insertions }, id);
}
