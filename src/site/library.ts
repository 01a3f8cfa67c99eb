/**
 * The content of the works, read once at build time through the same reader as the command. A build stops here with
 * every fault of every file, so that no page is ever made from content that does not hold.
 */
import { type Library, readLibrary } from '../schema/library.ts';
import { refuseFaults } from '../schema/refusal.ts';

const files = import.meta.glob<string>(['../../content/**/*', '!../../content/demo/register/**'], {
  eager: true,
  query: '?raw',
  import: 'default',
});

const { library: read, faults } = readLibrary(
  Object.entries(files).map(([path, text]) => ({ path: path.replace(/^(\.\.\/)+/, ''), text })),
);
refuseFaults(faults);

export const library: Library = read;
