/** Where the open side of a first leg may look. */
import type { Turn } from './resolved.ts';
import { edgeOpens, flatOpen, isPlumb, SAME_DEG } from './settle.ts';
import type { Node } from './tree.ts';
import { angleDeg, cross, directionOf, minus, NORTH, square, type Vec } from './vector.ts';

/**
 * Up on a level leg, level to either side on edge. On a plumb leg it is free: then every way that the first fitting
 * which turns allows, in a fixed order; north where nothing turns.
 */
export function opensOf(root: Node): readonly Vec[] {
  const along = directionOf(root.given.dir);
  if (!isPlumb(along)) return root.given.onEdge === true ? edgeOpens(along) : [flatOpen(along)];
  const ahead = [root];
  for (let node = ahead.pop(); node !== undefined; node = ahead.pop()) {
    for (const child of node.children) {
      const to = directionOf(child.given.dir);
      const off = angleDeg(along, to);
      // Straight on, or wrong: it says nothing of the open side.
      if (off <= SAME_DEG) ahead.push(child);
      else if (off < 180 - SAME_DEG) {
        const opens = turnsOf(child).map((turn) => openFor(turn, along, square(to, along)));
        if (opens.length > 0) return opens;
      }
    }
  }
  return [square(NORTH, along)];
}

function turnsOf({ item, way }: Node): readonly Exclude<Turn, 'none'>[] {
  if (item?.kind === 'hinge') return ['inside', 'outside', 'left', 'right'];
  if (item?.kind === 'elbow') return item.turn === 'flat' ? ['left', 'right'] : [item.turn];
  return (item?.kind === 'tee' || item?.kind === 'cross') && way !== 'straight' ? [way] : [];
}

/** The open side of a leg that turns towards `side`, at right angles to it. */
function openFor(turn: Exclude<Turn, 'none'>, along: Vec, side: Vec): Vec {
  if (turn === 'inside') return side;
  if (turn === 'outside') return minus(side);
  const open = cross(along, side);
  return turn === 'left' ? open : minus(open);
}
