/**
 * The content of the works, read once at build time through the same reader as the command. A build stops here with
 * every fault of every file, so that no page is ever made from content that does not hold.
 */
import { type FileFault, type Library, readLibrary } from '../schema/library.ts';

const files = import.meta.glob<string>(['../../content/**/*', '!../../content/demo/register/**'], {
  eager: true,
  query: '?raw',
  import: 'default',
});

const lineOf = ({ file, field, value, message, todo }: FileFault): string =>
  `${file}${field === '' ? '' : `\n  ${field}`}: ${value === undefined ? '' : `${JSON.stringify(value)}: `}${message}\n  ${todo}`;

const { library: read, faults } = readLibrary(
  Object.entries(files).map(([path, text]) => ({ path: path.replace(/^(\.\.\/)+/, ''), text })),
);
if (faults.length > 0) {
  throw new Error(`content: ${faults.length} to mend\n${faults.map(lineOf).join('\n')}`);
}

export const library: Library = read;
