/** What `run` needs of the content: the catalogue, the tables and the sentences; read once a call. */
import type { Catalogue } from '../run/catalogue.ts';
import type { RunTables } from '../run/tables.ts';
import { readLibrary } from '../schema/library.ts';
import { adoptedOf } from '../schema/site.ts';
import { runTablesOf } from '../schema/tradeTables.ts';
import type { Speak } from '../trade/say.ts';
import { contentFiles } from './contentFiles.ts';
import { speechOf } from './speech.ts';

export interface RunContent {
  readonly catalogue: Catalogue;
  readonly tables: RunTables;
  readonly speak: Speak;
}

/** Only these files are read, so that a call answers at once; what other files say of them is for content check. */
const NEEDED = /^content\/(?:catalogue|rules|sources|site)\//;

export function runContent(): RunContent {
  const files = contentFiles();
  const { library } = readLibrary(files.filter((f) => NEEDED.test(f.path)));
  return {
    catalogue: library.catalogue,
    tables: runTablesOf(library.rules.values(), library.sources, adoptedOf(library.site.values())),
    speak: speechOf(files),
  };
}
