import type { Citation } from './header.ts';
import type { Order } from './order.ts';

const known = new WeakMap<Order, ReadonlyMap<string, Citation>>();

/** What is cited and not held, by id: who signed it, on which device, and its number there. */
export function lackingOf(order: Order): ReadonlyMap<string, Citation> {
  const found =
    known.get(order) ?? new Map(order.list.flatMap((p) => p.lacks.map((c) => [c.id, c] as const)));
  known.set(order, found);
  return found;
}
