/** A sheet set for a person, answered, and signed: three verbs, two files, one entry. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { keyOf } from '../../src/practice/key.ts';
import { sheetDraws } from '../../src/practice/sheet.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { packed } from '../../src/schema/link.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import type { Printed } from './command.ts';
import { called } from './registerDisk.ts';

const folder = mkdtempSync(join(tmpdir(), 'trayhand-sheet-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
const sheet = practice.sheets.get('measure-and-mark');
if (sheet === undefined) throw new Error('the sheet of T05 is gone');
const draws = sheetDraws(sheet, 12, practice);
const right = draws.map(({ draw }) => keyOf(draw, practice.world, language).answers);

const dir = at('register');
const day = ['--at', '2026-02-02T18:00:00Z'];
/** Names and texts of all files of the register. */
const everything = (): string[] =>
  readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => `${e.name} ${readFileSync(join(e.parentPath, e.name), 'utf8')}`)
    .sort();
const json = (name: string, value: unknown): string => {
  writeFileSync(at(name), JSON.stringify(value));
  return at(name);
};
const read = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));
const fields = ({ one }: { one: Printed }): string[] => one.errors.map((e) => e.field).sort();

const set = (out: string, ...more: string[]) => {
  const plain: Record<string, string> = {
    '--key': at('w.json'),
    '--person': 'DM',
    '--sheet': 'measure-and-mark',
    '--bench': '12',
    '--out': at(out),
  };
  for (let i = 0; i < more.length; i += 2) plain[more[i] ?? ''] = more[i + 1] ?? '';
  return called('set', dir, ...Object.entries({ '--at': day[1] ?? '', ...plain }).flat());
};
const answer = (setFile: string, answers: unknown, out: string, ...more: string[]) =>
  called('answer', at(setFile), '--answers', json(`for-${out}`, answers), '--out', at(out), ...more);
const sign = (answers: string, outcome: string, ...more: string[]) =>
  called(
    'sign',
    dir,
    '--key',
    at('w.json'),
    '--answers',
    at(answers),
    '--outcome',
    outcome,
    '--on',
    '2026-02-02',
    ...day,
    ...more,
  );

beforeAll(async () => {
  await Promise.all(['o', 'w', 'x'].map((key) => called('key', '--out', at(`${key}.json`))));
  await called('begin', dir, '--owner', at('o.json'), '--at', '2026-01-01T12:00:00Z');
  const appoint = (key: string, person: string, tasks: string, on: string) =>
    called(
      ...['appoint', dir, '--key', at('o.json'), '--witness', at(`${key}.json`), '--person', person],
      ...['--tasks', tasks, '--on', on, '--at', '2026-01-01T12:00:00Z'],
    );
  await appoint('w', 'KD', 'T05', '2026-01-10');
  await appoint('x', 'LZ', 'T06', '2026-01-01');
}, 60_000);

describe('set', () => {
  test('makes a set file, prints what it holds, and writes no entry', async () => {
    const before = everything();
    const made = await set('set.json');
    expect(made.exit).toBe(0);
    expect(made.one.result).toEqual({
      file: at('set.json'),
      link: await packed('set', read(at('set.json'))),
      sheet: 'measure-and-mark',
      number: 5,
      bench: 12,
      person: 'DM',
      task: 'T05',
      draws: 6,
    });
    expect(read(at('set.json'))).toEqual({
      v: 1,
      kind: 'set',
      sheet: 'measure-and-mark',
      bench: 12,
      person: 'DM',
      task: 'T05',
    });
    expect(everything()).toEqual(before);
  });

  test.each([
    ['bench 9999', ['--bench', '9999'], 0, []],
    ['bench 0', ['--bench', '0'], 2, ['--bench']],
    ['bench 10000', ['--bench', '10000'], 2, ['--bench']],
    ['no such sheet', ['--sheet', 'measure'], 2, ['--sheet']],
    ['a task of the sheet', ['--task', 'T05'], 0, []],
    ['a task that is none of the sheet', ['--task', 'T06'], 2, ['--task']],
    ['no id of a person', ['--person', 'D M'], 2, ['--person']],
    ['for himself: another witness signs', ['--person', 'KD'], 0, []],
    ['a witness of another task', ['--key', 'x.json'], 2, ['--key']],
    ['the owner, who is no witness', ['--key', 'o.json'], 2, ['--key']],
    ['before his first day', ['--at', '2026-01-09T23:59:59Z'], 2, ['--key']],
    ['on his first day', ['--at', '2026-01-10T00:00:00Z'], 0, []],
    [
      'all at once',
      ['--bench', 'x', '--person', 'D M', '--key', 'x.json'],
      2,
      ['--bench', '--key', '--person'],
    ],
  ])('%s', async (name, more, exit, wrong) => {
    const given = more.map((word) => (word.endsWith('.json') ? at(word) : word));
    const out = `set-${name.replaceAll(/\W/g, '-')}.json`;
    const made = await set(out, ...given);
    expect([made.exit, exit === 0 ? [] : fields(made)]).toEqual([exit, wrong]);
    expect(existsSync(at(out))).toBe(exit === 0);
  });

  test('a file that is there is never overwritten', async () => {
    writeFileSync(at('mine.json'), 'mine');
    const made = await set('mine.json');
    expect([made.exit, fields(made)]).toEqual([2, ['--out']]);
    expect(readFileSync(at('mine.json'), 'utf8')).toBe('mine');
  });

  test('a map without the task, or with it as a heading, is refused', async () => {
    const bare = { months: 12, revisions: [{ n: 1, on: '2026-01-01', showAgain: false }] };
    const without = json('without.json', { tasks: [{ id: 'T06', ...bare }] });
    const heading = json('heading.json', {
      tasks: [
        { id: 'T05', ...bare, parts: ['T05a'] },
        { id: 'T05a', ...bare },
      ],
    });
    for (const map of [without, heading]) {
      const made = await set('set-map.json', '--map', map);
      expect([made.exit, fields(made)]).toEqual([2, ['--task']]);
    }
  });
});

describe('answer', () => {
  const carried = draws.map(({ family, seed }, i) => ({ family, seed, answers: right[i] }));
  test('makes an answers file of every place', async () => {
    const made = await answer('set.json', right, 'all.json', '--device', 'dm-phone');
    const head = { sheet: 'measure-and-mark', bench: 12, person: 'DM', task: 'T05', device: 'dm-phone' };
    expect(made.one.result).toEqual({
      file: at('all.json'),
      link: await packed('answers', read(at('all.json'))),
      ...head,
      draws: 6,
      answered: 6,
    });
    expect(read(at('all.json'))).toEqual({ v: 1, kind: 'answers', ...head, answers: carried });
  });

  test('what is left out is blank, and the device is the command', async () => {
    const made = await answer('set.json', { 2: right[1] }, 'blank.json');
    expect(made.one.result).toMatchObject({ device: 'command', draws: 6, answered: 1 });
    const { answers } = read(at('blank.json')) as { answers: { answers: object }[] };
    expect(answers.map((one) => Object.keys(one.answers).length)).toEqual([0, 2, 0, 0, 0, 0]);
  });

  test('nothing says how it would be graded', async () => {
    const good = await answer('set.json', right, 'told-right.json');
    const bad = await answer('set.json', { 1: { cut: 1, left: 1 } }, 'told-wrong.json');
    expect([good.exit, bad.exit]).toEqual([0, 0]);
    expect(Object.keys(bad.one.result)).toEqual(Object.keys(good.one.result));
    expect(bad.one.steps).toEqual([]);
  });

  test('every answer that cannot be read is refused, all at once', async () => {
    const given = { 1: { cut: 'long' }, 2: { width: 1 }, 3: { cut: '4\' -3"' } };
    const made = await answer('set.json', given, 'unread.json');
    const wrong = ['--answers[0].answers.cut', '--answers[1].answers.width', '--answers[2].answers.cut'];
    expect([made.exit, fields(made)]).toEqual([2, wrong]);
    expect(fields(await answer('set.json', { 7: {} }, 'unread.json'))).toEqual(['--answers.7']);
    expect(existsSync(at('unread.json'))).toBe(false);
  });

  test('the set file is read with every fault, and its sheet has to be here', async () => {
    const good = read(at('set.json')) as object;
    json('spoilt.json', { ...good, bench: 0, colour: 'red' });
    expect(fields(await answer('spoilt.json', {}, 'x1.json'))).toEqual(['FILE.bench', 'FILE.colour']);
    json('stranger.json', { ...good, sheet: 'no-such-sheet' });
    expect(fields(await answer('stranger.json', {}, 'x2.json'))).toEqual(['FILE.sheet']);
    json('other.json', { ...good, task: 'T06' });
    expect(fields(await answer('other.json', {}, 'x3.json'))).toEqual(['FILE.task']);
    expect(fields(await answer('nowhere.json', {}, 'x4.json'))).toEqual(['FILE']);
    const device = await answer('set.json', {}, 'x5.json', '--device', 'dm phone');
    expect(fields(device)).toEqual(['--device']);
    expect(['x1', 'x2', 'x3', 'x4', 'x5'].filter((name) => existsSync(at(`${name}.json`)))).toEqual([]);
  });

  test('a file with the link does as well; one that is not whole, or of something else, is refused', async () => {
    const link = `https://pages.example/en/answer/${await packed('set', read(at('set.json')))}`;
    writeFileSync(at('link.txt'), `${link}\n`);
    expect((await answer('link.txt', right, 'linked.json', '--device', 'dm-phone')).exit).toBe(0);
    expect(read(at('linked.json'))).toEqual(read(at('all.json')));
    writeFileSync(at('cut.txt'), link.slice(0, -5));
    expect(fields(await answer('cut.txt', right, 'x6.json'))).toEqual(['FILE']);
    writeFileSync(at('answers.txt'), await packed('answers', read(at('all.json'))));
    expect(fields(await answer('answers.txt', right, 'x7.json'))).toEqual(['FILE']);
  });

  test('a file that is there is never overwritten', async () => {
    expect(fields(await answer('set.json', {}, 'set.json'))).toEqual(['--out']);
  });
});

describe('sign', () => {
  test('what does not pass is refused as shown, and taken as not yet', async () => {
    await answer('set.json', { 1: right[0] }, 'partly.json');
    const before = everything();
    const refused = await sign('partly.json', 'shown');
    expect([refused.exit, fields(refused)]).toEqual([2, ['--answers']]);
    expect(refused.one.errors[0]?.message).toContain('do not pass');
    expect(everything()).toEqual(before);
  });

  test('person and task are those of the answers, and are not contradicted', async () => {
    const before = everything();
    const other = await sign('all.json', 'shown', '--person', 'EI', '--task', 'T06');
    expect([other.exit, fields(other)]).toEqual([2, ['--person', '--task']]);
    expect(everything()).toEqual(before);
  });

  test('is a check with the answers as its evidence, and stands on the board', async () => {
    const signed = await sign('answers.txt', 'shown', '--person', 'DM', '--task', 'T05');
    expect(signed.one).toMatchObject({
      ok: true,
      result: { entry: expect.stringMatching(/^[0-9a-f]{64}$/) },
    });
    const bodies = readdirSync(join(dir, 'bodies')).map((name) => read(join(dir, 'bodies', name)) as object);
    expect(bodies).toContainEqual(
      expect.objectContaining({ task: 'T05', outcome: 'shown', evidence: read(at('all.json')) }),
    );
    const { one } = await called('board', dir, '--on', '2026-02-10', '--at', '2026-03-01T00:00:00Z');
    const people = one.result['people'] as { id: string; tasks: Record<string, { standing: string }> }[];
    expect(people.find((p) => p.id === 'DM')?.tasks['T05']?.standing).toBe('shown');
  });

  test('the same answers once more are taken, and standard error says where they were used', async () => {
    const said: string[] = [];
    const told = vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
      said.push(String(text));
      return true;
    });
    const { one } = await sign('answers.txt', 'shown').finally(() => told.mockRestore());
    expect(one.ok).toBe(true);
    expect(said.join('')).toMatch(
      /^sheet measure-and-mark, bench \d+ is already used for DM: entry [0-9a-f]{64}, T05(, [\w-]+)*; a new bench asks something new\n$/,
    );
  });

  test('a witness signs none of his own, and answers of another sheet are none', async () => {
    await set('own-set.json', '--person', 'KD');
    await answer('own-set.json', right, 'own.json');
    expect(fields(await sign('own.json', 'shown'))).toEqual(['--person']);
    const spoilt = { ...(read(at('all.json')) as object), sheet: 'no-such-sheet' };
    json('no-sheet.json', spoilt);
    expect(fields(await sign('no-sheet.json', 'not-yet'))).toEqual(['--answers.sheet']);
    json('no-kind.json', { ...(read(at('all.json')) as object), kind: 'set' });
    expect(fields(await sign('no-kind.json', 'not-yet'))).toEqual(['--answers.kind']);
  });

  test('everything else is as in check', async () => {
    const wrong = await sign('all.json', 'perhaps', '--variant', 'colour=red', '--stopped');
    expect([wrong.exit, fields(wrong)]).toEqual([2, ['--outcome', '--stopped', '--variant.colour']]);
  });
});
