import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { NOTHING_ADOPTED } from '../../src/schema/site.ts';
import { tradeTablesOf } from '../../src/schema/tradeTables.ts';

/** The tables and words of the project's own content, as the command and the pages read them. */
export const { library } = readLibrary(
  contentFiles().filter((f) => /^content\/(?:rules|sources|words\/en)\//.test(f.path)),
);
/** Nothing is adopted in them: the demo works has adopted nothing. */
export const tables = tradeTablesOf(library.rules.values(), library.sources, NOTHING_ADOPTED);
export const fillTables = tables.fill;
