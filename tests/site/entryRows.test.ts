/** Rows of entries about a person: every kind in words, whose device the answers name, what these pages do not know. */
import { describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { boardOf } from '../../src/register/board.ts';
import type { JsonObject } from '../../src/register/canonical.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { taskMapOf } from '../../src/schema/task.ts';
import { crewView } from '../../src/site/crew.ts';
import type { CrewSource } from '../../src/site/crewLines.ts';
import { ownLinks } from '../../src/site/islands/register/useWhich.ts';
import { personView, sourceOf } from '../../src/site/personView.ts';
import { speaker, teller } from '../../src/site/speak.ts';
import { taskView } from '../../src/site/taskView.ts';
import { at, Book, kd, lz, owner, stranger } from '../register/book.ts';
import { table } from './wordTable.ts';

const map = taskMapOf(readLibrary(contentFiles()).library);
const words = table('en');

async function sourceFor(book: Book, on = '2026-03-01'): Promise<CrewSource> {
  const judged = await book.judged({ now: at(on) });
  const board = boardOf(judged, { on, map });
  const says = { speak: speaker(words), tell: teller(words) };
  return sourceOf({ board, judged, map, names: new Map(), links: ownLinks, ...says });
}
const rowsOf = async (book: Book, person: string) => personView(await sourceFor(book), person)?.entries ?? [];
const short = (id: string) => id.slice(0, 8);

describe('entries about a person in words', () => {
  test('a retirement says which key, up to where it stands and why', async () => {
    const book = await Book.staffed();
    const last = await book.check(kd, 'P1', 'T05', '2026-01-01');
    await book.retire(kd, 'KD', [last]);
    await book.retire(lz, 'LZ', []);
    const key = short(kd.publicKey);
    expect((await rowsOf(book, 'KD'))[0]).toMatchObject({
      what: expect.stringMatching(new RegExp(`^retires the key ${key}: `)),
      facts: [`Of its device, what is signed up to entry ${short(last)} stands.`],
    });
    expect((await rowsOf(book, 'LZ'))[0]?.facts).toEqual(['Nothing that it signed stands.']);
  });

  test('a settlement, a take-over, a key named to take over', async () => {
    const book = await Book.staffed();
    const check = await book.check(kd, 'P1', 'T05', '2026-01-01');
    await book.act(owner, 'settle', 'P1', [check]);
    await book.act(stranger, 'take-over', 'P1', []);
    await book.add(owner, { kind: 'succeed', about: 'P1', key: stranger.publicKey, body: null });
    const whats = (await rowsOf(book, 'P1')).map(({ what }) => what);
    expect(whats).toEqual(
      expect.arrayContaining([
        `settles that ${short(check)} stands: because`,
        'takes the register over: because',
        `names key ${short(stranger.publicKey)} to take the register over`,
      ]),
    );
  });

  test('a kind that nobody knows is named as it is, whatever its name', async () => {
    const book = await Book.staffed();
    for (const kind of ['praise', 'constructor']) {
      await book.add(lz, { kind, about: 'P1', body: null });
    }
    const whats = (await rowsOf(book, 'P1')).map(({ what }) => what);
    expect(whats).toEqual(['of the kind constructor', 'of the kind praise']);
  });
});

describe('the device that answers name', () => {
  const answers = (device: string): JsonObject => ({
    ...{ v: 1, kind: 'answers', sheet: 'measure-and-mark', bench: 4711, device },
    ...{ person: 'P1', task: 'T05', answers: [] },
  });
  test.each([
    ['the one that the check was signed on', 'kd-phone', true],
    ['another one of the witness', 'kd-tablet', true],
    ['one of another key of his', 'phone', true],
    ['one of another witness', 'lz-phone', false],
    ['one that nobody signs on', 'p-phone', false],
  ])('%s', async (_, device, own) => {
    const book = await Book.staffed();
    await book.appoint(stranger, 'KD');
    await book.check({ ...kd, device: 'kd-tablet' }, 'P2', 'T05', '2026-01-01');
    await book.check(stranger, 'P2', 'T05', '2026-01-01');
    await book.check(lz, 'P2', 'T05', '2026-01-01');
    await book.check(kd, 'P1', 'T05', '2026-01-01', { evidence: answers(device) });
    const facts = (await rowsOf(book, 'P1')).flatMap((row) => row.facts);
    expect(facts).toContain(`Answers of sheet measure-and-mark, bench 4711, given on ${device}.`);
    expect(facts.includes('That device has the same name as one of the witness’s own.')).toBe(own);
  });
});

describe('an entry that is newer than these pages', () => {
  test('a value and a pair that they do not know stand as they were signed, on every page', async () => {
    const book = await Book.staffed();
    const [task = ''] = map.tasks
      .filter(({ id, variants }) => id.startsWith('T') && Object.keys(variants).length > 0)
      .map(({ id }) => id);
    const [pair = ''] = Object.keys(map.tasks.find(({ id }) => id === task)?.variants ?? {});
    const variant = { [pair]: 'brand-new', colour: 'red' };
    await book.check(kd, 'P1', task, '2026-01-01', { variant });
    const source = await sourceFor(book);
    const cell = crewView(source).cell(task, 'P1');
    expect(cell.ways.map(({ text }) => text).join(' ')).toMatch(/brand-new.*colour red/);
    const sheet = personView(source, 'P1');
    expect(sheet?.entries.map(({ what }) => what).join(' ')).toMatch(/brand-new.*colour red/);
    expect(JSON.stringify(taskView(source, { task })?.groups)).toContain('brand-new');
  });
});
