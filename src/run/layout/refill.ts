/** Lines laid anew, one after another, into what the others leave of their stock lengths. */
import type { Prepared } from './cheapest.ts';
import { cover, slotsOf } from './cover.ts';
import type { LineLayout } from './line.ts';
import { firstFit, type Stock } from './pack.ts';

/** Work of laying one line anew. */
const STEPS = 100_000;

/**
 * @param order   lines by their place, none that can be cut in no other way
 * @param chosen  of all lines
 * @returns       of all lines; null where no way was found in time
 */
export function refill(
  order: readonly number[],
  chosen: readonly LineLayout[],
  ready: readonly (Prepared | null)[],
  stock: Stock,
): readonly LineLayout[] | null {
  const layouts = [...chosen];
  const others = chosen.filter((_, i) => !order.includes(i)).flatMap(({ cuts }) => cuts);
  const rooms = [...firstFit(others, stock)];
  for (const i of order) {
    const one = ready[i];
    const layout = one ? laidInto(one, rooms, stock) : null;
    if (layout === null) return null;
    layouts[i] = layout;
    for (const cut of layout.cuts.toSorted((a, b) => b - a)) fillRoom(rooms, cut, stock);
  }
  return layouts;
}

/** Each piece into a room of its own, with as few fresh lengths as will do. */
function laidInto(one: Prepared, rooms: readonly number[], { length, kerf }: Stock): LineLayout | null {
  for (let fresh = 0; fresh < one.count; fresh++) {
    const slots = [...rooms.map((room) => room - kerf), ...new Array<number>(fresh).fill(length)];
    const { layouts } = cover([one], slotsOf(slots), STEPS);
    if (layouts !== null) return layouts[0] ?? null;
  }
  return null;
}

/** The smallest room that holds a piece, else a fresh length. */
function fillRoom(rooms: number[], cut: number, { length, kerf }: Stock): void {
  let best = -1;
  for (const [k, room] of rooms.entries()) {
    if (room >= cut + kerf && (best < 0 || room < (rooms[best] as number))) best = k;
  }
  if (best < 0) rooms.push(length - cut);
  else rooms[best] = (rooms[best] as number) - cut - kerf;
}
