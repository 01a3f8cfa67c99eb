/** Faults between catalogue files: an id twice, an item that another names and that is not there. */
import { catalogueOf } from './catalogue.ts';
import type { FileFault } from './shelf.ts';
import type { Entries } from './shelves.ts';

export function catalogueFaults({ catalogues }: Entries): readonly FileFault[] {
  const { faults } = catalogueOf(catalogues.map((c) => c.data));
  return faults.map(({ catalogue, ...fault }) => ({
    file: catalogues.find((c) => c.id === catalogue)?.file ?? catalogue,
    ...fault,
  }));
}
