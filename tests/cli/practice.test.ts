import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { group } from '../../src/cli/practice.ts';
import { LAID_OUT_SEEDS, PROOF_SEEDS } from '../../src/practice/prove.ts';
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

describe('the manual in src/cli/README.md', () => {
  const manual = readFileSync(new URL('../../src/cli/README.md', import.meta.url), 'utf8');
  const part = manual.slice(manual.indexOf('\n## practice') + 1).split('\n## ')[0] ?? '';
  const [verbs = '', kinds = ''] = part.split('\n| kind |');
  const rows = [...verbs.matchAll(/^\| `(\w+)(.*?)`(.*)$/gm)];
  const rowOf = (verb: string) => rows.find((row) => row[1] === verb)?.[0] ?? '';
  const kindRows = new Map(
    [...kinds.matchAll(/^\| `(\w+)` \| (.*) \|$/gm)].map(([, kind = '', form = '']) => [kind, form]),
  );
  /** What a verb answers, and of each kind of ask the first family that has one. */
  const result = async (...words: readonly string[]) => (await inProcess(group, words)).one.result;
  const families = async () => (await result('list'))['families'] as { id: string; kinds: string[] }[];
  const ofEachKind = async () => {
    const all = await families();
    const first = [...kindRows.keys()].map(
      (kind) => all.find((family) => family.kinds.includes(kind))?.id ?? kind,
    );
    return [...new Set(first)];
  };

  test('has a row for every verb, with the options it takes', () => {
    expect(rows.map((row) => row[1])).toEqual(group.verbs.map((v) => v.name));
    for (const { name, options = {} } of group.verbs) {
      const row = rows.find((r) => r[1] === name)?.[2] ?? '';
      for (const option of Object.keys(options))
        expect(option === 'lang' ? part : row).toContain(`--${option}`);
    }
  });

  test('names how often prove draws when nothing is said, and at most', async () => {
    const [, all, laidOut] = /\]` \((\d+), and (\d+) where a run is laid out\)/.exec(rowOf('prove')) ?? [];
    expect([all, laidOut].map(Number)).toEqual([PROOF_SEEDS, LAID_OUT_SEEDS]);
    const most = /N to (\d+)/.exec(rowOf('prove'))?.[1] ?? '';
    const [fault] = (await inProcess(group, ['prove', 'nothing', '--seeds', `${most}1`])).one.errors.filter(
      ({ field }) => field === '--seeds',
    );
    expect(fault?.todo).toBe(`write a whole number from 1 to ${most}`);
  });

  test('has a row for every kind that a family asks, and for no other', async () => {
    const asked = new Set((await families()).flatMap((family) => family.kinds));
    expect([...kindRows.keys()].sort()).toEqual([...asked].sort());
  });

  test('names the fields of every answer of a verb: no other comes, and those without ? always', async () => {
    const seen: Readonly<Record<string, unknown[]>> = { list: [], draw: [], key: [], grade: [], prove: [] };
    seen['list']?.push(await result('list'));
    seen['prove']?.push(await result('prove', 'cut-with-insertion', '--seeds', '1'));
    // A number that is one out has a direction; all else is answered as the key says.
    for (const id of await ofEachKind()) {
      const key = await result('key', id, '--seed', '1');
      const answers = Object.entries(key['answers'] as object).map(([ask, right]) => [
        ask,
        typeof right === 'number' ? right + 1 : right,
      ]);
      const file = join(folder, 'answers.json');
      writeFileSync(file, JSON.stringify({ answers: Object.fromEntries(answers) }));
      seen['draw']?.push(await result('draw', id, '--seed', '1'));
      seen['key']?.push(key);
      seen['grade']?.push(await result('grade', id, '--seed', '1', file));
    }
    for (const [verb, answers] of Object.entries(seen)) {
      const form = [...rowOf(verb).matchAll(/`(\{\w.*?\})`/g)].map((found) => readForm(found[1] ?? ''))[0];
      expect(form, verb).toBeDefined();
      if (form !== undefined) expect(misfits(form, answers, verb), verb).toEqual([]);
    }
  });

  test('names the fields of a mark and of a length that is cut', async () => {
    const found = await Promise.all(
      (await ofEachKind()).map(async (id) => {
        const { asks } = (await result('draw', id, '--seed', '1')) as {
          asks?: { id: string; kind: string }[];
        };
        const answers = (await result('key', id, '--seed', '1'))['answers'] as Record<string, unknown>;
        return (asks ?? []).map(({ id: ask, kind }) => [kind, answers[ask]] as const);
      }),
    );
    for (const kind of ['place', 'faults', 'sticks']) {
      const answers = found.flat().flatMap(([of, answer]) => (of === kind ? [answer] : []));
      expect(answers.length, kind).toBeGreaterThan(0);
      const form = readForm(/`(\[\{.*?\}\])`/.exec(kindRows.get(kind) ?? '')?.[1] ?? '');
      expect(misfits(form, answers, kind), kind).toEqual([]);
    }
  });
});

/** What the manual says of a value: fields by name, of itself or of its rows; `null`: nothing more than that it is there. */
interface Form {
  readonly rows: boolean;
  readonly fields: ReadonlyMap<string, { readonly optional: boolean; readonly form: Form }> | null;
}

/** Reads `{id,title?,asks[{id,unit?}],answers{ask:value},kinds[]}`. */
function readForm(text: string): Form {
  let at = 0;
  const takes = (sign: string) => {
    const found = text.startsWith(sign, at);
    if (found) at += sign.length;
    return found;
  };
  const value = (): Form => {
    if (takes('[')) {
      const { fields } = value();
      if (!takes(']')) throw new Error(`] is missing at ${at} of ${text}`);
      return { rows: true, fields };
    }
    if (!takes('{')) return { rows: false, fields: null };
    const fields = new Map<string, { optional: boolean; form: Form }>();
    for (;;) {
      const name = /^\w+/.exec(text.slice(at))?.[0] ?? '';
      at += name.length;
      // `{ask:value}`: names that differ from draw to draw.
      if (takes(':')) {
        at = text.indexOf('}', at) + 1;
        return { rows: false, fields: null };
      }
      if (name === '') throw new Error(`no field at ${at} of ${text}`);
      fields.set(name, { optional: takes('?'), form: value() });
      if (takes('}')) return { rows: false, fields };
      if (!takes(',')) throw new Error(`, is missing at ${at} of ${text}`);
    }
  };
  return value();
}

/** Fields that came and are not named, are named and never came, or are named as always there and were not once. */
function misfits({ rows, fields }: Form, values: readonly unknown[], at: string): readonly string[] {
  if (rows && values.some((one) => !Array.isArray(one))) return [`${at} is no list`];
  if (fields === null) return [];
  const all = (rows ? values.flat() : values) as Readonly<Record<string, unknown>>[];
  const came = new Set(all.flatMap((one) => Object.keys(one)));
  return [
    ...[...came].filter((name) => !fields.has(name)).map((name) => `${at}.${name} is not named`),
    ...[...fields].flatMap(([name, { optional, form }]) => {
      const there = all.filter((one) => Object.hasOwn(one, name)).map((one) => one[name]);
      if (there.length === 0) return all.length === 0 ? [] : [`${at}.${name} never came`];
      const missing = there.length < all.length && !optional ? [`${at}.${name} did not always come`] : [];
      const always = there.length === all.length && optional ? [`${at}.${name} always came`] : [];
      return [...missing, ...always, ...misfits(form, there, `${at}.${name}`)];
    }),
  ];
}
