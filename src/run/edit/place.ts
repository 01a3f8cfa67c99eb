/** Where a leg can be added: how the channel lies at the end of the leg before it, and what already stands there. */
import type { Catalogue, Tray } from '../catalogue.ts';
import { channelsOf } from '../channels.ts';
import { framesOf } from '../frames.ts';
import type { FittingItem, Frame, WayOut } from '../resolved.ts';
import { isPlumb } from '../settle.ts';
import { type Bad, type Node, treeOf } from '../tree.ts';
import type { Run } from '../types.ts';
import { angleDeg, cross, type Vec } from '../vector.ts';

/** The end of a leg. */
export interface Place {
  readonly leg: string;
  /** How the channel may lie there: several where a plumb first leg has not turned yet. */
  readonly frames: readonly Frame[];
  readonly tray: Tray;
  /** The tee or cross that stands there already. */
  readonly stands: FittingItem | null;
  /** Ways out of it that are taken. */
  readonly taken: readonly WayOut[];
  /** Nothing more can leave here. */
  readonly full: boolean;
  readonly catalogue: Catalogue;
}

const NONE: Bad = () => undefined;
const LEVEL: readonly Vec[] = [
  [0, 1, 0],
  [1, 0, 0],
  [0, -1, 0],
  [-1, 0, 0],
];

/** The ends of all legs of a run that hangs together so far; a leg that does not lie as it says has none. */
export function placesOf(run: Pick<Run, 'tray' | 'legs'>, catalogue: Catalogue): readonly Place[] {
  const found = catalogue.get(run.tray);
  if (found?.kind !== 'tray' || run.legs.length === 0) return [];
  const { order } = treeOf(run.legs, catalogue, NONE);
  const placed = framesOf(order, NONE);
  const trays = channelsOf(order, found, catalogue, NONE);
  const [root] = order;
  const rootAlong = root === undefined ? undefined : placed.get(root)?.frame.along;
  // Nothing has turned yet: the open side of a plumb run is still free.
  const free =
    rootAlong !== undefined &&
    isPlumb(rootAlong) &&
    order.every((node) => {
      const along = placed.get(node)?.frame.along;
      return along !== undefined && angleDeg(along, rootAlong) < 1;
    });
  return order.flatMap((node): readonly Place[] => {
    const frame = placed.get(node)?.frame;
    const tray = trays.get(node);
    if (frame === undefined || tray === null || tray === undefined) return [];
    const frames = free
      ? LEVEL.map((open) => ({ along: frame.along, open, left: cross(open, frame.along) }))
      : [frame];
    return [{ leg: node.given.id, frames, tray, ...standing(node), catalogue }];
  });
}

function standing({ children }: Node): Pick<Place, 'stands' | 'taken' | 'full'> {
  const stands = children.find(({ item }) => item !== null)?.item ?? null;
  const taken = children.map(({ way }) => way);
  const room = stands?.kind === 'cross' ? 3 : stands?.kind === 'tee' ? 2 : 1;
  return { stands, taken, full: children.length >= room };
}
