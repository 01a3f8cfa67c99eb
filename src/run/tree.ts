/** The legs of a run as a tree: who leaves whom, by what fitting and which way out; and what does not hang together. */
import type { Fault } from '../trade/given.ts';
import type { Catalogue, Item } from './catalogue.ts';
import type { FittingItem, WayOut } from './resolved.ts';
import type { Leg } from './types.ts';

/** A leg in the tree. A leg whose place is at fault stands as a root of its own, so that the rest can be judged. */
export interface Node {
  readonly k: number;
  /** `legs[k]`. */
  readonly field: string;
  readonly given: Leg;
  parent: Node | null;
  children: Node[];
  way: WayOut;
  /** Null on the first leg, and where the fitting is at fault. */
  readonly item: FittingItem | null;
}

export interface Tree {
  readonly byId: ReadonlyMap<string, Node>;
  /** Parents before children, in order of travel; straight on before left before right. Every leg stands in it once. */
  readonly order: readonly Node[];
}

/** Tells a fault. A length stands in `value` as a number of inches, as the JSON of a run has it. */
export type Bad = (field: string, value: unknown, message: string, todo: string) => void;
export const collector =
  (faults: Fault[]): Bad =>
  (field, value, message, todo) =>
    void faults.push({ field, value, message, todo });

const WAYS: readonly WayOut[] = ['straight', 'left', 'right'];
const FITTINGS = { elbow: true, tee: true, cross: true, reducer: true, hinge: true } as const;
const isFitting = (item: Item): item is FittingItem => item.kind in FITTINGS;

/** Puts the legs together; every fault of ids and parents is told to `bad`, and of fittings that do not go together. */
export function treeOf(legs: readonly Leg[], catalogue: Catalogue, bad: Bad): Tree {
  if (legs.length === 0) bad('legs', [], 'a run has at least one leg', 'give its first leg, from start');
  const first = legs.findIndex(({ from }) => from === 'start');
  const nodes = legs.map((given, k): Node => {
    const field = `legs[${k}]`;
    // A second leg at the start is at fault for that, whatever it says of a fitting.
    const item =
      given.from === 'start' ? noFitting(given, k === first, field, bad) : fittingOf(given, catalogue);
    return { k, field, given, parent: null, children: [], way: 'straight', item };
  });
  const byId = idsOf(nodes, bad);
  joinAll(nodes, byId, bad);
  breakRings(nodes, bad);
  for (const node of nodes) {
    branchFaults(node, bad);
    node.children.sort((a, b) => WAYS.indexOf(a.way) - WAYS.indexOf(b.way));
  }
  return { byId, order: travel(nodes.filter(({ parent }) => parent === null)) };
}

function noFitting({ fitting }: Leg, judged: boolean, field: string, bad: Bad): null {
  if (judged && fitting !== null) {
    bad(`${field}.fitting`, fitting, 'the first leg leaves the start without a fitting', 'write null');
  }
  return null;
}

/** Null where it is none; channels.ts, which knows the width that stands there, tells what would do. */
function fittingOf({ fitting }: Leg, catalogue: Catalogue): FittingItem | null {
  const item = fitting === null ? undefined : catalogue.get(fitting);
  return item !== undefined && isFitting(item) ? item : null;
}

function idsOf(nodes: readonly Node[], bad: Bad): ReadonlyMap<string, Node> {
  const byId = new Map<string, Node>();
  for (const node of nodes) {
    const { id } = node.given;
    if (id === 'start' || id.includes(':')) {
      bad(
        `${node.field}.id`,
        id,
        'this name has a meaning of its own',
        'name the leg without a colon, and not start',
      );
    }
    if (byId.has(id)) {
      bad(`${node.field}.id`, id, 'another leg has this id already', 'give each leg an id of its own');
    } else byId.set(id, node);
  }
  return byId;
}

/** Parents and ways out, leg by leg in the order given. */
function joinAll(nodes: readonly Node[], byId: ReadonlyMap<string, Node>, bad: Bad): void {
  let first: Node | null = null;
  for (const node of nodes) {
    const { from } = node.given;
    const wrong = (message: string, todo: string) => bad(`${node.field}.from`, from, message, todo);
    if (from === 'start') {
      if (first !== null) {
        wrong(`leg ${first.given.id} leaves the start already`, 'let this leg go on from another leg');
      }
      first ??= node;
      continue;
    }
    const [parent, way] = originOf(from, byId);
    if (parent === undefined || way === undefined) {
      wrong(
        from.startsWith('start:') ? 'the start has one way out' : 'the run has no such leg or way out',
        'write start, a leg, or a leg with :left or :right behind it',
      );
      continue;
    }
    if (way !== 'straight' && node.item !== null && node.item.kind !== 'tee' && node.item.kind !== 'cross') {
      wrong(
        `left and right are ways out of a tee or a cross, and this is a ${kindName(node.item)}`,
        `write ${parent.given.id}`,
      );
    }
    const beside = parent.children.find((c) => c.way === way);
    if (beside !== undefined) {
      wrong(
        `leg ${beside.given.id} leaves on this way already`,
        'let it leave another way out of a tee or a cross',
      );
    }
    node.parent = parent;
    node.way = way;
    parent.children.push(node);
  }
}

const kindName = ({ kind }: FittingItem) => (kind === 'hinge' ? 'hinged fitting' : kind);

function originOf(
  from: string,
  byId: ReadonlyMap<string, Node>,
): readonly [Node | undefined, WayOut | undefined] {
  const whole = byId.get(from);
  if (whole !== undefined) return [whole, 'straight'];
  const colon = from.lastIndexOf(':');
  const way = from.slice(colon + 1);
  if (colon < 0 || (way !== 'left' && way !== 'right')) return [undefined, undefined];
  return [byId.get(from.slice(0, colon)), way];
}

/** Legs that go round in a ring: each is said, and stands alone from here on. */
function breakRings(nodes: readonly Node[], bad: Bad): void {
  const seen = new Map<Node, Node>();
  for (const begun of nodes) {
    let node: Node | null = begun;
    while (node !== null && !seen.has(node)) {
      seen.set(node, begun);
      node = node.parent;
    }
    // Back on the way just gone: from here round to here is a ring.
    if (node === null || seen.get(node) !== begun) continue;
    let ring = node;
    do {
      const { parent }: Node = ring;
      if (parent === null) break;
      bad(
        `${ring.field}.from`,
        ring.given.from,
        'these legs go round in a ring, and none leaves the start',
        'let one of them leave the start, or another leg',
      );
      parent.children = parent.children.filter((c) => c !== ring);
      ring.parent = null;
      ring = parent;
    } while (ring !== node);
  }
}

/** Legs that leave one tee or cross name the same one, and no more of them than it has mouths. */
function branchFaults({ given, children }: Node, bad: Bad): void {
  const first = children.find(({ item }) => item !== null);
  if (first?.item == null) return;
  for (const { field, given: own, item } of children) {
    if (item !== null && item !== first.item) {
      bad(
        `${field}.fitting`,
        own.fitting,
        `leg ${first.given.id} leaves the end of ${given.id} by ${first.item.id}`,
        'name the same tee or cross for all legs that leave it',
      );
    }
  }
  const used = WAYS.flatMap((way) => children.find((c) => c.way === way) ?? []);
  if (first.item.kind === 'tee' && used.length === WAYS.length) {
    const latest = used.reduce((a, b) => (a.k > b.k ? a : b));
    bad(
      `${latest.field}.from`,
      latest.given.from,
      'a tee has two ways out, and both are taken',
      'use a cross, or leave one out',
    );
  }
}

function travel(roots: readonly Node[]): readonly Node[] {
  const order: Node[] = [];
  const ahead = [...roots].reverse();
  for (let node = ahead.pop(); node !== undefined; node = ahead.pop()) {
    order.push(node);
    for (let i = node.children.length - 1; i >= 0; i--) ahead.push(node.children[i] as Node);
  }
  return order;
}
