/** Faults between catalogue files: an id twice, an item that another names and that is not there. Judged when all could be read. */
import { catalogueOf } from './catalogue.ts';
import type { FileFault } from './shelf.ts';
import type { Entries, Lost } from './shelves.ts';

export function catalogueFaults({ catalogues }: Entries, lost: Lost): readonly FileFault[] {
  if (lost.catalogues.size > 0) return [];
  const { faults } = catalogueOf(catalogues.map((c) => c.data));
  return faults.map(({ catalogue, ...fault }) => ({
    file: catalogues.find((c) => c.id === catalogue)?.file ?? catalogue,
    ...fault,
  }));
}
