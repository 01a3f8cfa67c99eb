/**
 * Every drill of the register's page, done once on the page itself in a real browser, and looked at afterwards with the
 * command. Registers to drill on are made here by signers of fixed seeds; their keys are taken in as wrapped files, as
 * on any second device.
 */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { keyOf } from '../../src/practice/key.ts';
import { sheetDraws } from '../../src/practice/sheet.ts';
import { bundleText } from '../../src/register/bundle.ts';
import { toHex } from '../../src/register/bytes.ts';
import type { RegisterFiles } from '../../src/register/held.ts';
import {
  type Chance,
  keyFileText,
  publicKeyText,
  readKeyFile,
  unwrapKey,
  wrapKey,
} from '../../src/register/keyFile.ts';
import type { Signer } from '../../src/register/keys.ts';
import { bodyPath } from '../../src/register/paths.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { Book, kd, lz, next, owner } from '../register/book.ts';
import { openBrowser } from './browser.ts';
import { command, Devices } from './devices.ts';
import { type Served, serve } from './serve.ts';

const phrase = 'five rods and a strut';
const chance: Chance = (n) => crypto.getRandomValues(new Uint8Array(n));
const seeds = new Map([
  [owner, 1],
  [kd, 2],
  [next, 5],
]);

interface Told {
  readonly entries: number;
  readonly problems: readonly { readonly code: string; readonly settled?: true }[];
}

let browser: Browser;
let site: Served;
let folder: string;
let devices: Devices;
const wrapped = new Map<Signer, string>();

/** The key of a signer as a file under the passphrase of this test. */
async function keyText(signer: Signer): Promise<string> {
  const seed = toHex(new Uint8Array(32).fill(seeds.get(signer) ?? 0));
  const open = {
    v: 1,
    kind: 'key',
    publicKey: signer.publicKey,
    device: 'made',
    secret: { form: 'open', seed },
  } as const;
  return keyFileText(await wrapKey(open, phrase, crypto.subtle, chance));
}

const takeRegister = async (page: Page, files: RegisterFiles) => {
  const path = await devices.file('register.json', bundleText(files));
  await page.getByLabel('Bring a register in').setInputFiles(path);
};

/** A page that holds a register and the key of a signer under a name of its own. */
async function desk(files: RegisterFiles, signer: Signer, device: string, at?: number): Promise<Page> {
  const { page } = await devices.profile(at);
  await devices.go(page, 'register');
  await takeRegister(page, files);
  await page.getByText(/in all\./).waitFor();
  await takeKey(page, signer, device);
  await page.getByText(`device ${device}`).waitFor();
  return page;
}

async function takeKey(page: Page, signer: Signer, device: string): Promise<void> {
  const bring = page.locator('details', { hasText: 'Bring a key in' });
  if ((await bring.getAttribute('open')) === null) await bring.locator('summary').click();
  await bring.getByLabel('Name of this device').fill(device);
  const path = await devices.file('key.json', wrapped.get(signer) ?? '');
  await bring.getByLabel('File of the wrapped key').setInputFiles(path);
}

const open = async (page: Page, drill: string) => {
  const part = page.locator(`#drill-${drill}`);
  await part.locator('summary').click();
  return part;
};
const form = (page: Page, title: string) =>
  page.locator('section.act', { has: page.getByRole('heading', { name: title, exact: true }) });

/** Writes why, if the act asks for it, and signs. */
async function sign(page: Page, title: string, button: string): Promise<void> {
  const act = form(page, title);
  const why = act.getByLabel('Why', { exact: true });
  if ((await why.count()) > 0) await why.fill('as the drill says');
  await act.getByLabel('Passphrase').fill(phrase);
  await act.getByRole('button', { name: button }).click();
  await act.getByText('Signed. Entry').waitFor();
}

async function verified(page: Page): Promise<Told & { readonly root: string; readonly codes: string[] }> {
  const root = await devices.unpacked(await devices.saved(page, 'Carry it off'));
  const told = await command<Told>('verify', root);
  const codes = told.problems.map(({ code, settled }) => (settled === true ? `${code} settled` : code));
  return { ...told, root, codes };
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'trayhand-drills-'));
  [browser, site] = await Promise.all([openBrowser(), serve(process.env['SITE_DIR'] ?? 'dist')]);
  devices = new Devices(browser, site, folder);
  for (const signer of seeds.keys()) wrapped.set(signer, await keyText(signer));
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
  await rm(folder, { recursive: true, force: true });
});

/** KD has a phone and a tablet; both saw P1. */
async function twoDevices(): Promise<Book> {
  const book = await Book.staffed();
  const tablet = { ...kd, device: 'kd-tablet' };
  await book.check(kd, 'P1', 'T05', '2026-01-01');
  await book.check(kd, 'P1', 'T06', '2026-01-01');
  await book.check(tablet, 'P1', 'T07', '2026-01-01');
  return book;
}

describe('lost phone; owner’s key', () => {
  test('a key with two devices is retired: one stands up to its last known entry, nothing of the other', async () => {
    const book = await twoDevices();
    const page = await desk(book.files, owner, 'office-2');
    await open(page, 'lost-phone');
    const act = form(page, 'Retire a key');
    // Everything that is wrong is said before a key is opened.
    await act.getByRole('button', { name: 'Sign the retirement' }).click();
    await act.getByText('no passphrase is written').waitFor();
    expect(await act.getByText('Refused:').count()).toBeGreaterThanOrEqual(3);
    await act.getByLabel('Which key').selectOption(kd.publicKey);
    const phone = act.getByLabel(/^Last entry that stands of kd-phone: last known is number 1, \d+ days old/);
    const tablet = act.getByLabel(/^Last entry that stands of kd-tablet: last known is number 0/);
    expect(await phone.locator('option:checked').textContent()).toContain('P1 at T06');
    await tablet.selectOption('none');
    await act.getByText('kd-phone: stands up to number 1. Known entries cut off: 0.').waitFor();
    await act.getByText('kd-tablet: nothing stands. Known entries cut off: 1.').waitFor();
    await sign(page, 'Retire a key', 'Sign the retirement');
    const { codes, root } = await verified(page);
    expect(codes).toEqual(['after-retirement settled']);
    const board = await command<{ people: { id: string; tasks: Record<string, { standing: string }> }[] }>(
      'board',
      root,
      '--on',
      '2026-02-01',
    );
    const tasks = board.people.find(({ id }) => id === 'P1')?.tasks ?? {};
    expect([tasks['T06']?.standing, tasks['T07']?.standing]).toEqual(['shown', 'not shown']);
    await page.context().close();
  });

  test('the owner names the next key, and that key takes over on another device', async () => {
    const book = await Book.staffed();
    const office = await desk(book.files, owner, 'office-2');
    await open(office, 'lost-owner-key');
    await office.getByText('No key is named to take over').first().waitFor();
    await form(office, 'Take the register over').getByText('owns the register already').waitFor();
    const publicFile = await devices.file('public.json', publicKeyText(next.publicKey));
    const naming = form(office, 'Name the key that may take over');
    await naming.getByLabel('Public file of the key that is kept elsewhere').setInputFiles(publicFile);
    await naming.getByText(`Key ${next.publicKey.slice(0, 8)}.`).waitFor();
    await sign(office, 'Name the key that may take over', 'Sign the naming');
    await office.getByText(`Key ${next.publicKey.slice(0, 8)} is named to take over.`).waitFor();
    const carried = await devices.saved(office, 'Carry it off');
    const { files } = JSON.parse(await readFile(carried, 'utf8')) as { files: RegisterFiles };

    const safe = await desk(files, next, 'safe-desk');
    await open(safe, 'lost-owner-key');
    await form(safe, 'Name the key that may take over').getByText('The owner signs this.').waitFor();
    await sign(safe, 'Take the register over', 'Take it over');
    await safe.getByText(`Owner: ${next.publicKey.slice(0, 8)}`).waitFor();
    const { codes, root } = await verified(safe);
    expect(codes).toEqual([]);
    const told = await command<{ owner: string }>('verify', root);
    expect(told.owner).toBe(next.publicKey);
    await Promise.all([office.context().close(), safe.context().close()]);
  });
});

describe('forks, gaps, clocks', () => {
  test('two copies that went apart: both branches in words, one settled', async () => {
    const book = await Book.staffed();
    await book.check(kd, 'P1', 'T05', '2026-01-01');
    const backup = book.copy();
    const kept = await book.check(kd, 'P1', 'T06', '2026-01-01');
    await book.check(kd, 'P2', 'T06', '2026-01-01');
    await backup.on('2026-01-02').check(kd, 'P3', 'T07', '2026-01-02');
    const page = await desk(book.files, owner, 'office-2');
    await takeRegister(page, backup.files);
    await page.getByText('1 new entry; 7 in all.').waitFor();
    await page.getByText('It lacks entries that you hold; hand its owner yours.').waitFor();
    await page.getByText('1 to look into').waitFor();
    const part = await open(page, 'restored-backup');
    await part.getByRole('heading', { name: 'Fork of KD on kd-phone at number 1' }).waitFor();
    await part.getByRole('heading', { name: /: 2 entries, 1 January 2026/ }).waitFor();
    await part.getByRole('listitem').filter({ hasText: 'P3 at T07' }).waitFor();
    await form(page, 'Settle it').getByLabel('What stands').selectOption(kept);
    await sign(page, 'Settle it', 'Sign the settlement');
    await page.getByText('Every signature holds').waitFor();
    const { codes } = await verified(page);
    expect(codes).toEqual(['fork settled']);
    await page.context().close();
  });

  test('an entry lost for good, and one dated before what it follows', async () => {
    const book = await Book.staffed();
    await book.check(lz, 'P1', 'T05', '2026-01-01');
    await book.check(kd, 'P2', 'T05', '2026-01-01');
    const early = await book.raw(
      kd,
      { seq: 1, prev: await headOf(book, kd), time: '2026-01-01T06:00:00.000Z', about: 'P2' },
      { ...plain, task: 'T06', on: '2026-01-01' },
    );
    book.remove(book.file(lz));
    const page = await desk(book.files, owner, 'office-2');
    await page.getByText('2 to look into').waitFor();
    const part = await open(page, 'restored-backup');
    expect(await part.locator('summary b').textContent()).toBe('2');
    const stands = form(page, 'Settle it').getByLabel('What stands');
    await stands.selectOption({ label: 'Missing: number 0 of LZ on lz-phone. Lost for good' });
    await sign(page, 'Settle it', 'Sign the settlement');
    await expect.poll(() => part.locator('summary b').textContent()).toBe('1');
    await stands.selectOption(early);
    await sign(page, 'Settle it', 'Sign the settlement');
    await page.getByText('Every signature holds').waitFor();
    const { codes } = await verified(page);
    expect(codes.sort()).toEqual(['back-dated settled', 'gap settled']);
    await page.context().close();
  });
});

const plain = {
  revision: 1,
  variant: {},
  outcome: 'shown',
  manner: 'performed',
  help: 'alone',
  inSight: true,
  stopped: false,
  points: [],
  measured: [],
  evidence: null,
};

async function headOf(book: Book, signer: Signer): Promise<string> {
  const { view } = await book.judged({ now: Date.now() });
  const own = view.list.filter(({ header }) => header.signer === signer.publicKey);
  return own.at(-1)?.id ?? '';
}

/** Hands over the answers to a sheet for a person and a task, every one as it should be. */
function answersOf(): (person: string, task: string) => string {
  const { library } = readLibrary(contentFiles());
  const practice = practiceOf(library);
  const speak = speaker(library.words.get('en') ?? new Map());
  const sheet = practice.sheets.get('measure-and-mark');
  if (sheet === undefined) throw new Error('the sheet of this drill is gone');
  const answers = sheetDraws(sheet, 4711, practice).map(({ draw }) => ({
    family: draw.family.id,
    seed: draw.seed,
    answers: keyOf(draw, practice.world, { lang: 'en', speak }).answers,
  }));
  const head = { v: 1, kind: 'answers', sheet: sheet.id, bench: 4711, device: 'p-phone' };
  return (person, task) => JSON.stringify({ ...head, person, task, answers });
}

describe('what was signed by mistake; tickets and shifts', () => {
  test('a check is taken back, the answers behind another are replaced, a ticket and a shift are written', async () => {
    const book = await Book.staffed();
    const wrong = await book.check(kd, 'P1', 'T06', '2026-01-01');
    const right = await book.check(kd, 'P1', 'T05', '2026-01-01');
    const answersFile = answersOf();
    const page = await desk(book.files, kd, 'kd-desk');
    await open(page, 'withdrawn-check');
    const back = form(page, 'Take an entry back');
    await back.getByLabel('Person').selectOption('P1');
    await back.getByLabel('Which entry').selectOption(wrong);
    await back.getByText('It is for good.').waitFor();
    await sign(page, 'Take an entry back', 'Sign the taking back');

    const mend = form(page, 'Replace the answers behind a check');
    await mend.getByLabel('Person').selectOption('P1');
    await mend.getByLabel('Which check').selectOption(right);
    const other = await devices.file('answers.json', answersFile('P2', 'T05'));
    await mend.getByLabel('The answers file that belongs to it').setInputFiles(other);
    await mend.getByLabel('Why', { exact: true }).fill('the wrong file was taken');
    await mend.getByLabel('Passphrase').fill(phrase);
    await mend.getByRole('button', { name: 'Sign the replacement' }).click();
    await mend.getByText('these answers are for P2, not P1').waitFor();
    const own = await devices.file('answers.json', answersFile('P1', 'T05'));
    await mend.getByLabel('The answers file that belongs to it').setInputFiles(own);
    await sign(page, 'Replace the answers behind a check', 'Sign the replacement');

    await open(page, 'tickets');
    const ticket = form(page, 'Record an outside ticket');
    await ticket.getByLabel('The person’s id').fill('P1');
    await ticket.getByLabel('Ticket', { exact: true }).selectOption('W4');
    await ticket.getByLabel('Issued by').fill('Ridge Training Yard');
    await ticket.getByLabel('Its number').fill('RT 204');
    await ticket.getByLabel('Good to the end of').fill('31 June');
    await ticket.getByLabel('Passphrase').fill(phrase);
    await ticket.getByRole('button', { name: 'Sign the ticket' }).click();
    await ticket.getByText('no day of the calendar').waitFor();
    await ticket.getByLabel('Good to the end of').fill('2027-06-30');
    await sign(page, 'Record an outside ticket', 'Sign the ticket');
    const shift = form(page, 'Record who was sent to a job');
    await shift.getByLabel('Job').fill('AC-12');
    await shift.getByLabel('The person’s id').fill('P1');
    await shift.getByLabel('From').fill('2026-11-26T22:00');
    await shift.getByLabel('To', { exact: true }).fill('2026-11-27T06:00');
    await sign(page, 'Record who was sent to a job', 'Sign the shift');

    const { codes, entries, root } = await verified(page);
    expect({ codes, entries }).toEqual({ codes: [], entries: 9 });
    const board = await command<{
      people: {
        id: string;
        tickets: object[];
        tasks: Record<string, { standing: string; why: { code: string }[] }>;
      }[];
    }>('board', root, '--on', '2026-02-01');
    const p1 = board.people.find(({ id }) => id === 'P1');
    expect(p1?.tickets).toMatchObject([{ ticket: 'W4', number: 'RT 204', until: '2027-06-30' }]);
    expect(p1?.tasks['T06']).toMatchObject({ standing: 'show again', why: [{ code: 'W' }] });
    expect(p1?.tasks['T05']).toMatchObject({ standing: 'shown' });
    await page.context().close();
  });
});

test('another person chosen after an entry was: nothing of the first is signed, and what is signed is said', async () => {
  const book = await Book.staffed();
  const first = await book.check(kd, 'P1', 'T05', '2026-01-01');
  const second = await book.check(kd, 'P2', 'T06', '2026-01-01');
  const page = await desk(book.files, kd, 'kd-desk');
  await open(page, 'withdrawn-check');
  const back = form(page, 'Take an entry back');
  await back.getByLabel('Person').selectOption('P1');
  await back.getByLabel('Which entry').selectOption(first);
  await back.getByText(/^Taken back: P1 at T05 .*Number 0 of KD, kd-phone/).waitFor();
  await back.getByLabel('Person').selectOption('P2');
  expect(await back.getByLabel('Which entry').locator('option:checked').textContent()).toBe('Choose');
  expect(await back.getByText('Taken back:').count()).toBe(0);
  await back.getByLabel('Why', { exact: true }).fill('the wrong person');
  await back.getByLabel('Passphrase').fill(phrase);
  await back.getByRole('button', { name: 'Sign the taking back' }).click();
  await back.getByText('Refused:').first().waitFor();
  await back.getByLabel('Which entry').selectOption(second);
  await back.getByText(/^Taken back: P2 at T06 .*Number 1 of KD, kd-phone/).waitFor();
  await sign(page, 'Take an entry back', 'Sign the taking back');
  const { root, entries } = await verified(page);
  expect(entries).toBe(6);
  const board = await command<{ people: { id: string; tasks: Record<string, { standing: string }> }[] }>(
    'board',
    root,
    '--on',
    '2026-02-01',
  );
  const standing = (id: string, task: string) =>
    board.people.find((person) => person.id === id)?.tasks[task]?.standing;
  expect([standing('P1', 'T05'), standing('P2', 'T06')]).toEqual(['shown', 'show again']);
  await page.context().close();
});

describe('a person leaves', () => {
  test('what is held as a file, who has been quiet, and an erase that says first what goes and what stays', async () => {
    const book = await Book.staffed();
    const check = await book.check(kd, 'P1', 'T05', '2026-01-01');
    await book.check(kd, 'P1', 'T06', '2026-01-01');
    await book.check(kd, 'P2', 'T05', '2026-01-01');
    const { body } = book.header(check);
    const before = bundleText(book.files);
    const page = await desk(book.files, owner, 'office-2');
    await open(page, 'person-leaves');
    const held = form(page, 'Everything held about one person');
    await held.getByLabel('Person').selectOption('P1');
    const file = JSON.parse(await readFile(await devices.saved(page, 'Save that file'), 'utf8'));
    expect(file).toMatchObject({ id: 'P1', entries: [{}, {}], bodies: [{}, {}] });
    await held.getByText('Entries: 2. Texts: 2.').waitFor();
    const quiet = form(page, 'Who has had no entry for long');
    await quiet.getByLabel('Months without an entry').fill('600');
    await quiet.getByText('Everyone on record has an entry').waitFor();
    await quiet.getByLabel('Months without an entry').fill('1');
    await quiet.getByRole('row', { name: /^P2 1 January 2026/ }).waitFor();

    const erase = form(page, 'Erase a person');
    await erase.getByLabel('Person').selectOption('KD');
    await erase.getByLabel('Why', { exact: true }).fill('left');
    await erase.getByLabel('Passphrase').fill(phrase);
    await erase.getByRole('button', { name: 'Sign the erase' }).click();
    await erase.getByText('a key of this person is not retired').waitFor();
    await erase.getByLabel('Person').selectOption('P1');
    await erase.getByText('tickets and shifts about P1: 2.').waitFor();
    await erase.getByText('but not what: 2;').waitFor();
    await sign(page, 'Erase a person', 'Sign the erase');
    const { codes, root } = await verified(page);
    expect(codes).toEqual([]);
    await expect(readFile(join(root, bodyPath(body ?? '')), 'utf8')).rejects.toThrow();
    // A file carried off before brings nothing back.
    await page.getByLabel('Bring a register in').setInputFiles(await devices.file('old.json', before));
    await page.getByText('This file is older: it lacks entries that you hold.').waitFor();
    await page.getByText('Texts about people who were erased, not kept: 2.').waitFor();
    expect((await verified(page)).codes).toEqual([]);
    await page.context().close();
  });
});

test('an erase takes the name and the sheet of the person from the device that signs it, and from one that takes it in', async () => {
  const book = await Book.staffed();
  await book.check(kd, 'P1', 'T05', '2026-01-01');
  const names = {
    people: [
      { id: 'P1', name: 'Dana Mott' },
      { id: 'P2', name: 'Ray Cole' },
    ],
  };
  /** The names, and a sheet that was set for P1, answered and handed over. */
  const give = async (page: Page) => {
    await page.getByLabel('File of names').setInputFiles(await devices.file('n.json', JSON.stringify(names)));
    await page.getByText('2 names are here').waitFor();
    await page.evaluate(async () => {
      const database = await new Promise<IDBDatabase>((done) => {
        const asked = indexedDB.open('trayhand-register');
        asked.onsuccess = () => done(asked.result);
      });
      const set = { v: 1, kind: 'set', sheet: 'measure-and-mark', bench: 4711, person: 'P1', task: 'T05' };
      const sheet = { set, device: 'p-phone', answers: {}, begun: '2026-01-01', handed: '2026-01-01' };
      const change = database.transaction('sheet', 'readwrite');
      change.objectStore('sheet').put(sheet, 'set');
      await new Promise((done) => {
        change.oncomplete = done;
      });
      database.close();
    });
  };
  const kept = (page: Page) =>
    page.evaluate(async () => {
      const database = await new Promise<IDBDatabase>((done) => {
        const asked = indexedDB.open('trayhand-register');
        asked.onsuccess = () => done(asked.result);
      });
      const found = (store: string, key: string) =>
        new Promise((done) => {
          const asked = database.transaction(store).objectStore(store).get(key);
          asked.onsuccess = () => done(asked.result);
        });
      const held = JSON.stringify([await found('sheet', 'set'), await found('texts', 'people')]);
      database.close();
      return held;
    });
  const office = await desk(book.files, owner, 'office-2');
  await give(office);
  expect(await kept(office)).toMatch(/"person":"P1".*Dana Mott/);
  await open(office, 'person-leaves');
  const erase = form(office, 'Erase a person');
  await erase.getByLabel('Person').selectOption('P1');
  await erase.getByText('and a sheet that was set for P1').waitFor();
  await sign(office, 'Erase a person', 'Sign the erase');
  await office.getByText('1 names are here').waitFor();
  expect(await kept(office)).not.toMatch(/P1|Dana/);
  expect(await kept(office)).toContain('Ray Cole');
  const { files } = JSON.parse(await readFile(await devices.saved(office, 'Carry it off'), 'utf8'));

  const phone = await desk(book.files, kd, 'kd-desk');
  await give(phone);
  await takeRegister(phone, files);
  await phone.getByText('1 names are here').waitFor();
  expect(await kept(phone)).not.toMatch(/P1|Dana/);
  await Promise.all([office.context().close(), phone.context().close()]);
});

describe('the browser’s storage, and seven days', () => {
  const day = 86_400_000;
  test('a warning for what is on this device alone and after seven days; after a clearing the device knows it held more', async () => {
    const book = await Book.staffed();
    const start = Date.parse('2026-03-02T09:00:00Z');
    const page = await desk(book.files, kd, 'kd-desk', start);
    expect(await page.getByText('signed here and never carried off').count()).toBe(0);
    await open(page, 'tickets');
    const ticket = form(page, 'Record an outside ticket');
    await ticket.getByLabel('The person’s id').fill('P1');
    await ticket.getByLabel('Ticket', { exact: true }).selectOption('W1');
    await ticket.getByLabel('Issued by').fill('Ridge Training Yard');
    await ticket.getByLabel('Its number').fill('7');
    await ticket.getByLabel('Good to the end of').fill('2026-12-31');
    await sign(page, 'Record an outside ticket', 'Sign the ticket');
    await page.getByText('1 entry was signed here and never carried off.').first().waitFor();
    // Under another name of the device it was signed here all the same.
    await takeKey(page, kd, 'kd-desk-again');
    await page.getByText('device kd-desk-again').waitFor();
    await page.getByText('1 entry was signed here and never carried off.').first().waitFor();
    const later = await devices.saved(page, 'Carry it off');
    await page.getByText('Last carried off this device on 2 March 2026.').waitFor();
    expect(await page.getByText('1 entry was signed here and never carried off.').count()).toBe(0);
    await page.clock.setSystemTime(start + 6 * day);
    await page.reload({ waitUntil: 'networkidle' });
    await page.getByText('Last carried off this device on 2 March 2026.').waitFor();
    expect(await page.getByText('days ago. Carry it off now.').count()).toBe(0);
    await page.clock.setSystemTime(start + 7 * day);
    await page.reload({ waitUntil: 'networkidle' });
    await page.getByText('It was last carried off 7 days ago. Carry it off now.').first().waitFor();

    await page.goto('about:blank');
    await devices.go(page, 'practice/cut-with-insertion');
    await page.evaluate(
      () =>
        new Promise((done, failed) => {
          const asked = indexedDB.deleteDatabase('trayhand-register');
          asked.onsuccess = done;
          asked.onerror = failed;
        }),
    );
    await devices.go(page, 'register');
    await page.getByText('No register is on this device').first().waitFor();
    await takeRegister(page, book.files);
    await page.getByText('This device once held more of this register').waitFor();
    await page.getByText('KD, kd-desk: once up to number 0, now nothing.').waitFor();
    // The name it signed under before would number its entries anew.
    await page.getByLabel('Bring a register in').setInputFiles(later);
    await page.getByText('1 new entry; 4 in all.').waitFor();
    await expect.poll(() => page.getByText('This device once held more').count()).toBe(0);
    await takeKey(page, kd, 'kd-desk');
    await page.getByText('this key has signed under that name already').waitFor();
    // Nor the name in its file: who has that one may have signed what is not here.
    await takeKey(page, kd, 'made');
    await page
      .getByText('the device that this key comes from has that name. To do: name this device anew.')
      .waitFor();
    await takeKey(page, kd, 'kd-desk-2');
    await page.getByText('device kd-desk-2').waitFor();
    expect((await verified(page)).codes).toEqual([]);
    await page.context().close();
  });
});

describe('the key', () => {
  test('a passphrase that is typed and not used goes when the page is hidden, and after two minutes', async () => {
    const book = await Book.staffed();
    const page = await desk(book.files, owner, 'office-2', Date.parse('2026-03-02T09:00:00Z'));
    await open(page, 'lost-phone');
    const field = form(page, 'Retire a key').getByLabel('Passphrase');
    await field.fill(phrase);
    await page.clock.fastForward(119_000);
    expect(await field.inputValue()).toBe(phrase);
    await page.clock.fastForward(1_000);
    expect(await field.inputValue()).toBe('');
    await field.fill(phrase);
    await hide(page);
    expect(await field.inputValue()).toBe('');
    await page.context().close();
  });

  test('a key that is being opened while the page is hidden signs nothing', async () => {
    const book = await twoDevices();
    const page = await desk(book.files, owner, 'office-2');
    await open(page, 'lost-phone');
    const act = form(page, 'Retire a key');
    await act.getByLabel('Which key').selectOption(kd.publicKey);
    await act.getByLabel('Why', { exact: true }).fill('lost');
    await act.getByLabel('Passphrase').fill(phrase);
    // Both in one task of the page: the key is still being worked out when the page goes.
    await act.getByRole('button', { name: 'Sign the retirement' }).evaluate((button) => {
      (button as HTMLButtonElement).click();
      Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => 'hidden' });
      return new Promise((done) => {
        setTimeout(() => {
          document.dispatchEvent(new Event('visibilitychange'));
          done(undefined);
        }, 60);
      });
    });
    await act.getByText('the key was closed meanwhile').waitFor();
    expect((await verified(page)).entries).toBe(6);
    await page.context().close();
  });

  test('while a sheet is being answered on the device, nothing of the page opens the key', async () => {
    const page = await desk((await twoDevices()).files, owner, 'office-2');
    await page.locator('#drill-lost-phone').waitFor();
    await devices.go(page, 'answer');
    const set = { v: 1, kind: 'set', sheet: 'measure-and-mark', bench: 4711, person: 'P1', task: 'T05' };
    const file = await devices.file('set.json', JSON.stringify(set));
    await page.getByLabel('Open the file you were given').setInputFiles(file);
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await page.getByRole('heading', { name: 'Draw 1 of 6' }).waitFor();
    await devices.go(page, 'register');
    await page.getByText('A sheet is being answered here').waitFor();
    await page.locator('#drill-storage-cleared').waitFor();
    expect(await page.locator('[id^="drill-"]').count()).toBe(1);
    expect(await page.getByRole('button', { name: /^Sign/ }).count()).toBe(0);
    expect(await page.getByText('Passphrase: change it').count()).toBe(0);
    await page.context().close();
  });

  test('its passphrase is changed, and a copy sealed under one of its own', async () => {
    const book = await Book.staffed();
    const page = await desk(book.files, owner, 'office-2');
    await page.locator('summary', { hasText: 'Passphrase: change it, or seal a copy' }).click();
    const seal = async (now: string, to: string) => {
      await page.getByLabel('Passphrase that opens it now').fill(now);
      await page.getByLabel('The new passphrase').fill(to);
      await page.locator('#seal-again').fill(to);
    };
    await seal('not this one at all', 'a long enough one');
    await page.getByRole('button', { name: 'Change it on this device' }).click();
    await page.locator('#seal-now-refused', { hasText: 'does not open this key' }).waitFor();
    const focused = await page.evaluate(() => document.activeElement?.id);
    expect(focused).toBe('seal-now');
    await seal(phrase, 'kept in the office safe');
    const copy = await devices.saved(page, 'Seal a copy under it and carry that off');
    await page.getByText('The copy is saved.').waitFor();
    const sealed = readKeyFile(await readFile(copy, 'utf8'));
    expect((await unwrapKey(sealed, 'kept in the office safe', crypto.subtle)).publicKey).toBe(
      owner.publicKey,
    );
    await expect(unwrapKey(sealed, phrase, crypto.subtle)).rejects.toThrow('does not open this key');
    await seal(phrase, 'another one for the desk');
    await page.getByRole('button', { name: 'Change it on this device' }).click();
    await page.getByText('From now on the new passphrase opens').waitFor();
    const here = readKeyFile(await readFile(await devices.saved(page, 'Carry off the wrapped key'), 'utf8'));
    expect((await unwrapKey(here, 'another one for the desk', crypto.subtle)).device).toBe('office-2');
    await page.context().close();
  });
});

test('two windows: a key that one of them put here is never rubbed out by the other unseen', async () => {
  const { context, page: one } = await devices.profile();
  const two = await context.newPage();
  await devices.go(one, 'register');
  await devices.go(two, 'register');
  const make = async (page: Page, name: string) => {
    await page.locator('#key-device').fill(name);
    await page.locator('#key-pass').fill('a long enough phrase');
    await page.locator('#key-again').fill('a long enough phrase');
    await page.getByRole('button', { name: 'Make my key' }).click();
  };
  await make(one, 'first-window');
  await one.getByText('Your key is made.').waitFor();
  await one.getByText('device first-window').waitFor();
  // The other still stands as it was read: no key.
  await make(two, 'other-window');
  await two.getByText('another window has written meanwhile').waitFor();
  await two.getByText('device first-window').waitFor();
  // Having seen it, the other puts one in its place; now the first is behind, and changes nothing.
  await takeKey(two, kd, 'kd-desk');
  await two.getByText('device kd-desk').waitFor();
  await one.locator('summary', { hasText: 'Passphrase: change it, or seal a copy' }).click();
  await one.getByLabel('Passphrase that opens it now').fill('a long enough phrase');
  await one.getByLabel('The new passphrase').fill('another long enough one');
  await one.locator('#seal-again').fill('another long enough one');
  await one.getByRole('button', { name: 'Change it on this device' }).click();
  await one.getByText('another window has written meanwhile').waitFor();
  await one.getByText('device kd-desk').waitFor();
  await takeKey(two, owner, 'office-2');
  await two.getByText('device office-2').waitFor();
  await takeKey(one, next, 'safe-desk');
  await one.getByText('another window has written meanwhile').last().waitFor();
  await one.getByText('device office-2').waitFor();
  await context.close();
});

const hide = (page: Page) =>
  page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => 'hidden' });
    document.dispatchEvent(new Event('visibilitychange'));
  });

test('a torn file is mended on the page, and its end saved', async () => {
  const book = await twoDevices();
  book.edit(book.file(kd), (text) => `${text}{"header":{"ab`);
  const page = await desk(book.files, kd, 'kd-desk');
  const ends = await devices.saved(page, 'Take the torn end off, and save it as a file');
  expect(Object.values(JSON.parse(await readFile(ends, 'utf8')))).toEqual(['{"header":{"ab']);
  await page.getByText('Every signature holds').waitFor();
  expect(await verified(page)).toMatchObject({ entries: 6, codes: [] });
  await page.context().close();
});

test('with every part open the page is usable by anyone, and never scrolls sideways', async () => {
  const page = await desk((await twoDevices()).files, owner, 'office-2');
  await page.setViewportSize({ width: 360, height: 740 });
  await page.locator('[id^="drill-"] > summary').first().waitFor();
  for (const summary of await page.locator('[id^="drill-"] > summary').all()) await summary.click();
  await form(page, 'Retire a key').getByLabel('Which key').selectOption(kd.publicKey);
  await form(page, 'Retire a key').getByRole('button', { name: 'Sign the retirement' }).click();
  await page.getByText('no passphrase is written').waitFor();
  await page.evaluate(await readFile('node_modules/axe-core/axe.min.js', 'utf8'));
  const found = await page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run: (options: object) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const { violations } = await axe.run({ runOnly: tags });
    const wide = document.documentElement.scrollWidth - innerWidth;
    return { wide, violations: violations.map(({ id, nodes }) => [id, ...nodes.map(({ html }) => html)]) };
  });
  expect(found).toEqual({ wide: 0, violations: [] });
  await page.context().close();
});

test('no page complained, and none asked another host', () => expect(devices.complaints).toEqual([]));
