/**
 * How the channel of each leg lies: the open side is carried along through the fittings, and `dir` and `onEdge` must
 * agree with where they bring it.
 */
import { opensOf } from './opens.ts';
import type { Frame, Turn } from './resolved.ts';
import { isPlumb, type Lies, settle, type Wrong } from './settle.ts';
import type { Bad, Node } from './tree.ts';
import { turnInto } from './turns.ts';
import { cross, directionOf, type Vec } from './vector.ts';

export interface Placed {
  readonly frame: Frame;
  readonly plumb: boolean;
  /** How the leg leaves the fitting before it, and by what angle. */
  readonly turn: Turn;
  readonly turnDeg: number;
}

interface Attempt {
  readonly placed: Map<Node, Placed>;
  /** Legs that do not lie where their fitting brings them; what follows from each is judged from it anew. */
  readonly wrong: { readonly node: Node; readonly wrong: Wrong | null }[];
}

/**
 * Places every leg. A first leg whose open side may lie several ways is tried each way that its first turn allows;
 * the way with the fewest faults stands.
 */
export function framesOf(order: readonly Node[], bad: Bad): ReadonlyMap<Node, Placed> {
  const placed = new Map<Node, Placed>();
  const roots = order.filter(({ parent }) => parent === null);
  for (const root of roots) {
    const { placed: legs, wrong } = bestOf(root);
    for (const [node, one] of legs) placed.set(node, one);
    for (const { node, wrong: why } of wrong) {
      roots.push(node);
      if (why !== null) bad(`${node.field}.${why.part}`, node.given[why.part], why.message, why.todo);
    }
  }
  return placed;
}

function bestOf(root: Node): Attempt {
  let best: Attempt | null = null;
  for (const open of opensOf(root)) {
    const attempt = walk(root, open);
    if (best === null || faultsIn(attempt) < faultsIn(best)) best = attempt;
    if (faultsIn(best) === 0) return best;
  }
  if (best === null) throw new Error('a leg lies some way or other');
  return best;
}

const faultsIn = ({ wrong }: Attempt) => wrong.filter((w) => w.wrong !== null).length;

function walk(root: Node, open: Vec): Attempt {
  const along = directionOf(root.given.dir);
  const placed = new Map<Node, Placed>();
  const wrong: Attempt['wrong'] = [];
  placed.set(root, place({ along, open }, 'none', 0));
  const ahead = [root];
  for (let node = ahead.pop(); node !== undefined; node = ahead.pop()) {
    const { frame } = placed.get(node) as Placed;
    for (const child of node.children) {
      if (child.item === null) {
        wrong.push({ node: child, wrong: null });
        continue;
      }
      const turned = turnInto(frame, child.item, child.way, directionOf(child.given.dir));
      const lies = 'part' in turned ? turned : settle(turned, child.given.onEdge === true);
      if ('part' in lies) wrong.push({ node: child, wrong: lies });
      else if (!('part' in turned)) {
        placed.set(child, place(lies, turned.turn, turned.turnDeg));
        ahead.push(child);
      }
    }
  }
  return { placed, wrong };
}

function place({ along, open }: Lies, turn: Turn, turnDeg: number): Placed {
  return { frame: { along, open, left: cross(open, along) }, plumb: isPlumb(along), turn, turnDeg };
}
