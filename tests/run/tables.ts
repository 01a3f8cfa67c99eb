/** The tables, limits and words that runs are judged and told by, read from the project's own content. */
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { NOTHING_ADOPTED } from '../../src/schema/site.ts';
import { runTablesOf } from '../../src/schema/tradeTables.ts';
import { speaker } from '../../src/schema/words.ts';

export const { library } = readLibrary(
  contentFiles().filter((f) => /^content\/(?:rules|sources|words\/en)\//.test(f.path)),
);
/** What a site has adopted is left out: tests hold the training values. */
export const tables = runTablesOf(library.rules.values(), library.sources, NOTHING_ADOPTED);
export const speak = speaker(library.words.get('en') ?? new Map());
