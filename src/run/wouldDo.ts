/** Names of the catalogue that would do where a run names something else: what a fault tells to write. */
import { formatLength, type Ticks } from '../trade/length.ts';
import type { Catalogue, Item } from './catalogue.ts';

/** More names than this are no help to read. */
const MOST = 12;

/**
 * What to write instead: `name one of card-4-sleeve card-4-sleeve-steel`.
 *
 * @param kinds  that would do; those named first are listed first, each kind in the order of the catalogue
 * @param width  that the item stands in; a reducer does with either end. Null where it is not known: all widths
 */
export function nameOne(catalogue: Catalogue, kinds: readonly Item['kind'][], width: Ticks | null): string {
  const of = width === null ? 'of the catalogue' : `${formatLength(width)} wide`;
  const ids = kinds.flatMap((kind) =>
    [...catalogue.values()].filter((item) => item.kind === kind && fits(item, width)).map(({ id }) => id),
  );
  if (ids.length === 0) return `enter one ${of} in the catalogue (${kinds.join(', ')}), and name it`;
  const more = ids.length > MOST ? ` or another ${of}` : '';
  return `name one of ${ids.slice(0, MOST).join(' ')}${more}`;
}

function fits(item: Item, width: Ticks | null): boolean {
  if (width === null) return true;
  if (item.kind === 'reducer' && item.narrow === width) return true;
  return 'width' in item && item.width === width;
}
