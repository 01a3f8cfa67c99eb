/** Items of the catalogue that a page asks for by id. */
import type { Fastening, Sleeve, Tray } from '../run/catalogue.ts';
import type { Library } from '../schema/library.ts';

/** @throws Error when the catalogue has no such tray. */
export function trayOf(library: Library, id: string): Tray {
  const item = library.catalogue.get(id);
  if (item?.kind !== 'tray') throw new Error(`the catalogue has no tray ${id}`);
  return item;
}

/** What the figure of a sleeve joint is drawn from. */
export interface SleeveSet {
  readonly tray: Tray;
  readonly sleeve: Sleeve;
  readonly fastening: Fastening;
}

/** A tray with its own sleeve and what fastens it. @throws Error when one is not in the catalogue. */
export function sleeveSetOf(library: Library, id: string): SleeveSet {
  const tray = trayOf(library, id);
  const sleeve = library.catalogue.get(tray.own.socketed);
  if (sleeve?.kind !== 'sleeve') throw new Error(`the catalogue has no sleeve ${tray.own.socketed}`);
  const fastening = library.catalogue.get(sleeve.fastened.fastening);
  if (fastening?.kind !== 'fastening') throw new Error(`no fastening ${sleeve.fastened.fastening}`);
  return { tray, sleeve, fastening };
}
