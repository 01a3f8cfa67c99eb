import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Addresses of every built page, from dist/ itself, so that a new page cannot be forgotten. */
export const builtPages: readonly string[] = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => file.endsWith('index.html'))
  .map((file) => file.slice(0, -'index.html'.length))
  .sort();

/** The HTML of a built page. */
export const htmlOf = (page: string): string => readFileSync(join('dist', page, 'index.html'), 'utf8');

/** A page that loads an island; every other page is a reading page. */
export const computes = (page: string): boolean => htmlOf(page).includes('<astro-island');
