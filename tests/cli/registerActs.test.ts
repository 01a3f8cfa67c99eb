/** Every act through the command: a whole history, and every refusal leaving the folder byte for byte as it was. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { map } from '../register/book.ts';
import type { Called } from './inProcess.ts';
import { called } from './registerDisk.ts';

const folder = mkdtempSync(join(tmpdir(), 'trayhand-acts-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);
const names = ['owner', 'kd', 'kdOld', 'lz', 'next', 'none'] as const;
type Name = (typeof names)[number];
const keys = {} as Record<Name, string>;
const never = 'ab'.repeat(32);

/** Calls a verb that signs, at an instant of 2026-02 or at the one that is given. */
const signs = (dir: string, verb: string, key: Name, when: string, ...more: string[]): Promise<Called> => {
  const now = more.includes('--at') ? [] : ['--at', `2026-02-${when}:00Z`];
  return called(verb, dir, '--key', at(`${key}.json`), ...now, '--map', at('map.json'), ...more);
};
const said = ({ one }: Called): string[] => one.errors.map((e) => `${e.field}: ${e.message}`);

/** The id of what was signed. */
async function signed(
  dir: string,
  verb: string,
  key: Name,
  when: string,
  ...more: string[]
): Promise<string> {
  const { exit, one } = await signs(dir, verb, key, when, ...more);
  expect([exit, one.errors]).toEqual([0, undefined]);
  const { entry } = one.result;
  expect(entry).toMatch(/^[0-9a-f]{64}$/);
  return String(entry);
}
const problems = async (dir: string): Promise<string[]> => {
  const { one } = await called('verify', dir, '--at', '2026-03-01T12:00:00Z');
  return (one.result['problems'] as { code: string; settled?: true }[]).map((p) =>
    p.settled === true ? `${p.code} settled` : p.code,
  );
};
interface Row {
  readonly id: string;
  readonly erased?: true;
  readonly tickets: readonly { readonly ticket: string }[];
  readonly tasks: Readonly<Record<string, { readonly standing: string; readonly why: { code: string }[] }>>;
}
const board = async (dir: string, on: string, person: string): Promise<Row | undefined> => {
  const words = ['--on', on, '--at', '2026-03-01T12:00:00Z', '--map', at('map.json')];
  const { one } = await called('board', dir, ...words);
  return (one.result['people'] as Row[]).find((p) => p.id === person);
};
const standing = async (dir: string, on: string, person: string, task: string): Promise<string | undefined> =>
  (await board(dir, on, person))?.tasks[task]?.standing;

const snapshot = (dir: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(dir, { recursive: true, withFileTypes: true })
      .filter((e) => e.isFile())
      .map((e) => join(e.parentPath, e.name))
      .map((path) => [path, readFileSync(path).toString('latin1')]),
  );

/** Calls that must all be refused, with what they say; the folder stays byte for byte as it was. */
async function refused(
  dir: string,
  calls: readonly (readonly [verb: string, key: Name, more: readonly string[], faults: readonly unknown[]])[],
): Promise<void> {
  const before = snapshot(dir);
  for (const [verb, key, more, faults] of calls) {
    const answer = await signs(dir, verb, key, '20T12:00', ...more);
    expect([answer.exit, answer.one.ok], `${verb} ${more.join(' ')}`).toEqual([2, false]);
    expect(said(answer), `${verb} ${more.join(' ')}`).toEqual(faults);
    expect(answer.one.errors.every((e) => e.todo.length > 0)).toBe(true);
  }
  expect(snapshot(dir)).toEqual(before);
}

const staffed = at('staffed');
let check: string;
beforeAll(async () => {
  writeFileSync(at('map.json'), JSON.stringify(map));
  writeFileSync(at('null.json'), 'null');
  writeFileSync(at('answers.json'), '{"v":1,"kind":"answers"}');
  for (const name of names) {
    const { one } = await called('key', '--out', at(`${name}.json`), '--device', `${name}-1`);
    keys[name] = String(one.result['publicKey']);
  }
  await called(
    'begin',
    staffed,
    '--owner',
    at('owner.json'),
    '--person',
    'OW',
    '--at',
    '2026-02-01T08:00:00Z',
  );
  const appoint = (who: Name, person: string, when: string, tasks: string) =>
    signed(
      staffed,
      'appoint',
      'owner',
      when,
      ...['--witness', keys[who], '--person', person, '--tasks', tasks, '--on', '2026-02-01'],
    );
  await appoint('kd', 'KD', '01T08:01', 'all');
  await appoint('kdOld', 'KD', '01T08:02', 'all');
  await appoint('lz', 'LZ', '01T08:03', 'T1,T3');
  const shown = ['--person', 'DM', '--task', 'T3', '--outcome', 'shown', '--on', '2026-02-02'];
  check = await signed(staffed, 'check', 'kd', '02T12:00', ...shown);
});

let copies = 0;
/** A copy of the staffed register to go on with. */
function fresh(): string {
  copies += 1;
  const dir = at(`copy-${copies}`);
  cpSync(staffed, dir, { recursive: true });
  return dir;
}
const why = ['--why', 'because'];

test('a whole history: second, ticket, assigned, withdraw, retire, succeed, take over, erase', async () => {
  const dir = fresh();
  expect(await standing(dir, '2026-02-03', 'DM', 'T3')).toBe('not shown');
  const two = await signed(dir, 'second', 'lz', '03T12:00', '--entry', check);
  expect(await standing(dir, '2026-02-03', 'DM', 'T3')).toBe('shown');
  const paper = ['--person', 'DM', '--issuer', 'a training house', '--number', '77', '--until', '2027-01-01'];
  await signed(dir, 'ticket', 'owner', '03T12:01', ...paper, '--ticket', 'W4');
  await signed(dir, 'ticket', 'lz', '03T12:02', ...paper, '--ticket', 'W1');
  expect((await board(dir, '2026-02-03', 'DM'))?.tickets.map((t) => t.ticket)).toEqual(['W1', 'W4']);
  const sent = await signed(
    dir,
    'assigned',
    'lz',
    '03T12:03',
    ...['--job', 'J1', '--person', 'DM', '--shift', '2026-02-04T07:00:00-07:00/2026-02-04T15:00:00-07:00'],
  );
  await signed(dir, 'withdraw', 'owner', '03T12:04', '--entry', sent, ...why);
  await signed(dir, 'withdraw', 'lz', '03T12:05', '--entry', two, ...why);
  const row = await board(dir, '2026-02-04', 'DM');
  expect([row?.tasks['T3']?.standing, row?.tasks['T3']?.why[0]?.code]).toEqual(['show again', 'W']);
  await signed(dir, 'succeed', 'owner', '05T12:00', '--next', keys.next);
  await signed(dir, 'retire', 'owner', '05T12:01', '--witness', keys.kd, '--after', check, ...why);
  await signed(dir, 'take-over', 'next', '06T12:00', ...why);
  await signed(dir, 'retire', 'next', '06T12:01', '--witness', keys.lz, '--after', 'none', ...why);
  expect(await problems(dir)).toEqual(Array(4).fill('after-retirement settled'));
  const bodies = () => readdirSync(join(dir, 'bodies')).length;
  const before = bodies();
  await signed(dir, 'erase', 'next', '06T12:02', '--person', 'DM', ...why);
  // Its own body comes; check, second, two tickets, the assignment and two withdrawals go.
  expect(bodies() - before).toBe(1 - 7);
  expect(await board(dir, '2026-02-07', 'DM')).toMatchObject({ erased: true, tickets: [] });
  expect(await problems(dir)).toEqual(Array(4).fill('after-retirement settled'));
  const { one } = await called('verify', dir, '--at', '2026-03-01T12:00:00Z');
  expect(one.result['owner']).toBe(keys.next);
});

test('two copies that forked: joined, settled by the owner from another device than the forked one', async () => {
  const [dir, other] = [fresh(), fresh()];
  const shown = (person: string) => [
    '--person',
    person,
    '--task',
    'T1',
    '--outcome',
    'shown',
    '--on',
    '2026-02-03',
  ];
  const left = await signed(dir, 'check', 'kd', '03T12:00', ...shown('DM'));
  await signed(other, 'check', 'kd', '03T12:01', ...shown('EI'));
  expect((await called('merge', dir, other)).exit).toBe(0);
  expect(await problems(dir)).toEqual(['fork']);
  expect([
    await standing(dir, '2026-02-03', 'DM', 'T1'),
    await standing(dir, '2026-02-03', 'EI', 'T1'),
  ]).toEqual(['show again', 'show again']);
  await signed(dir, 'settle', 'owner', '04T12:00', '--entry', left, ...why);
  expect(await problems(dir)).toEqual(['fork settled']);
  expect([
    await standing(dir, '2026-02-04', 'DM', 'T1'),
    await standing(dir, '2026-02-04', 'EI', 'T1'),
  ]).toEqual(['shown', 'not shown']);

  const [own, two] = [fresh(), fresh()];
  const named = await signed(own, 'succeed', 'owner', '03T12:00', '--next', keys.next);
  await signed(two, 'succeed', 'owner', '03T12:01', '--next', keys.none);
  expect((await called('merge', own, two)).exit).toBe(0);
  await refused(own, [
    [
      'settle',
      'owner',
      ['--entry', named, ...why],
      [expect.stringContaining('--device: a fork of the owner’s')],
    ],
  ]);
  await signed(own, 'settle', 'owner', '04T12:00', '--entry', named, '--device', 'desk', ...why);
  expect(await problems(own)).toEqual(['fork settled']);
  await refused(own, [['take-over', 'none', why, ['--key: not the key that the owner named last']]]);
  await signed(own, 'take-over', 'next', '05T12:00', ...why);
});

test('a line that is lost for good is settled', async () => {
  const dir = fresh();
  const shown = ['--task', 'T1', '--outcome', 'shown', '--on', '2026-02-03'];
  const gone = await signed(dir, 'check', 'kd', '03T12:00', '--person', 'DM', ...shown);
  await signed(dir, 'check', 'kd', '03T12:01', '--person', 'EI', ...shown);
  const chain = join(dir, 'headers', `${keys.kd}.kd-1.jsonl`);
  const lines = readFileSync(chain, 'utf8').split('\n');
  writeFileSync(chain, lines.filter((_, i) => i !== 1).join('\n'));
  expect(await problems(dir)).toEqual(['gap']);
  await refused(dir, [
    [
      'withdraw',
      'kd',
      ['--entry', gone, ...why],
      ['--entry: this entry is missing: it is cited, and not held here'],
    ],
    ['settle', 'kd', ['--entry', gone, ...why], ['--key: not the owner’s key']],
  ]);
  await signed(dir, 'settle', 'owner', '04T12:00', '--entry', gone, ...why);
  expect(await problems(dir)).toEqual(['gap settled']);
});

const heldAlready = ['--person', 'DM', '--number', '1', '--until', '2027-01-01', '--issuer', 'a'];
const job = ['--job', 'J1', '--person', 'DM'];
test('a second, a withdrawal, a correction: what is refused, and why', async () => {
  const dir = fresh();
  await signed(dir, 'second', 'lz', '03T12:00', '--entry', check);
  const entry = ['--entry', check];
  await refused(dir, [
    ['second', 'kd', entry, ['--key: the second witness is the witness of the check']],
    ['second', 'kdOld', entry, ['--key: the second witness is the witness of the check']],
    ['second', 'none', entry, ['--key: not appointed for T3 on 2026-02-02']],
    ['second', 'lz', ['--entry', check.slice(0, 16)], ['--entry: not the whole id of an entry']],
    ['second', 'lz', ['--entry', never], ['--entry: no such entry is in this register']],
    ['second', 'lz', [...entry, '--device', 'my phone'], [expect.stringMatching(/^--device: the device /)]],
    [
      'second',
      'lz',
      [...entry, '--at', '2026-02-02T11:00:00Z'],
      [expect.stringMatching(/^--at: earlier than/)],
    ],
    ['second', 'lz', [...entry, '--at', '2026-02-20'], ['--at: no instant with seconds and an offset']],
    [
      'withdraw',
      'none',
      [...entry, ...why],
      ['--key: neither the owner’s key nor one of the witness who signed that entry'],
    ],
    ['withdraw', 'kd', [...entry, '--why', ' '], ['--why: says nothing']],
    ['withdraw', 'kd', entry, ['--why: is missing']],
    ['correct', 'kd', [...entry, ...why, '--evidence', at('null.json')], ['--evidence: no answers']],
    ['correct', 'kd', [...entry, ...why], ['--evidence: is missing']],
    [
      'correct',
      'lz',
      [...entry, ...why, '--evidence', at('gone.json')],
      [
        '--evidence: there is no such file',
        '--key: neither the owner’s key nor one of the witness who signed that entry',
      ],
    ],
  ]);
});

test('an owner’s act: what is refused, and why', async () => {
  const entry = ['--entry', check];
  await refused(fresh(), [
    ['retire', 'kd', ['--witness', keys.lz, '--after', 'none', ...why], ['--key: not the owner’s key']],
    [
      'retire',
      'owner',
      ['--witness', keys.lz, '--after', `${check},${never},x`, ...why],
      [
        '--after[0]: not an entry of the key that is retired',
        '--after[1]: no such entry is in this register',
        '--after[2]: no id of an entry',
      ],
    ],
    [
      'retire',
      'owner',
      ['--witness', keys.kd, '--after', `${check},${check}`, ...why],
      ['--after[1]: a second entry of the device kd-1'],
    ],
    [
      'retire',
      'owner',
      ['--witness', keys.none, '--after', 'none', ...why],
      ['--witness: this key was never appointed'],
    ],
    ['retire', 'owner', ['--witness', keys.kd, ...why], ['--after: is missing']],
    ['settle', 'owner', [...entry, ...why], [expect.stringContaining('--entry: nothing to settle')]],
    [
      'settle',
      'owner',
      ['--entry', never, ...why],
      ['--entry: neither an entry here nor one that is missing'],
    ],
    ['succeed', 'owner', ['--next', keys.owner], ['--next: the owner’s own key']],
    ['succeed', 'kd', ['--next', keys.next], ['--key: not the owner’s key']],
    ['succeed', 'owner', ['--next', '00'.repeat(32)], [expect.stringMatching(/^--next: /)]],
    ['take-over', 'next', why, ['--key: the owner named no key that may take over']],
    [
      'erase',
      'owner',
      ['--person', 'KD', ...why],
      Array(2).fill(expect.stringMatching(/^--person: a key of/)),
    ],
    ['erase', 'owner', ['--person', 'XX', ...why], ['--person: nothing here is about this person']],
    ['erase', 'kd', ['--person', 'DM', ...why], ['--key: not the owner’s key']],
  ]);
});

test('a ticket, an assignment: what is refused, and why', async () => {
  await refused(fresh(), [
    ['ticket', 'kd', [...heldAlready, '--ticket', 'W9'], ['--ticket: wants W1 to W8']],
    [
      'ticket',
      'none',
      [...heldAlready, '--ticket', 'W1'],
      ['--key: neither the owner’s nor a witness’s key'],
    ],
    [
      'ticket',
      'kdOld',
      ['--person', 'KD', ...heldAlready.slice(2), '--ticket', 'W1'],
      ['--person: nobody signs about himself'],
    ],
    [
      'ticket',
      'kd',
      ['--person', 'DM', '--ticket', 'W1', '--issuer', '', '--number', '1', '--until', '2027-02-29'],
      ['--issuer: is missing', '--until: no day of the calendar'],
    ],
    ['assigned', 'kd', [...job, '--shift', '2026-02-04T07:00:00Z'], ['--shift: no two instants']],
    [
      'assigned',
      'kd',
      [...job, '--shift', '2026-02-04T07:00:00/2026-02-04T15:00:00Z'],
      ['--shift: no instant with seconds and an offset'],
    ],
    [
      'assigned',
      'kd',
      [...job, '--shift', '2026-02-04T07:00:00-07:00/2026-02-04T14:00:00Z'],
      ['--shift: not after the beginning of the shift'],
    ],
    [
      'assigned',
      'none',
      [...job, '--shift', '2026-02-04T07:00:00Z/2026-02-04T15:00:00Z'],
      ['--key: neither the owner’s nor a witness’s key'],
    ],
  ]);
});

test('after a withdrawal, an erase, a retirement and a take-over', async () => {
  const dir = fresh();
  await signed(dir, 'withdraw', 'kdOld', '03T12:00', '--entry', check, ...why);
  await refused(dir, [
    ['withdraw', 'owner', ['--entry', check, ...why], ['--entry: it was withdrawn already, for good']],
    ['second', 'lz', ['--entry', check], ['--entry: this check was withdrawn, for good']],
  ]);
  await signed(dir, 'erase', 'owner', '04T12:00', '--person', 'DM', ...why);
  const erased = '--person: this person was erased';
  const shown = ['--task', 'T1', '--outcome', 'shown', '--on', '2026-02-03'];
  await refused(dir, [
    ['erase', 'owner', ['--person', 'DM', ...why], [erased]],
    ['check', 'lz', ['--person', 'DM', ...shown], [erased]],
    ['ticket', 'lz', [...heldAlready, '--ticket', 'W1'], [erased]],
    ['assigned', 'lz', [...job, '--shift', '2026-02-04T07:00:00Z/2026-02-04T15:00:00Z'], [erased]],
    [
      'appoint',
      'owner',
      ['--witness', keys.none, '--person', 'DM', '--tasks', 'all', '--on', '2026-02-03'],
      [erased],
    ],
    ['withdraw', 'owner', ['--entry', check, ...why], ['--entry: the person it is about was erased']],
  ]);
  await signed(dir, 'retire', 'owner', '05T12:00', '--witness', keys.kd, '--after', check, ...why);
  const retired = '--key: this key is retired';
  await refused(dir, [
    ['check', 'kd', ['--person', 'EI', ...shown], [retired]],
    ['ticket', 'kd', ['--person', 'EI', ...heldAlready.slice(2), '--ticket', 'W1'], [retired]],
    ['succeed', 'owner', ['--next', keys.kd], ['--next: this key is retired']],
  ]);
  await signed(dir, 'succeed', 'owner', '05T12:01', '--next', keys.next);
  await signed(dir, 'take-over', 'next', '06T12:00', ...why);
  await refused(dir, [
    ['take-over', 'next', why, ['--key: the ownership was taken over once, and is not taken over again']],
    [
      'succeed',
      'owner',
      ['--next', keys.none],
      ['--key: not the owner’s key', '--key: the ownership was taken over from this key'],
    ],
    ['succeed', 'next', ['--next', keys.owner], ['--next: the ownership was taken over from this key']],
  ]);
  expect(await problems(dir)).toEqual([]);
});

describe('on the demo’s register, whose keys nobody has', () => {
  test('every act is refused, and nothing changes', async () => {
    const dir = at('demo');
    cpSync('content/demo/register', dir, { recursive: true });
    const { one } = await called('verify', dir, '--at', '2026-03-09T18:00:00Z');
    expect(one.ok).toBe(true);
    const before = snapshot(dir);
    const line = Object.entries(before)
      .filter(([path]) => path.endsWith('.jsonl'))
      .flatMap(([, text]) => text.split('\n'))
      .find((text) => text.includes('"kind":"check"'));
    const about = /"about":"([^"]+)"/.exec(line ?? '')?.[1] ?? '';
    const shift = ['--shift', '2026-03-10T07:00:00Z/2026-03-10T15:00:00Z'];
    const calls: readonly (readonly [string, readonly string[]])[] = [
      ['second', ['--entry', never]],
      ['withdraw', ['--entry', never, ...why]],
      ['retire', ['--witness', keys.kd, '--after', 'none', ...why]],
      ['settle', ['--entry', never, ...why]],
      ['succeed', ['--next', keys.next]],
      ['take-over', why],
      ['erase', ['--person', about, ...why]],
      ['ticket', ['--person', about, ...heldAlready.slice(2), '--ticket', 'W1']],
      ['assigned', ['--job', 'J1', '--person', about, ...shift]],
    ];
    for (const [verb, more] of calls) {
      const key = ['--key', at('none.json'), '--at', '2026-03-09T18:00:00Z'];
      const answer = await called(verb, dir, ...key, ...more);
      expect([verb, answer.exit, said(answer)[0]]).toEqual([
        verb,
        2,
        expect.stringMatching(/^--(key|entry): /),
      ]);
    }
    expect(snapshot(dir)).toEqual(before);
  });
});
