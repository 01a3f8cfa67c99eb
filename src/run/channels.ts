/** The channel of each leg: a reducer changes its width, and whatever stands in it is of that width. */
import { formatLength, type Ticks } from '../trade/length.ts';
import type { Catalogue, Tray } from './catalogue.ts';
import type { Bad, Node } from './tree.ts';

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
    if (node.given.from === 'start') trays.set(node, tray);
    else if (before === null || node.item === null) trays.set(node, before);
    else trays.set(node, behind(node, before, catalogue, others, bad));
  }
  return trays;
}

function behind(
  { field, item, given }: Node,
  before: Tray,
  catalogue: Catalogue,
  others: Map<string, Tray | null>,
  bad: Bad,
): Tray | null {
  if (item === null) return before;
  const fits = item.width === before.width || (item.kind === 'reducer' && item.narrow === before.width);
  if (!fits) {
    bad(
      `${field}.fitting`,
      given.fitting,
      'the fitting is not of the width it stands in',
      item.kind === 'reducer'
        ? `name one with an end of ${formatLength(before.width)}`
        : `name one of ${formatLength(before.width)}`,
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
