import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

/** Judges a scratch project by our own rules; the whole output, one line a violation. */
function judge(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'trayhand-imports-'));
  for (const [path, text] of Object.entries({ 'tsconfig.json': '{}', ...files })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  const script = resolve('node_modules/dependency-cruiser/bin/dependency-cruiser.mjs');
  const config = resolve('src/setup/dependency-cruiser.cjs');
  const done = spawnSync(process.execPath, [script, 'src', '--config', config, '--output-type', 'err'], {
    cwd: folder,
    encoding: 'utf8',
  });
  rmSync(folder, { recursive: true, force: true });
  return done.stdout + done.stderr;
}

const number = 'export const one = 1;\n';
const uses = (path: string) => `import { one } from '${path}';\nexport const two = one + 1;\n`;

/** Every row is an import that must be refused, by the rule named last. */
const refused: readonly (readonly [from: string, to: string, rule: string])[] = [
  ['src/trade/up.ts', '../run/a.ts', 'trade-imports-one-way'],
  ['src/run/up.ts', '../drawing/a.ts', 'run-imports-one-way'],
  ['src/drawing/up.ts', '../practice/a.ts', 'drawing-imports-one-way'],
  ['src/practice/up.ts', '../register/a.ts', 'practice-imports-one-way'],
  ['src/register/up.ts', '../run/a.ts', 'register-imports-one-way'],
  ['src/schema/up.ts', '../cli/a.ts', 'schema-imports-one-way'],
  ['src/cli/up.ts', '../site/a.ts', 'cli-imports-one-way'],
  ['src/site/up.ts', '../cli/a.ts', 'site-imports-one-way'],
  ['src/trade/file.ts', 'node:fs', 'trade-is-pure'],
  ['src/run/file.ts', 'node:fs', 'run-is-pure'],
  ['src/drawing/file.ts', 'node:fs', 'drawing-is-pure'],
  ['src/practice/file.ts', 'node:fs', 'practice-is-pure'],
  ['src/register/file.ts', 'node:fs', 'register-is-pure'],
  ['src/schema/file.ts', 'node:fs', 'schema-has-no-page-or-file'],
  ['src/schema/page.ts', 'react', 'schema-has-no-page-or-file'],
  ['src/cli/far.ts', '../schema/page.ts', 'cli-knows-no-page'],
  ['src/trade/ring.ts', './gnir.ts', 'no-circular'],
];

const rooms = ['trade', 'run', 'drawing', 'practice', 'register', 'schema', 'cli', 'site', 'setup'];
const leaves = Object.fromEntries(rooms.map((room) => [`src/${room}/a.ts`, number]));

describe('imports point one way', () => {
  let talk = '';
  beforeAll(() => {
    talk = judge({
      ...leaves,
      ...Object.fromEntries(refused.map(([from, to]) => [from, uses(to)])),
      'src/trade/gnir.ts': uses('./ring.ts'),
      'node_modules/react/package.json': '{"name":"react","version":"0.0.0","main":"index.js"}',
      'node_modules/react/index.js': 'exports.one = 1;\n',
    });
  });
  afterAll(() => {
    talk = '';
  });

  test.each(refused)('%s may not import %s: %s', (from, _to, rule) => {
    // A ring is told from whichever of its files comes first, so the file may stand behind the arrow.
    expect(
      talk.split(/\n(?= {2}error)/).some((told) => told.includes(`${rule}:`) && told.includes(from)),
    ).toBe(true);
  });

  test('every room may import the rooms before it', () => {
    const downward = {
      'src/run/down.ts': uses('../trade/a.ts'),
      'src/drawing/down.ts': uses('../run/a.ts'),
      'src/practice/down.ts': uses('../drawing/a.ts'),
      'src/register/down.ts': uses('../trade/a.ts'),
      'src/schema/down.ts': uses('../register/a.ts'),
      'src/cli/down.ts': uses('../schema/a.ts'),
      'src/site/down.ts': uses('../schema/a.ts'),
    };
    expect(judge({ ...leaves, ...downward })).toContain('no dependency violations found');
  });
});
