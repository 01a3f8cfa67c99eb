/** A check with a sheet's answers: graded again from the seed, by the site's own sheets and task map. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { keyOf } from '../../src/practice/key.ts';
import { sheetDraws } from '../../src/practice/sheet.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { called } from './registerDisk.ts';

const folder = mkdtempSync(join(tmpdir(), 'trayhand-evidence-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };

/** Answers as the person's device hands them over; `wrong` places are answered blank. */
function answersFile(person: string, wrong: number, task = 'T05'): string {
  const sheet = practice.sheets.get('measure-and-mark');
  if (sheet === undefined) throw new Error('the sheet of T05 is gone');
  const answers = sheetDraws(sheet, 12, practice).map(({ family, seed, place, draw }) => ({
    family,
    seed,
    answers: place <= wrong ? {} : keyOf(draw, practice.world, language).answers,
  }));
  const file = at(`${person}-${wrong}-${task}.json`);
  const head = { v: 1, kind: 'answers', sheet: sheet.id, bench: 12, person, device: 'dm-phone', task };
  writeFileSync(file, JSON.stringify({ ...head, answers }));
  return file;
}

const dir = at('register');
/** Names and texts of all files of the register. */
const everything = (): string[] =>
  readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => `${e.name} ${readFileSync(join(e.parentPath, e.name), 'utf8')}`)
    .sort();
const check = (person: string, outcome: string, evidence: string) =>
  called(
    'check',
    dir,
    '--key',
    at('w.json'),
    '--person',
    person,
    '--task',
    'T05',
    '--outcome',
    outcome,
    '--on',
    '2026-02-02',
    '--at',
    '2026-02-02T18:00:00Z',
    '--evidence',
    evidence,
  );

beforeAll(async () => {
  await called('key', '--out', at('o.json'));
  await called('key', '--out', at('w.json'));
  await called('begin', dir, '--owner', at('o.json'), '--at', '2026-01-01T12:00:00Z');
  await called(
    'appoint',
    dir,
    '--key',
    at('o.json'),
    '--witness',
    at('w.json'),
    '--person',
    'KD',
    '--tasks',
    'T05',
    '--on',
    '2026-01-01',
    '--at',
    '2026-01-01T12:00:00Z',
  );
});

test('answers that pass go with a showing, and still pass on the board', async () => {
  const signed = await check('DM', 'shown', answersFile('DM', 0));
  expect([signed.exit, signed.one.ok]).toEqual([0, true]);
  const { one } = await called('board', dir, '--on', '2026-02-10', '--at', '2026-03-01T00:00:00Z');
  const people = one.result['people'] as { id: string; tasks: Record<string, { standing: string }> }[];
  expect(people.find((p) => p.id === 'DM')?.tasks['T05']?.standing).toBe('shown');
});

test('answers that do not pass are refused with a showing, and taken with not-yet', async () => {
  const before = everything();
  const refused = await check('EI', 'shown', answersFile('EI', 1));
  expect([refused.exit, refused.one.errors.map((e) => e.field)]).toEqual([2, ['--evidence']]);
  expect(refused.one.errors[0]?.message).toContain('do not pass');
  expect(everything()).toEqual(before);
  expect((await check('EI', 'not-yet', answersFile('EI', 1))).exit).toBe(0);
});

test('another person’s answers, or for another task, are no evidence', async () => {
  const other = await check('HV', 'shown', answersFile('DM', 0));
  expect([other.exit, other.one.errors.map((e) => e.field)]).toEqual([2, ['--evidence.person']]);
  const task = await check('HV', 'not-yet', answersFile('HV', 0, 'T06'));
  expect([task.exit, task.one.errors.map((e) => e.field)]).toEqual([2, ['--evidence.task']]);
});

test('evidence is put right: answers that pass take the place of others, answers that do not are refused', async () => {
  const { one } = await called('board', dir, '--on', '2026-02-10', '--at', '2026-03-01T00:00:00Z');
  const people = one.result['people'] as { id: string; tasks: Record<string, { entries: string[] }> }[];
  const [entry = ''] = people.find((p) => p.id === 'DM')?.tasks['T05']?.entries ?? [];
  const correct = (evidence: string) =>
    called(
      'correct',
      dir,
      ...['--key', at('w.json'), '--entry', entry, '--evidence', evidence, '--why', 'the wrong file'],
      ...['--at', '2026-02-03T18:00:00Z'],
    );
  const before = everything();
  const refused = await correct(answersFile('DM', 1));
  expect([refused.exit, refused.one.errors.map((e) => e.field)]).toEqual([2, ['--evidence']]);
  const other = await correct(answersFile('EI', 0));
  expect([other.exit, other.one.errors.map((e) => e.field)]).toEqual([2, ['--evidence.person']]);
  expect(everything()).toEqual(before);
  expect((await correct(answersFile('DM', 0))).exit).toBe(0);
  expect((await called('verify', dir, '--at', '2026-03-01T00:00:00Z')).exit).toBe(0);
});
