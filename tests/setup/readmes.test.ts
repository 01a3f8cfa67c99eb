/** Whoever opens a folder of src finds what lives there and where to start. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Every file that ends in .md would be a page there; src/site/README.md speaks for it. */
const PAGES = join('src', 'site', 'pages');

const folders = readdirSync('src', { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && !entry.parentPath.startsWith(PAGES))
  .map(({ parentPath }) => parentPath);

test.each([...new Set(folders)].filter((folder) => folder !== 'src'))(
  '%s opens with its README',
  (folder) => {
    const file = join(folder, 'README.md');
    expect(existsSync(file)).toBe(true);
    const text = readFileSync(file, 'utf8');
    expect(text).toMatch(/^# \w/);
    expect(text.split('\n').length).toBeGreaterThanOrEqual(4);
  },
);
