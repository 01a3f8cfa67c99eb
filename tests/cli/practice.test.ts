import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { group } from '../../src/cli/practice.ts';
import { trayhand } from './command.ts';
import { type Called, inProcess } from './inProcess.ts';

const folder = mkdtempSync(join(tmpdir(), 'trayhand-practice-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const call = (...words: string[]) => trayhand(['practice', ...words]);
const fieldsOf = async (answer: Promise<Pick<Called, 'one'> & { readonly exit: number | null }>) => {
  const { exit, one } = await answer;
  expect([exit, one.ok]).toEqual([2, false]);
  for (const { message, todo } of one.errors) expect(`${message}|${todo}`).toMatch(/\w.*\|\w/);
  return one.errors.map((e) => e.field);
};

describe('practice', () => {
  test('list', async () => {
    const { exit, one } = await call('list');
    expect(exit).toBe(0);
    expect(one).toMatchObject({ ok: true, steps: [], sources: [] });
    const families = one.result['families'] as Record<string, unknown>[];
    for (const family of [
      { id: 'cut-with-insertion', title: 'Cut with insertion', tasks: ['T05'], kinds: ['number'] },
      { id: 'fill-check', title: 'Fill check', tasks: ['T13'], kinds: ['number', 'choice'] },
      { id: 'order-of-cutting', title: 'Order of cutting', tasks: ['T06'], kinds: ['order'] },
      { id: 'read-feet-inch', title: 'Read feet, inches and parts', tasks: ['T05'], kinds: ['number'] },
    ])
      expect(families).toContainEqual(family);
    expect(families.length).toBeGreaterThanOrEqual(60);
  });

  test('draw twice is one draw; its key grades full', async () => {
    const seed = 'Año 4 · ✂ 🪚';
    const [one, two] = await Promise.all([
      call('draw', 'fill-check', '--seed', seed),
      call('draw', 'fill-check', '--seed', seed),
    ]);
    expect(one.out).toBe(two.out);
    expect(one.exit).toBe(0);
    expect(one.one.result).toMatchObject({
      id: 'fill-check',
      seed,
      generator: 'trayhand seed 1',
      tasks: ['T13'],
    });
    const key = (await call('key', 'fill-check', '--seed', seed)).one.result;
    expect(Object.keys(key)).toEqual(['answers', 'mistakes', 'working', 'critical']);
    expect(key['critical']).toEqual(['row', 'within']);
    const graded = await trayhand(['practice', 'grade', 'fill-check', '--seed', seed, '-'], {
      answers: key['answers'],
    });
    expect(graded.one.result).toMatchObject({ score: 100, passed: true });
  });

  test('grade names the mistake and which way', async () => {
    const { one, exit } = await trayhand(
      ['practice', 'grade', 'cut-with-insertion', '--seed', 'hand-3', '--lang', 'en'],
      {
        answers: { cut: `8'-7 3/4"` },
      },
    );
    expect(exit).toBe(0);
    expect(one.result).toEqual({
      score: 0,
      passed: false,
      findings: [
        {
          ask: 'cut',
          verdict: 'rework',
          mistake: 'insertion-forgotten',
          direction: 'short',
          says: expect.stringContaining('6 1/2" short'),
        },
        { ask: 'left', verdict: 'blank', mistake: null, says: 'Nothing entered.' },
      ],
    });
  });

  test('prove', async () => {
    const two = await call('prove', 'cut-with-insertion', 'place-anchor', '--seeds', '12');
    expect(two.exit).toBe(0);
    const families = two.one.result['families'] as Record<string, unknown>[];
    expect(families.map((f) => [f['drawn'], f['faults']])).toEqual(Array(2).fill([12, []]));
    const some = await call('prove', 'fill-check', 'order-of-cutting', '--seeds', '3');
    expect((some.one.result['families'] as { id: string }[]).map((f) => f.id)).toEqual([
      'fill-check',
      'order-of-cutting',
    ]);
  });
});

describe('refused, every fault at once', () => {
  test.each([
    [['draw', 'nothing', '--seed', '1'], ['ID']],
    [['draw', 'fill-check'], ['--seed']],
    [['key', 'fill-check', '--seed', ''], ['--seed']],
    [['draw', 'fill-check', '--seed', 'x'.repeat(65)], ['--seed']],
    [['draw', 'fill-check', '--seed', '1', '--lang', 'es'], ['--lang']],
    [
      ['draw', 'nothing', '--lang', 'xx'],
      ['ID', '--seed', '--lang'],
    ],
    [['draw', 'fill-check', '--seed', '1', '--help-me'], ['--help-me']],
    [['draw'], ['ID']],
    [
      ['prove', 'nothing', '--seeds', '0'],
      ['ID', '--seeds'],
    ],
    [['prove', '--seeds', '1.5'], ['--seeds']],
    [['list', 'all'], ['']],
  ])('%j', async (words, fields) => {
    expect(await fieldsOf(inProcess(group, words))).toEqual(fields);
  });

  test('an unknown verb, an unknown family, and no JSON on standard input, in processes of their own', async () => {
    expect(await fieldsOf(call('guess'))).toEqual(['verb']);
    expect(await fieldsOf(call('draw', 'nothing', '--lang', 'xx'))).toEqual(['ID', '--seed', '--lang']);
    expect(await fieldsOf(call('prove', 'nothing', '--seeds', '0'))).toEqual(['ID', '--seeds']);
    const grade = ['practice', 'grade', 'cut-with-insertion', '--seed', '1'];
    expect(await fieldsOf(trayhand(grade, '{"answers":'))).toEqual(['']);
  });

  test('64 signs are taken, also when each is more than one byte', async () => {
    expect((await call('draw', 'order-of-cutting', '--seed', '🪚'.repeat(64))).exit).toBe(0);
  });

  test.each([
    ['no JSON', '{"answers":', ['']],
    ['nothing', '', ['']],
    ['no answers', {}, ['answers']],
    ['another field', { answers: {}, score: 100 }, ['score']],
    ['answers that are no object', { answers: [] }, ['answers']],
    [
      'unknown asks and answers that cannot be read',
      { answers: { cut: 'far', up: 1 } },
      ['answers.cut', 'answers.up'],
    ],
    [
      'faults of the answers beside one of the field around them',
      '{"answers":{"cut":true,"left":"far","__proto__":1},"zz":1}',
      ['zz', 'answers.cut', 'answers.left', 'answers.__proto__'],
    ],
    [
      'a length beyond all lengths',
      '{"answers":{"cut":1e300,"left":1e999}}',
      ['answers.cut', 'answers.left'],
    ],
  ])('grade: %s', async (_, given, fields) => {
    const file = join(folder, 'given.json');
    writeFileSync(file, typeof given === 'string' ? given : JSON.stringify(given));
    const words = ['grade', 'cut-with-insertion', '--seed', '1', file];
    expect(await fieldsOf(inProcess(group, words))).toEqual(fields);
  });
});

test('the manual in src/cli/README.md has a row for every verb, with the options it takes', () => {
  const manual = readFileSync(new URL('../../src/cli/README.md', import.meta.url), 'utf8');
  const part = manual.slice(manual.indexOf('\n## practice') + 1).split('\n## ')[0] ?? '';
  const rows = [...part.matchAll(/^\| `(\w+)(.*?)`/gm)];
  expect(rows.map((row) => row[1])).toEqual(group.verbs.map((v) => v.name));
  for (const { name, options = {} } of group.verbs) {
    const row = rows.find((r) => r[1] === name)?.[2] ?? '';
    for (const option of Object.keys(options))
      expect(option === 'lang' ? part : row).toContain(`--${option}`);
  }
});
