/** Looks up what a model needs in the catalogue; a missing item is a fault of the content, found by its check. */
import type { Item, ItemOf } from '../../../run/catalogue.ts';
import type { World } from '../../model.ts';

/** @throws {Error} when the catalogue has no item of that id and kind */
export function read<K extends Item['kind']>(world: World, id: string, kind: K): ItemOf<K> {
  const item = world.catalogue.get(id);
  if (item?.kind !== kind) throw new Error(`the catalogue has no ${kind} ${id}`);
  return item as ItemOf<K>;
}
