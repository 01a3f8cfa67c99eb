/** Looks up what a model needs in the catalogue; a missing item is a fault of the content, found by its check. */
import type { Item } from '../../run/catalogue.ts';
import type { World } from '../model.ts';

type OfKind<K extends Item['kind']> = Extract<Item, { readonly kind: K }>;

/** @throws {Error} when the catalogue has no item of that id and kind */
export function read<K extends Item['kind']>(world: World, id: string, kind: K): OfKind<K> {
  const item = world.catalogue.get(id);
  if (item?.kind !== kind) throw new Error(`the catalogue has no ${kind} ${id}`);
  return item as OfKind<K>;
}
