import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { fillTablesOf } from '../../src/schema/rules.ts';

/** The tables and words of the project's own content, as the command and the pages read them. */
export const { library } = readLibrary(
  contentFiles().filter((f) => /^content\/(?:rules|sources|words\/en)\//.test(f.path)),
);
export const fillTables = fillTablesOf(library.rules.values(), library.sources);
