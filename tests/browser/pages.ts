import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where the site was built. */
const root = process.env['SITE_DIR'] ?? 'dist';

/** Addresses of every built page, from dist/ itself, so that a new page cannot be forgotten. */
export const builtPages: readonly string[] = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => file.endsWith('index.html'))
  .map((file) => file.slice(0, -'index.html'.length))
  .sort();

/** The HTML of a built page. */
export const htmlOf = (page: string): string => readFileSync(join(root, page, 'index.html'), 'utf8');

/** A page that loads an island; every other page is a reading page. */
export const computes = (page: string): boolean => htmlOf(page).includes('<astro-island');

/** Pages made alike from one file of the site, one a person, a task, a family or a sheet of paper: by what their addresses begin with. */
const alike = ['en/crew/person/', 'en/crew/task/', 'en/witness/paper/', 'en/practice/'];
/** Not made as the others beside it. */
const apart = ['en/practice/kept/'];

/** Of those made alike the longest, the shortest and the first only. */
function fewOf(start: string): readonly string[] {
  const all = builtPages
    .filter((page) => page.startsWith(start) && page !== start && !apart.includes(page))
    .map((page) => ({ page, size: htmlOf(page).length }));
  const [first, ...others] = all;
  const bySize = others.sort((a, b) => a.size - b.size);
  return [first, bySize[0], bySize.at(-1)].flatMap((one) => one?.page ?? []);
}

const few = new Map(alike.map((start) => [start, fewOf(start)]));

/** Pages to be walked in a browser: every page, but of those made alike a few. What is read from the files is asked of all. */
export const walkedPages: readonly string[] = builtPages.filter((page) => {
  if (apart.includes(page)) return true;
  const kind = alike.find((start) => page.startsWith(start) && page !== start);
  return kind === undefined || few.get(kind)?.includes(page) === true;
});
