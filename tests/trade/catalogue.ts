import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';

/** The catalogue of the project's own content. */
export const { catalogue } = readLibrary(
  contentFiles().filter((f) => f.path.startsWith('content/catalogue/')),
).library;
