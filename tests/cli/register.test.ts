/** The register's verbs as scripts: the command, what it says, and what must not have changed afterwards. */
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { map } from '../register/book.ts';
import type { Printed } from './command.ts';
import { called } from './registerDisk.ts';

interface Stands {
  standing: string;
  since: string | null;
  until: string | null;
  why: { code: string; say: string; entry: string | null }[];
  entries: string[];
}
/** What the verbs print, all of it together. */
interface Result {
  publicKey: string;
  entry: string;
  knownOn: string | null;
  zone: string;
  problems: { code: string; message: string; file: string; line?: number; settled?: true }[];
  signers: { id: string; device: string; person: string | null; last: number; at: string }[];
  people: {
    id: string;
    tickets: unknown[];
    tasks: Record<string, Stands & { variants: (Stands & { variant: Record<string, string> })[] }>;
  }[];
  tasks: { id: string }[];
}
type Json = Omit<Printed, 'result'> & { result: Result };
interface Answer {
  exit: number | null;
  json: Json;
}
async function run([, verb = '', ...words]: readonly string[]): Promise<Answer> {
  const { exit, one } = await called(verb, ...words);
  return { exit, json: one as unknown as Json };
}

const folder = mkdtempSync(join(tmpdir(), 'trayhand-register-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);

const mapFile = at('map.json');
const nothingFile = at('null.json');
const withMap = ['--map', mapFile];
const keys: Record<string, string> = {};
const call = (...words: string[]): Promise<Answer> => run(['register', ...words]);
const makeKey = async (name: string, ...more: string[]): Promise<void> => {
  const { json } = await call('key', '--out', at(`${name}.json`), ...more);
  keys[name] = json.result.publicKey;
};
const check = (dir: string, key: string, on: string, ...more: string[]) =>
  call('check', dir, '--key', at(`${key}.json`), '--on', on, '--at', `${on}T18:00:00Z`, ...withMap, ...more);
const said = (a: Answer): string[] => a.json.errors.map((e) => `${e.field}: ${e.message}`);

/** Every file of a folder with its text. */
const snapshot = (dir: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(dir, { recursive: true, withFileTypes: true })
      .filter((e) => e.isFile())
      .map((e) => [join(e.parentPath, e.name), readFileSync(join(e.parentPath, e.name), 'utf8')]),
  );
/** A call that must be refused, and leave the folder as it was. */
async function refused(dir: string, words: string[]): Promise<Answer> {
  const before = snapshot(dir);
  const answer = await run(words);
  expect([answer.exit, answer.json.ok]).toEqual([2, false]);
  expect(snapshot(dir)).toEqual(before);
  for (const error of answer.json.errors) {
    expect(Object.keys(error).every((k) => ['file', 'field', 'value', 'message', 'todo'].includes(k))).toBe(
      true,
    );
    expect([typeof error.field, error.message.length > 0, error.todo.length > 0]).toEqual([
      'string',
      true,
      true,
    ]);
  }
  return answer;
}

const dir = at('register');
beforeAll(async () => {
  writeFileSync(mapFile, JSON.stringify(map));
  writeFileSync(nothingFile, 'null');
  for (const name of ['owner', 'kd', 'lz', 'none']) await makeKey(name, '--device', `${name}-1`);
  await call(
    'begin',
    dir,
    '--owner',
    at('owner.json'),
    '--person',
    'OW',
    '--zone',
    'America/Denver',
    '--at',
    '2026-01-01T12:00:00Z',
  );
  const appoint = (who: string, tasks: string) =>
    call(
      'appoint',
      dir,
      '--key',
      at('owner.json'),
      '--witness',
      keys[who] ?? '',
      '--person',
      who.toUpperCase(),
      '--tasks',
      tasks,
      '--on',
      '2026-01-02',
      '--at',
      '2026-01-02T12:00:00Z',
      ...withMap,
    );
  await appoint('kd', 'all');
  await appoint('lz', 'T1,T2');
});

describe('key', () => {
  test('prints the public half and writes one file that only its owner reads', async () => {
    const answer = await call('key', '--out', at('one.json'));
    expect([answer.exit, answer.json.ok, answer.json.steps, answer.json.sources]).toEqual([0, true, [], []]);
    expect(Object.keys(answer.json.result)).toEqual(['publicKey']);
    expect(answer.json.result.publicKey).toMatch(/^[0-9a-f]{64}$/);
    expect(statSync(at('one.json')).mode & 0o777).toBe(0o600);
    const file = JSON.parse(readFileSync(at('one.json'), 'utf8'));
    expect(file.device).toMatch(/^[A-Za-z0-9-]{1,32}$/);
    expect(file.publicKey).toBe(answer.json.result.publicKey);
    const again = await refused(folder, ['register', 'key', '--out', at('one.json')]);
    expect(said(again)).toEqual(['--out: there is a file of this name, and a key is never overwritten']);
  });
  test('wrapped by a passphrase, it signs with it and not without', async () => {
    writeFileSync(at('pass'), 'a long phrase\n');
    writeFileSync(at('wrong'), 'another');
    await makeKey('shut', '--pass-file', at('pass'));
    expect(readFileSync(at('shut.json'), 'utf8')).toContain('PBKDF2-SHA-256');
    const begin = (name: string, ...more: string[]) =>
      call('begin', at(name), '--owner', at('shut.json'), ...more);
    expect(said(await begin('shut-1'))).toEqual(['--pass-file: the key is wrapped']);
    expect(said(await begin('shut-1', '--pass-file', at('wrong')))).toEqual([
      '--pass-file: does not open this key',
    ]);
    expect(existsSync(at('shut-1'))).toBe(false);
    expect((await begin('shut-1', '--pass-file', at('pass'))).exit).toBe(0);
  });
  test.each([
    [['key'], ['--out: is missing']],
    [['key', '--out', at('x.json'), '--device', 'my phone'], ['--device: no name of a device']],
    [['key', '--out', at('x.json'), '--pass-file', at('no-such')], ['--pass-file: there is no such file']],
    [['key', '--out', at('no/such/folder.json')], [expect.stringContaining('--out: cannot be written')]],
    [['key', '--out', at('x.json'), '--at', '2026-01-01'], ['--at: no instant with seconds and an offset']],
  ])('%j is refused', async (words, want) => {
    expect(said(await refused(folder, ['register', ...words]))).toEqual(want);
  });
});

describe('begin', () => {
  test('never overwrites, and knows its zones', async () => {
    const again = await refused(folder, ['register', 'begin', dir, '--owner', at('owner.json')]);
    expect(said(again)).toEqual(['DIR: a register is here, and is never overwritten']);
    const wrong = await refused(folder, [
      'register',
      'begin',
      at('b2'),
      '--owner',
      at('kd.json'),
      '--zone',
      'Mars/Base',
      '--person',
      'K D',
      '--device',
      'a_b',
    ]);
    expect(said(wrong).map((s) => s.split(':')[0])).toEqual(['--zone', '--person', '--device']);
    expect(
      said(await refused(folder, ['register', 'begin', at('b2'), '--owner', at('map.json')]))[0],
    ).toContain('--owner: not a key file');
    expect(existsSync(at('b2'))).toBe(false);
  });
  test('UTC when no zone is given; two devices of one key do not get in each other’s way', async () => {
    await call('begin', at('plain'), '--owner', at('owner.json'), '--at', '2026-01-01T12:00:00Z');
    const appoint = (device: string) =>
      call(
        'appoint',
        at('plain'),
        '--key',
        at('owner.json'),
        '--witness',
        at('kd.json'),
        '--person',
        'KD',
        '--tasks',
        'all',
        '--on',
        '2026-01-01',
        '--at',
        '2026-01-01T13:00:00+01:00',
        '--device',
        device,
      );
    expect((await appoint('Desk')).json.result.entry).toMatch(/^[0-9a-f]{64}$/);
    expect((await appoint('desk')).exit).toBe(0);
    const { json } = await call(
      'verify',
      at('plain'),
      '--owner',
      keys['owner'] ?? '',
      '--at',
      '2026-01-02T00:00:00Z',
    );
    expect(json.result.signers.map((s) => s.device)).toEqual(['Desk', 'desk', 'owner-1']);
    expect((await call('board', at('plain'), '--on', '2026-01-02')).json.result.zone).toBe('UTC');
  });
});

describe('appoint', () => {
  const words = (more: Record<string, string>) => {
    const given = {
      key: at('owner.json'),
      witness: keys['none'] ?? '',
      person: 'NN',
      tasks: 'all',
      on: '2026-01-02',
      at: '2026-01-03T12:00:00Z',
      map: mapFile,
      ...more,
    };
    return ['register', 'appoint', dir, ...Object.entries(given).flatMap(([k, v]) => [`--${k}`, v])];
  };
  test.each([
    ['a key that is not the owner’s', { key: at('kd.json') }, ['--key: not the owner’s key']],
    ['a key of somebody else', { witness: 'kd' }, ['--person: the key is bound to KD for good']],
    [
      'no key',
      { witness: '00'.repeat(32) },
      ['--witness: not a key that can be trusted (not canonical, or of small order)'],
    ],
    ['a heading', { tasks: 'T1,T9' }, ['--tasks: a heading is not shown itself']],
    [
      'unknown tasks, an outside ticket',
      { tasks: 'T7,W1' },
      ['--tasks: no such task', '--tasks: no such task'],
    ],
    ['no day', { on: '2026-02-30' }, ['--on: no day of the calendar']],
    ['no id', { person: 'N N' }, ['--person: an id wants 1 to 64 letters, digits, or -_.']],
    [
      'earlier than what it follows',
      { at: '2026-01-02T11:59:59Z' },
      ['--at: earlier than an entry that it follows (2026-01-02T12:00:00.000Z)'],
    ],
    [
      'an instant without an offset',
      { at: '2026-01-03T12:00:00' },
      ['--at: no instant with seconds and an offset'],
    ],
  ])('%s is refused', async (_, more, want) => {
    const given = 'witness' in more && more.witness === 'kd' ? { witness: keys['kd'] ?? '' } : more;
    expect(said(await refused(dir, words(given)))).toEqual(want);
  });
  test('everything missing is named at once', async () => {
    const answer = await refused(dir, ['register', 'appoint', dir]);
    expect(answer.json.errors.map((e) => e.field).sort()).toEqual([
      '--key',
      '--on',
      '--person',
      '--tasks',
      '--witness',
    ]);
  });
  test('an empty value is a missing one', async () => {
    for (const field of ['key', 'on', 'person', 'tasks', 'witness']) {
      const found = said(await refused(dir, words({ [field]: '' })));
      expect(found.map((s) => s.split(':')[0])).toEqual([`--${field}`]);
    }
    const board = await refused(dir, ['register', 'board', dir, '--on', '', '--known-on', '']);
    expect(said(board)).toEqual(['--on: is missing', '--known-on: no day of the calendar']);
  });
  test('no register there', async () => {
    const answer = await run([...words({}).slice(0, 2), at('nowhere'), ...words({}).slice(3)]);
    expect([answer.exit, said(answer)]).toEqual([2, ['DIR: no register is here']]);
    expect(existsSync(at('nowhere'))).toBe(false);
  });
});

describe('check, verify, board', () => {
  const base = ['--person', 'DM', '--task', 'T1', '--outcome', 'shown'];

  test.each<[string, string, string[], (string | RegExp)[]]>([
    [
      'a witness for himself',
      'kd',
      ['--person', 'KD', '--task', 'T1', '--outcome', 'shown'],
      ['--person: nobody signs for himself'],
    ],
    [
      'a witness not appointed for the task',
      'lz',
      ['--person', 'DM', '--task', 'T4', '--outcome', 'shown'],
      ['--key: not appointed for T4 on 2026-02-02'],
    ],
    ['a stranger', 'none', base, ['--key: not appointed for T1 on 2026-02-02']],
    ['the owner, who is no witness', 'owner', base, ['--key: not appointed for T1 on 2026-02-02']],
    [
      'an unknown task',
      'kd',
      ['--person', 'DM', '--task', 'T7', '--outcome', 'shown'],
      ['--task: no such task'],
    ],
    [
      'a heading',
      'kd',
      ['--person', 'DM', '--task', 'T9', '--outcome', 'shown'],
      ['--task: a heading is not shown itself'],
    ],
    [
      'an outside ticket',
      'kd',
      ['--person', 'DM', '--task', 'W1', '--outcome', 'shown'],
      ['--task: no such task'],
    ],
    [
      'unknown pair and value',
      'kd',
      ['--person', 'DM', '--task', 'T2', '--outcome', 'shown', '--variant', 'width=5,colour=red'],
      ['--variant.width: T2 knows no such width', '--variant.colour: T2 knows no such pair'],
    ],
    ['no pairs', 'kd', [...base, '--variant', 'width'], ['--variant: no pair with its value']],
    ['a pair twice', 'kd', [...base, '--variant', 'a=1,a=2'], ['--variant: a stands twice']],
    ['stopped and shown', 'kd', [...base, '--stopped'], ['--stopped: a stopped attempt shows nothing']],
    [
      'other choices',
      'kd',
      ['--person', 'DM', '--task', 'T1', '--outcome', 'maybe', '--manner', 'watched', '--help-given', 'some'],
      ['--outcome: no such choice', '--manner: no such choice', '--help-given: no such choice'],
    ],
    ['in sight: perhaps', 'kd', [...base, '--in-sight', 'perhaps'], ['--in-sight: no such choice']],
    [
      'a revision to come',
      'kd',
      [...base, '--revision', '2'],
      ['--revision: not a revision of T1 in force by the day seen'],
    ],
    ['no revision', 'kd', [...base, '--revision', '0'], ['--revision: no number of a revision']],
    ['measured, no list', 'kd', [...base, '--measured', mapFile], ['--measured: no list']],
    ['evidence that is none', 'kd', [...base, '--evidence', mapFile], [/^--evidence/]],
    ['evidence that says nothing', 'kd', [...base, '--evidence', nothingFile], ['--evidence: no answers']],
    ['an option nobody knows', 'kd', [...base, '--colour=red'], ['--colour: there is no such option here']],
    ['an option twice', 'kd', [...base, '--person', 'EI'], ['--person: this stands twice']],
  ])('%s is refused', async (_, key, more, want) => {
    const words = [
      'register',
      'check',
      dir,
      '--key',
      at(`${key}.json`),
      '--on',
      '2026-02-02',
      '--at',
      '2026-02-02T18:00:00Z',
      ...withMap,
      ...more,
    ];
    const found = said(await refused(dir, words));
    for (const [i, w] of want.entries())
      expect(found[i]).toEqual(typeof w === 'string' ? w : expect.stringMatching(w));
    if (want.every((w) => typeof w === 'string')) expect(found).toHaveLength(want.length);
  });

  test('what the options and what the register say against it come together, neither twice', async () => {
    const words = (...more: string[]) => [
      'register',
      'check',
      dir,
      '--key',
      at('lz.json'),
      ...withMap,
      ...more,
    ];
    const given = ['--person', 'LZ', '--task', 'T4', '--outcome', 'maybe', '--on', '2026-02-30'];
    const late = ['--at', '2026-02-03T18:00:00Z'];
    expect(said(await refused(dir, words(...given, '--in-sight', 'perhaps', ...late)))).toEqual([
      '--on: no day of the calendar',
      '--in-sight: no such choice',
      '--outcome: no such choice',
      '--person: nobody signs for himself',
    ]);
    expect(said(await refused(dir, words(...given, '--at', 'now')))).toEqual([
      '--at: no instant with seconds and an offset',
      '--on: no day of the calendar',
    ]);
    const keyless = ['register', 'appoint', at('nowhere'), ...withMap];
    expect(said(await refused(dir, keyless)).at(-1)).toBe('DIR: no register is here');
    const headless = ['register', 'check', at('nowhere'), ...words(...given, ...late).slice(3)];
    expect(said(await refused(dir, headless))).toEqual([
      '--on: no day of the calendar',
      'DIR: no register is here',
    ]);
  });

  test('a day after the day of entry, in the register’s zone', async () => {
    const own = at('zone');
    cpSync(dir, own, { recursive: true });
    // 2026-02-03T05:00Z is still 2 February in Denver (UTC-7 in winter: common practice of that zone)
    const words = (on: string) => [
      'register',
      'check',
      own,
      '--key',
      at('kd.json'),
      ...base,
      '--on',
      on,
      '--at',
      '2026-02-03T05:00:00Z',
      ...withMap,
    ];
    expect(said(await refused(own, words('2026-02-03')))).toEqual([
      '--on: after the day of entry (2026-02-02 in America/Denver)',
    ]);
    expect((await run(words('2026-02-02'))).exit).toBe(0);
  });

  test('from a check to the board, and every shape on the way', async () => {
    const own = at('way');
    cpSync(dir, own, { recursive: true });
    writeFileSync(
      at('measured.json'),
      JSON.stringify([
        { what: 'piece 1', wanted: '7\'-8"', got: '7\'-8"' },
        { what: 'piece 2', wanted: '1"', got: '1"', tool: 'tape 4' },
      ]),
    );
    const shown = (await check(own, 'kd', '2026-02-02', ...base, '--measured', at('measured.json'))).json
      .result;
    expect(Object.keys(shown)).toEqual(['entry']);
    const body = Object.values(snapshot(join(own, 'bodies')))
      .map((t) => JSON.parse(t))
      .find((b) => b.measured?.length === 2);
    expect(body.measured[0]).toEqual({ what: 'piece 1', wanted: '7\'-8"', got: '7\'-8"', tool: null });
    const six = (
      await check(
        own,
        'lz',
        '2026-02-03',
        '--person',
        'DM',
        '--task',
        'T2',
        '--outcome',
        'shown',
        '--variant',
        'width=6',
        '--help-given',
        'with-help',
      )
    ).json.result.entry;
    const not = (
      await check(
        own,
        'kd',
        '2026-02-05',
        '--person',
        'EI',
        '--task',
        'T4',
        '--outcome',
        'not-yet',
        '--stopped',
      )
    ).json.result.entry;
    expect(not).toMatch(/^[0-9a-f]{64}$/);

    const verified = await call(
      'verify',
      own,
      '--owner',
      keys['owner'] ?? '',
      '--at',
      '2026-03-01T00:00:00Z',
    );
    expect(verified.exit).toBe(0);
    expect(verified.json.result).toMatchObject({
      owner: keys['owner'],
      begin: expect.stringMatching(/^[0-9a-f]{64}$/),
      entries: 6,
      problems: [],
    });
    expect(verified.json.result.signers.find((s) => s.id === keys['kd'])).toEqual({
      id: keys['kd'],
      device: 'kd-1',
      person: 'KD',
      last: 1,
      at: '2026-02-05T18:00:00.000Z',
    });

    writeFileSync(at('people.json'), JSON.stringify({ people: [{ id: 'ZZ', name: 'Z' }, { id: 'DM' }] }));
    const board = await call(
      'board',
      own,
      '--on',
      '2026-02-10',
      '--people',
      at('people.json'),
      '--at',
      '2026-03-01T00:00:00Z',
      ...withMap,
    );
    const { people, ...rest } = board.json.result;
    expect(rest).toMatchObject({
      on: '2026-02-10',
      knownOn: null,
      zone: 'America/Denver',
      owner: keys['owner'],
      notes: [expect.stringContaining('No key is named')],
    });
    expect(Object.keys(rest)).toEqual(['on', 'knownOn', 'zone', 'owner', 'signers', 'notes']);
    expect(people.map((p) => p.id)).toEqual(['DM', 'EI', 'KD', 'LZ', 'OW', 'ZZ']);
    const [dm, ei] = people as [Result['people'][number], Result['people'][number]];
    expect(Object.keys(dm)).toEqual(['id', 'tickets', 'tasks']);
    expect(dm.tasks['T1']).toEqual({
      standing: 'shown',
      since: '2026-02-02',
      until: '2027-02-02',
      why: [],
      entries: [shown.entry],
      variants: [
        {
          variant: {},
          standing: 'shown',
          since: '2026-02-02',
          until: '2027-02-02',
          why: [],
          entries: [shown.entry],
        },
      ],
    });
    expect(dm.tasks['T2']?.variants).toEqual([
      {
        variant: { joint: 'socketed', width: '6' },
        standing: 'practice only',
        since: '2026-02-03',
        until: null,
        why: [],
        entries: [six],
      },
    ]);
    expect(ei.tasks['T4']?.standing).toBe('not shown');
    expect(dm.tasks['T9']?.standing).toBe('not shown');

    const later = await call(
      'board',
      own,
      '--on',
      '2027-03-01',
      '--months',
      'T2=3,T4=2',
      '--at',
      '2027-03-01T00:00:00Z',
      ...withMap,
    );
    expect(later.json.result.people[0]?.tasks['T1']?.why).toEqual([
      { code: '2', say: 'revision 2 of 2026-03-01 asks for it again', entry: shown.entry },
      { code: 'T', say: 'good to the end of 2027-02-02', entry: shown.entry },
    ]);
    const known = await call(
      'board',
      own,
      '--on',
      '2026-02-10',
      '--known-on',
      '2026-02-01',
      '--at',
      '2026-03-01T00:00:00Z',
      ...withMap,
    );
    expect(known.json.result.people[0]?.tasks['T1']?.standing).toBe('not shown');
    expect(known.json.result.knownOn).toBe('2026-02-01');
  });

  test.each([
    [['--on', '2026-13-01'], ['--on: no day of the calendar']],
    [[], ['--on: is missing']],
    [['--on', '2026-02-01', '--months', 'T7=3'], ['--months: T7 is no task that is shown itself']],
    [['--on', '2026-02-01', '--months', 'T4=0'], ['--months: no task with its months']],
    [['--on', '2026-02-01', '--months', 'T9=3'], ['--months: T9 is no task that is shown itself']],
    [['--on', '2026-02-01', '--known-on', 'today'], ['--known-on: no day of the calendar']],
    [['--on', '2026-02-01', '--people', mapFile], ['--people: no list of people']],
    [['--on', '2026-02-01', '--at', 'now'], ['--at: no instant with seconds and an offset']],
    [
      ['--on', '2026-02-01', '--at', '2026-12-01T19:00-07:00'],
      ['--at: no instant with seconds and an offset'],
    ],
  ])('board %j is refused', async (more, want) => {
    expect(said(await refused(dir, ['register', 'board', dir, ...withMap, ...more]))).toEqual(want);
  });
});

describe('what is wrong with a register', () => {
  const copy = (name: string): string => {
    cpSync(dir, at(name), { recursive: true });
    return at(name);
  };
  const fileOf = (own: string, key: string): string =>
    join(
      own,
      'headers',
      readdirSync(join(own, 'headers')).find((f) => f.startsWith(keys[key] ?? '?')) ?? '?',
    );
  const codes = async (own: string, ...more: string[]): Promise<[number | null, string[]]> => {
    const { exit, json } = await call('verify', own, '--at', '2026-03-01T00:00:00Z', ...more);
    for (const p of json.result.problems)
      expect(Object.keys(p).every((k) => ['file', 'line', 'code', 'message', 'settled'].includes(k))).toBe(
        true,
      );
    return [exit, json.result.problems.map((p) => p.code)];
  };

  test('a torn tail is reported, and its own file is not written to', async () => {
    const own = copy('torn');
    await check(own, 'kd', '2026-02-02', '--person', 'DM', '--task', 'T1', '--outcome', 'shown');
    appendFileSync(fileOf(own, 'kd'), '{"header":');
    expect(await codes(own)).toEqual([1, ['torn-tail']]);
    const words = (key: string) => [
      'register',
      'check',
      own,
      '--key',
      at(`${key}.json`),
      '--person',
      'DM',
      '--task',
      'T1',
      '--outcome',
      'shown',
      '--on',
      '2026-02-03',
      '--at',
      '2026-02-03T18:00:00Z',
      ...withMap,
    ];
    expect((await refused(own, words('kd'))).json.errors[0]?.todo).toContain('mend');
    expect((await run(words('lz'))).exit).toBe(0);
  });
  test('another owner than the one asked for', async () => {
    expect(await codes(dir, '--owner', keys['kd'] ?? '')).toEqual([1, ['foreign-file']]);
    expect(await codes(dir, '--owner', at('owner.json'))).toEqual([0, []]);
  });
  test('a beginning that cannot be read: verify says so, the others refuse', async () => {
    const own = copy('headless');
    const file = fileOf(own, 'owner');
    writeFileSync(file, readFileSync(file, 'utf8').replace('"kind":"begin"', '"kind":"begim"'));
    expect(await codes(own)).toEqual([1, ['unreadable', 'gap']]);
    expect(said(await refused(own, ['register', 'board', own, '--on', '2026-02-01', ...withMap]))).toEqual([
      'DIR: its beginning cannot be read',
    ]);
  });
  test('a fork of a copied register, joined by hand', async () => {
    const [own, other] = [copy('fork-1'), copy('fork-2')];
    await check(own, 'kd', '2026-02-02', '--person', 'DM', '--task', 'T1', '--outcome', 'shown');
    await check(other, 'kd', '2026-02-03', '--person', 'EI', '--task', 'T1', '--outcome', 'shown');
    appendFileSync(fileOf(own, 'kd'), readFileSync(fileOf(other, 'kd'), 'utf8'));
    cpSync(join(other, 'bodies'), join(own, 'bodies'), { recursive: true });
    expect(await codes(own)).toEqual([1, ['fork']]);
    const board = await call('board', own, '--on', '2026-02-10', '--at', '2026-03-01T00:00:00Z', ...withMap);
    expect(board.json.result.people[0]?.tasks['T1']?.why[0]?.code).toBe('?');
  });
});

describe('tasks', () => {
  test('prints the map, which is a map', async () => {
    const { json } = await call('tasks');
    expect(Object.keys(json.result)).toEqual(['tasks']);
    for (const task of json.result.tasks) {
      expect(Object.keys(task)).toEqual([
        'id',
        'months',
        'second',
        'tickets',
        'variants',
        'revisions',
        'parts',
        'trainHours',
      ]);
    }
    expect(json.result.tasks.map((t) => t.id)).toContain('T08f');
    writeFileSync(at('site-map.json'), JSON.stringify(json.result));
    expect((await call('tasks', '--map', at('site-map.json'))).json.result).toEqual(json.result);
    expect((await call('tasks', '--map', mapFile)).json.result.tasks).toHaveLength(6);
  });
  test('every fault of a map at once', async () => {
    const bad = {
      tasks: [
        { id: 'T1', months: 0, variants: { w: ['4', '4'] }, more: 1 },
        { id: 'T1', months: 12, parts: ['T5'] },
        7,
      ],
      note: '',
    };
    writeFileSync(at('bad-map.json'), JSON.stringify(bad));
    const answer = await call('tasks', '--map', at('bad-map.json'));
    expect(answer.exit).toBe(2);
    expect(answer.json.errors.map((e) => e.field)).toEqual([
      '--map.note',
      '--map.tasks[0].more',
      '--map.tasks[0].months',
      '--map.tasks[0].variants',
      '--map.tasks[2]',
      '--map.tasks[1].parts[0]',
    ]);
    writeFileSync(at('bad-map.json'), '{"tasks":[],"tasks":[]}');
    expect(said(await call('tasks', '--map', at('bad-map.json')))[0]).toContain('stands twice');
  });
});
