/** A page fetches the one file of its family's model, by the model's name; so each has a file of its own, with it alone. */
import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { models } from '../../src/practice/models/index.ts';
import { modelFile } from '../../src/practice/proofs.ts';

const root = new URL('../../src/practice/models/', import.meta.url);
const folders = readdirSync(root, { withFileTypes: true })
  .filter((one) => one.isDirectory() && one.name !== 'parts')
  .map(({ name }) => name);
const files = folders.flatMap((folder) =>
  readdirSync(new URL(folder, root))
    .filter((name) => name.endsWith('.ts') && name !== 'index.ts')
    .map((name) => ({ folder, name })),
);

test.each([...models])('%s has a file of its own', async (name, model) => {
  const own = files.filter((file) => file.name === modelFile(name));
  expect(own).toHaveLength(1);
  const { folder = '' } = own[0] ?? {};
  const made: Record<string, unknown> = await import(
    /* @vite-ignore */ `../../src/practice/models/${folder}/${modelFile(name)}`
  );
  const here = Object.values(made).filter(
    (one) => typeof one === 'object' && one !== null && 'wants' in one && 'slips' in one,
  );
  expect(here).toEqual([model]);
});

test('every file is a model’s', () => {
  const named = [...models.keys()].map(modelFile).sort();
  expect(files.map(({ name }) => name).sort()).toEqual(named);
});
