/** The channel of each leg: a reducer changes its width, and whatever stands in it is of that width. */
import { formatLength, type Ticks } from '../trade/length.ts';
import type { Catalogue, Tray } from './catalogue.ts';
import type { Bad, Node } from './tree.ts';
import { nameOne } from './wouldDo.ts';

/**
 * @param tray  of the first leg; null when it is at fault
 * @returns     the tray of each leg, null where it cannot be told
 */
export function channelsOf(
  order: readonly Node[],
  tray: Tray | null,
  catalogue: Catalogue,
  bad: Bad,
): ReadonlyMap<Node, Tray | null> {
  const trays = new Map<Node, Tray | null>();
  const others = new Map<string, Tray | null>();
  for (const node of order) {
    const before = node.parent === null ? null : (trays.get(node.parent) ?? null);
    if (node.given.from !== 'start' && node.item === null) noFitting(node, before, catalogue, bad);
    if (node.given.from === 'start') trays.set(node, tray);
    else if (before === null || node.item === null) trays.set(node, before);
    else trays.set(node, behind(node, before, catalogue, others, bad));
  }
  return trays;
}

const BRANCHES = ['tee', 'cross'] as const;
const FITTINGS = ['elbow', 'tee', 'cross', 'hinge', 'reducer'] as const;

/** What a leg can leave another by: aside, by a tee or a cross alone. */
const fittingsFor = ({ way }: Node) => (way === 'straight' ? FITTINGS : BRANCHES);

/** A leg goes on by no fitting, or by what is none; names that would do, of the width that stands there. */
function noFitting(node: Node, before: Tray | null, catalogue: Catalogue, bad: Bad): void {
  const { fitting } = node.given;
  const item = fitting === null ? undefined : catalogue.get(fitting);
  const wrong =
    item === undefined ? 'the catalogue has no such item' : `a ${item.kind} is no fitting between two legs`;
  bad(
    `${node.field}.fitting`,
    fitting,
    fitting === null ? 'a leg that goes on from another does so by a fitting' : wrong,
    nameOne(catalogue, fittingsFor(node), before?.width ?? null),
  );
}

function behind(
  node: Node,
  before: Tray,
  catalogue: Catalogue,
  others: Map<string, Tray | null>,
  bad: Bad,
): Tray | null {
  const { field, item, given } = node;
  if (item === null) return before;
  const fits = item.width === before.width || (item.kind === 'reducer' && item.narrow === before.width);
  if (!fits) {
    bad(
      `${field}.fitting`,
      given.fitting,
      'the fitting is not of the width it stands in',
      nameOne(catalogue, item.kind === 'reducer' ? ['reducer'] : fittingsFor(node), before.width),
    );
    return item.kind === 'reducer' ? null : before;
  }
  if (item.kind !== 'reducer') return before;
  const width = item.width === before.width ? item.narrow : item.width;
  const key = `${before.id} ${width}`;
  if (!others.has(key)) others.set(key, otherWidth(before, width, catalogue));
  const found = others.get(key) ?? null;
  if (found === null) {
    bad(
      `${field}.fitting`,
      given.fitting,
      `the catalogue has no channel ${formatLength(width)} wide that goes with ${before.id}`,
      'enter that channel in the catalogue, of the same metal, bottom, depth and origin, or use another reducer',
    );
  }
  return found;
}

/** The channel of another width that goes with this one. */
function otherWidth(tray: Tray, width: Ticks, catalogue: Catalogue): Tray | null {
  for (const other of catalogue.values()) {
    if (
      other.kind === 'tray' &&
      other.width === width &&
      other.metal === tray.metal &&
      other.bottom === tray.bottom &&
      other.depth === tray.depth &&
      other.origin === tray.origin
    ) {
      return other;
    }
  }
  return null;
}
