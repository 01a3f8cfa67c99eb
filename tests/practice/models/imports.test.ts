/** A page brings only the models that its families name, so no model may bring another; what they share is in parts/. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';

const MODELS = 'src/practice/models';
const folders = readdirSync(MODELS, { withFileTypes: true }).filter(
  (one) => one.isDirectory() && one.name !== 'parts',
);
const files = folders.flatMap(({ name }) =>
  readdirSync(join(MODELS, name))
    .filter((file) => file.endsWith('.ts') && file !== 'index.ts')
    .map((file) => join(MODELS, name, file)),
);
const shared = readdirSync(join(MODELS, 'parts')).filter((file) => file.endsWith('.ts'));

/** Files of this room that a file brings, as paths from the root. */
function broughtBy(file: string, text: string): readonly string[] {
  const named = [...text.matchAll(/(?:from|import) '(\.[^']+)'/g)].map(([, path]) =>
    normalize(join(dirname(file), path ?? '')),
  );
  return named.filter((path) => path.startsWith(`${MODELS}/`));
}
const inParts = (path: string) => dirname(path) === join(MODELS, 'parts');

describe('models stand alone', () => {
  test('there are models to look at', () => expect(files.length).toBeGreaterThan(80));
  test.each(files)('%s brings nothing but parts', (file) =>
    expect(broughtBy(file, readFileSync(file, 'utf8')).filter((path) => !inParts(path))).toEqual([]),
  );
  test.each(shared)('parts/%s brings no model', (file) => {
    const path = join(MODELS, 'parts', file);
    expect(broughtBy(path, readFileSync(path, 'utf8')).filter((one) => !inParts(one))).toEqual([]);
  });
  test('a model that brings its neighbour is seen', () => {
    const file = join(MODELS, 'working', 'goAskStop.ts');
    const text = "import { edge } from './atHeight.ts';\nimport { heldAgainst } from '../parts/scenes.ts';\n";
    expect(
      broughtBy(file, text)
        .filter((path) => !inParts(path))
        .map((path) => basename(path)),
    ).toEqual(['atHeight.ts']);
  });
});
