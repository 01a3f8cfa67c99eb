import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { root } from '../../src/cli/root.ts';
import { type ContentFile, readLibrary } from '../../src/schema/library.ts';

interface Case {
  readonly file: string;
  readonly find?: string;
  readonly put?: string;
  readonly text?: string;
  /** Path under which the changed file is handed over. */
  readonly as?: string;
  readonly want: { readonly file?: string; readonly field: string; readonly message: string };
}

const here = join(root, 'tests/content/');
/** Words and one practice family are the project's own: both are long, and no case changes them. */
const own = contentFiles().filter((f) => /^content\/(words\/|scenarios\/cut-with-insertion)/.test(f.path));
const good = [...contentFiles(`${here}good`), ...own];

/** The good content with one thing changed. */
function spoilt({ file, find, put, text, as = file }: Case): readonly ContentFile[] {
  if (text !== undefined) return [...good.filter((f) => f.path !== file), { path: file, text }];
  return good.map((f) => {
    if (f.path !== file) return f;
    if (find === undefined || put === undefined || f.text.split(find).length !== 2) {
      throw new Error(`${file} does not hold "${find}" exactly once`);
    }
    return { path: as, text: f.text.replace(find, () => put) };
  });
}

test('the good content has no fault', () => {
  expect(readLibrary(good).faults).toEqual([]);
});

test.each(readdirSync(`${here}bad`))('%s is found, and nothing else', (name) => {
  const bad = parse(readFileSync(`${here}bad/${name}`, 'utf8')) as Case;
  if (bad.text === undefined && !good.some((f) => f.path === bad.file)) throw new Error(`no ${bad.file}`);
  const faults = readLibrary(spoilt(bad)).faults.map(({ file, field, message }) => ({
    file,
    field,
    message,
  }));
  expect(faults).toEqual([{ file: bad.file, ...bad.want }]);
});

test('all faults of all files come at once', () => {
  const [first, second] = ['task-months-in-words.yaml', 'page-day-that-is-none.yaml'].map(
    (name) => parse(readFileSync(`${here}bad/${name}`, 'utf8')) as Case,
  );
  const files = good.map(
    (f) => spoilt(f.path === first?.file ? first : (second as Case)).find((g) => g.path === f.path) ?? f,
  );
  expect(readLibrary(files).faults.map((f) => f.file)).toEqual([second?.file, first?.file]);
});
