/**
 * Witnessing, whole, on a site that has adopted a second witness for one task and a standing of the witness's own for
 * another: by keyboard alone on a desk, by touch on a phone of 360 px, two profiles that exchange register files. Who may
 * not sign is told why before a passphrase is asked for. Paper sheets print on one sheet of paper.
 */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { appoint } from '../../src/register/acts/appoint.ts';
import { begin } from '../../src/register/acts/begin.ts';
import { bundleText, readBundle } from '../../src/register/bundle.ts';
import { toHex } from '../../src/register/bytes.ts';
import type { RegisterFiles } from '../../src/register/held.ts';
import { publicKeyOf, type Signer, signPlain } from '../../src/register/keys.ts';
import { openRegister } from '../../src/register/register.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import { withWritten } from '../../src/register/write.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { taskMapOf } from '../../src/schema/task.ts';
import { speaker } from '../../src/schema/words.ts';
import { dayText } from '../../src/site/dates.ts';
import { teller } from '../../src/site/speak.ts';
import { type Adopted, adoptedProject } from '../adoptedProject.ts';
import { table } from '../site/wordTable.ts';
import { openBrowser } from './browser.ts';
import { type Served, serve } from './serve.ts';

const { library } = readLibrary(contentFiles());
const speak = speaker(library.words.get('en') ?? new Map());
const tell = teller(table('en'));
const map = taskMapOf(library);
const critical = (library.tasks.get('T06')?.critical ?? []).map((point) =>
  speak({ say: `T06.critical-${point}` }),
);

const dayBefore = (days: number): string =>
  new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10);
const today = dayBefore(0);
const seenOn = dayBefore(6);
const phrase = 'two sleeves one gap';
const [first, other, apprentice] = ['p-03', 'p-04', 'p-17'];

let browser: Browser;
let project: Adopted;
let site: Served;
let folder: string;
const complaints: string[] = [];

interface Person {
  readonly context: BrowserContext;
  readonly page: Page;
}

async function person(how: Parameters<Browser['newContext']>[0]): Promise<Person> {
  const context = await browser.newContext({ acceptDownloads: true, ...how });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`${page.url()}: ${error.message}`));
  page.on('request', (request) => {
    if (!request.url().startsWith(site.url) && !request.url().startsWith('blob:'))
      complaints.push(request.url());
  });
  return { context, page };
}

const go = (page: Page, path: string) => page.goto(`${site.url}en/${path}/`, { waitUntil: 'networkidle' });

async function saved(page: Page, press: () => Promise<void>): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  const path = join(folder, `${Math.random().toString(36).slice(2)}-${download.suggestedFilename()}`);
  await download.saveAs(path);
  return path;
}

/** Makes a key on a device and hands out its public half. */
async function keyOn(page: Page, device: string): Promise<string> {
  await go(page, 'register');
  await page.getByLabel('Name of this device').first().fill(device);
  await page.getByLabel('Passphrase').first().fill(phrase);
  await page.getByLabel('The same once more').fill(phrase);
  await page.getByRole('button', { name: 'Make my key' }).click();
  await page.getByText(`device ${device}`).waitFor();
  const file = await saved(page, () =>
    page.getByRole('button', { name: 'Take out its public file' }).click(),
  );
  return (JSON.parse(await readFile(file, 'utf8')) as { publicKey: string }).publicKey;
}

/** A register whose owner has appointed both keys: the first for two tasks, the other for all. */
async function appointed(firstKey: string, otherKey: string): Promise<RegisterFiles> {
  const seed = new Uint8Array(32).fill(9);
  const signer: Signer = {
    publicKey: toHex(publicKeyOf(seed)),
    device: 'office',
    sign: async (message) => signPlain(seed, message),
  };
  const now = Date.now() - 60_000;
  const chance = (n: number) => crypto.getRandomValues(new Uint8Array(n));
  const writing = { signer, now, chance };
  const verify = verifierOf(crypto.subtle);
  let files = withWritten({}, await begin({ zone: 'UTC', person: 'p-01' }, writing, dayIn));
  const asked = [
    { witness: firstKey, person: first, tasks: ['T05', 'T06'] },
    { witness: otherKey, person: other, tasks: 'all' },
  ] as const;
  for (const one of asked) {
    const { judged } = await openRegister(files, { verify, now, dayIn });
    files = withWritten(files, await appoint(judged, { ...one, on: dayBefore(30) }, map, writing));
  }
  return files;
}

const bringIn = async (page: Page, file: string, says: string) => {
  await go(page, 'register');
  await page.getByLabel('Bring a register in').setInputFiles(file);
  await page.getByText(says).first().waitFor();
};

/** Goes on by the tab key alone until something has the focus. */
async function tabTo(page: Page, where: Locator): Promise<void> {
  const target = await where.elementHandle();
  for (let i = 0; i < 160; i += 1) {
    if (await page.evaluate((one) => document.activeElement === one, target)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by the tab key to ${where}`);
}
/** From the top of the page again, as a person who lost the place would. */
const toTop = (page: Page) =>
  page.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    getSelection()?.removeAllRanges();
    const top = document.body;
    top.tabIndex = -1;
    top.focus();
  });
async function writeAt(page: Page, where: Locator, text: string): Promise<void> {
  await tabTo(page, where);
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.press('Delete');
  await page.keyboard.type(text);
}
/** Takes one box of a row with the arrow keys. */
async function takeBox(page: Page, group: string, place: number): Promise<void> {
  const boxes = page.getByRole('group', { name: group, exact: true }).getByRole('radio');
  await tabTo(page, boxes.first());
  await page.keyboard.press('Space');
  for (let i = 0; i < place; i += 1) await page.keyboard.press('ArrowRight');
  expect(await boxes.nth(place).isChecked()).toBe(true);
}
/** Chooses in a list by its letters. */
async function takeOption(page: Page, where: Locator, letters: string): Promise<void> {
  await tabTo(page, where);
  // Letters within a second of each other are one word.
  await page.waitForTimeout(1100);
  await page.keyboard.type(letters);
}
const pass = (page: Page) => page.getByLabel('Passphrase');
const cannot = (page: Page, text: string) => page.locator('#witness-cannot', { hasText: text }).waitFor();

async function unpacked(path: string): Promise<string> {
  const files = readBundle(await readFile(path, 'utf8'));
  const root = await mkdtemp(join(folder, 'register-'));
  for (const [name, text] of Object.entries(files)) {
    await mkdir(dirname(join(root, name)), { recursive: true });
    await writeFile(join(root, name), text);
  }
  return root;
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'trayhand-witness-'));
  project = adoptedProject([
    '{ key: second, of: T06, value: true }',
    '{ key: own-standing-in, of: T07, value: true }',
  ]);
  const [opened, pages] = await Promise.all([openBrowser(), project.build()]);
  browser = opened;
  site = await serve(pages);
}, 240_000);
afterAll(async () => {
  await browser?.close();
  await site?.close();
  project?.remove();
  await rm(folder, { recursive: true, force: true });
});

describe('a witness, a second witness, two devices', () => {
  let desk: Person;
  let phone: Person;
  let registerFile: string;

  test('both make a key; the owner appoints them; the register comes to both as a file', async () => {
    desk = await person({ viewport: { width: 1280, height: 800 } });
    phone = await person({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true });
    const keys = [await keyOn(desk.page, 'kt-desk'), await keyOn(phone.page, 'lz-phone')] as const;
    registerFile = join(folder, 'register.json');
    await writeFile(registerFile, bundleText(await appointed(...keys)));
    for (const { page } of [desk, phone]) await bringIn(page, registerFile, '3 new entries; 3 in all.');
  });

  test('by keyboard: who may not sign is told why, and asked for no passphrase', async () => {
    const { page } = desk;
    await go(page, 'witness');
    await page.getByLabel('Who', { exact: true }).waitFor();
    await toTop(page);
    await writeAt(page, page.getByLabel('Who', { exact: true }), first);
    await takeOption(page, page.getByLabel('Task', { exact: true }), 'T06');
    await cannot(page, 'nobody signs for himself: have another witness look.');
    expect(await pass(page).count()).toBe(0);
    await takeOption(page, page.getByLabel('Task', { exact: true }), 'T07');
    await cannot(page, `not appointed for T07 on ${today}: have the owner appoint this key first.`);
    expect(await page.locator('#witness-task optgroup').getAttribute('label')).toBe(
      'You are not appointed for these',
    );
    expect(await pass(page).count()).toBe(0);
    expect(await page.getByRole('button', { name: /^Sign as/ }).isDisabled()).toBe(true);
  });

  test('by keyboard: an attempt stopped for safety, seen days ago and entered from paper', async () => {
    const { page } = desk;
    await toTop(page);
    await writeAt(page, page.getByLabel('Who', { exact: true }), apprentice);
    await takeOption(page, page.getByLabel('Task', { exact: true }), 'T06');
    for (const pair of ['Width', 'Metal', 'Area']) {
      await tabTo(page, page.getByLabel(pair, { exact: true }));
      await page.keyboard.press('ArrowDown');
    }
    await writeAt(page, page.getByLabel('Day seen'), seenOn);
    await takeOption(page, page.getByLabel('Shift', { exact: true }), 'Night');
    await takeOption(page, page.getByLabel('Place', { exact: true }), 'sca');
    await tabTo(page, page.getByLabel('Written on paper first'));
    await page.keyboard.press('Space');
    const [one = '', two = '', ...rest] = critical;
    await takeBox(page, one, 0);
    await takeBox(page, two, 1);
    for (const point of rest) await takeBox(page, point, 2);
    await takeBox(page, 'Manner', 0);
    await takeBox(page, 'Alone or with help', 1);
    await takeBox(page, 'Done and answered in my sight', 0);
    await tabTo(page, page.getByRole('checkbox', { name: 'Stopped', exact: true }));
    await page.keyboard.press('Space');
    await page.getByText('A stop never counts against the one who stopped.').waitFor();
    expect(await page.getByRole('radio', { name: 'Shown', exact: true }).isDisabled()).toBe(true);
    expect(await pass(page).count()).toBe(0);
    await tabTo(page, page.getByRole('radio', { name: 'Not yet', exact: true }));
    await page.keyboard.press('Space');

    const days = `on ${dayText(tell, seenOn)}, on night shift, place: scaffold, and enter it on ${dayText(tell, today)}, from paper`;
    const says = page.locator('.says');
    await expect.poll(() => says.textContent()).toContain(days);
    const text = await says.textContent();
    expect(text).toContain('performed, with help; ');
    expect(text).toContain(`1 seen, 1 asked, ${rest.length} missed`);
    expect(text).toContain(`Asked, not seen: ${two}`);
    for (const point of rest) expect(text).toContain(`Missed: ${point}`);
    expect(text).toContain('stopped for safety, which counts against nobody: not yet.');
    await tabTo(page, pass(page));
    await page.keyboard.type(phrase);
    await page.keyboard.press('Enter');
    await page.getByText('Cut and deburr: Not shown.').waitFor();
    await page
      .getByText(`seen ${dayText(tell, seenOn)}, entered ${dayText(tell, today)}, from paper.`)
      .waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('answer');
  });

  test('by keyboard: shown with what was measured, waiting for a second witness; carried off', async () => {
    const { page } = desk;
    await tabTo(page, page.getByRole('button', { name: 'Sign another' }));
    await page.keyboard.press('Enter');
    await toTop(page);
    await writeAt(page, page.getByLabel('Who', { exact: true }), apprentice);
    await takeOption(page, page.getByLabel('Task', { exact: true }), 'T06');
    for (const pair of ['Width', 'Metal', 'Area']) {
      await tabTo(page, page.getByLabel(pair, { exact: true }));
      await page.keyboard.press('ArrowDown');
    }
    for (const point of critical) await takeBox(page, point, 0);
    const add = page.getByRole('button', { name: 'Write it down' });
    for (const piece of ['piece 1', 'piece 2']) {
      await toTop(page);
      await writeAt(page, page.getByLabel('What', { exact: true }), piece);
      if (piece === 'piece 1') {
        const wanted = page.getByRole('group', { name: 'Wanted', exact: true });
        await writeAt(page, wanted.getByLabel('Feet', { exact: true }), `7'-8 5/8"`);
        const got = page.getByRole('group', { name: 'Got', exact: true });
        await writeAt(page, got.getByLabel('Feet', { exact: true }), `7'-8 9/16"`);
        await tabTo(page, add);
        await page.keyboard.press('Enter');
        await page.getByText('Say what it was measured with.').waitFor();
        await toTop(page);
        await writeAt(page, page.getByLabel('Measured with'), 'tape 14');
      } else {
        await takeOption(page, page.getByLabel('What kind of reading'), 'Ano');
        await writeAt(page, page.getByLabel('Wanted', { exact: true }), 'square within 1/16');
        await writeAt(page, page.getByLabel('Got', { exact: true }), 'square');
      }
      await tabTo(page, add);
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: `Take off ${piece}` }).waitFor();
    }
    await takeBox(page, 'Manner', 0);
    await takeBox(page, 'Alone or with help', 0);
    await takeBox(page, 'Done and answered in my sight', 0);
    await takeBox(page, 'Outcome', 0);
    const says = page.locator('.says');
    await expect
      .poll(() => says.textContent())
      .toContain('2 of 3 measured: shown, once a second witness has seen it too.');
    expect(await says.textContent()).toContain('with tape 14');
    await tabTo(page, pass(page));
    await page.keyboard.type(phrase);
    await page.keyboard.press('Enter');
    await page.getByText('Cut and deburr: Not shown, ').waitFor();
    await page.getByText('This task wants a second witness').waitFor();
    const carry = page.getByRole('button', { name: 'Carry it off' });
    await tabTo(page, carry);
    registerFile = await saved(page, () => page.keyboard.press('Enter'));

    // The first witness is nobody's second.
    await go(page, 'witness/second');
    await page.getByText('Nothing waits for you').waitFor();
    await page.getByText('1 more waits for somebody else').waitFor();
  });

  test('by touch at 360 px: the second witness reads what the first signed, and signs that he saw it himself', async () => {
    const { page } = phone;
    await bringIn(page, registerFile, '2 new entries; 5 in all.');
    await go(page, 'witness/second');
    await page.locator('summary', { hasText: `Cut and deburr, ${apprentice}` }).tap();
    const said = page.locator('.says').first();
    await said.waitFor();
    expect(await said.textContent()).toContain(`I, ${first}, saw ${apprentice} at T06`);
    expect(await said.textContent()).toContain('piece 2: wanted square within 1/16, got square');
    expect(await pass(page).count()).toBe(0);
    await page.locator('.choice', { hasText: 'I saw it myself' }).tap();
    await page.getByText(`I, ${other}, saw it myself: ${apprentice} at T06`).waitFor();
    await pass(page).tap();
    await page.keyboard.type(phrase);
    await page.getByRole('button', { name: /^Sign as/ }).tap();
    await page.getByText('Cut and deburr: Shown.').waitFor();
    registerFile = await saved(page, () => page.getByRole('button', { name: 'Carry it off' }).tap());
    const root = await unpacked(registerFile);
    const board = await project.command('register', 'board', root, '--on', today);
    const people = (JSON.parse(board.out) as { result: { people: { id: string; tasks: object }[] } }).result
      .people;
    expect(people.find(({ id }) => id === apprentice)?.tasks).toMatchObject({
      T06: { standing: 'shown', since: today },
    });
    expect(JSON.parse((await project.command('register', 'verify', root)).out)).toMatchObject({
      result: { entries: 6, problems: [] },
    });
  });

  test('by touch at 360 px: where the site asks for it, a witness who is not shown himself is refused', async () => {
    const { page } = phone;
    await go(page, 'witness');
    await page.getByLabel('Who', { exact: true }).fill(apprentice);
    await page.getByLabel('Task', { exact: true }).selectOption('T07');
    for (const pair of await page.locator('select[aria-describedby$="-open"]').all())
      await pair.selectOption({ index: 1 });
    await cannot(page, `the witness’s own standing in T07 on ${today} is not shown`);
    expect(await pass(page).count()).toBe(0);
    // T05 asks nothing of the kind.
    await page.getByLabel('Task', { exact: true }).selectOption('T05');
    await expect.poll(() => page.locator('#witness-cannot').textContent()).not.toContain('own standing');

    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBe(360);
    const low = await page
      .locator('.choice, main select, main button, main input[type="text"]')
      .evaluateAll((all) =>
        all
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 44)
          .map((one) => one.textContent),
      );
    expect(low).toEqual([]);
    await page.locator('.choice', { hasText: 'Simulated' }).tap();
    expect(await page.getByRole('radio', { name: 'Simulated', exact: true }).isChecked()).toBe(true);
    await page.locator('.choice', { hasText: 'Written on paper first' }).tap();
    expect(await page.getByLabel('Written on paper first').isChecked()).toBe(true);
  });

  test('by keyboard: what was signed is taken back, with its reason', async () => {
    const { page } = desk;
    await bringIn(page, registerFile, '1 new entry; 6 in all.');
    await go(page, 'witness/own');
    const row = page.locator('summary', { hasText: /Cut and deburr, p-17, .*: Shown/ });
    await row.waitFor();
    await toTop(page);
    await tabTo(page, row);
    await page.keyboard.press('Enter');
    await page.getByText('Say why, first.').first().waitFor();
    await writeAt(page, page.locator('#take-back-why'), 'it was another piece');
    await page.getByText(/I, p-03, take back entry [0-9a-f]{8}: it was another piece/).waitFor();
    await tabTo(page, page.locator('#take-back-pass'));
    await page.keyboard.type(phrase);
    await page.keyboard.press('Enter');
    await page.getByText('Signed: entry').waitFor();
    await page.locator('summary', { hasText: 'taken back' }).waitFor();
    await go(page, 'crew/own');
    await page.getByRole('link', { name: /^p-17, Cut and deburr: Show again/ }).waitFor();
  });

  test('no page complained, and none asked another host', () => {
    expect(complaints).toEqual([]);
  });
});

describe('witness sheets on paper', () => {
  const shown = map.tasks.filter(({ parts }) => parts.length === 0).map(({ id }) => id);
  test.each(['A4', 'Letter'] as const)(
    'each prints on one sheet of %s, in black and white',
    async (format) => {
      const { context, page } = await person({ javaScriptEnabled: false });
      const sheets: Record<string, number | undefined> = {};
      for (const task of shown) {
        await page.goto(`${site.url}en/witness/paper/${task.toLowerCase()}/`);
        const pdf = (await page.pdf({ format })).toString('latin1');
        sheets[task] = pdf.match(/\/Type\s*\/Page\b/g)?.length;
      }
      expect(sheets).toEqual(Object.fromEntries(shown.map((task) => [task, 1])));
      await context.close();
    },
  );

  test('boxes are 15 by 6 mm on paper; two sign where the task wants two; training values are marked', async () => {
    const { context, page } = await person({ javaScriptEnabled: false });
    await page.emulateMedia({ media: 'print' });
    for (const [task, signers] of [
      ['T06', 2],
      ['T05', 1],
    ] as const) {
      await page.goto(`${site.url}en/witness/paper/${task.toLowerCase()}/`);
      const box = await page.locator('.ink-box').first().boundingBox();
      // 96 px are 25.4 mm.
      expect((box?.width ?? 0) / (96 / 25.4)).toBeCloseTo(15, 1);
      expect((box?.height ?? 0) / (96 / 25.4)).toBeCloseTo(6, 1);
      expect(await page.locator('.ink-box').count()).toBe(
        3 * (library.tasks.get(task)?.critical?.length ?? 0),
      );
      expect(await page.locator('.signs tbody tr').count()).toBe(signers);
      expect(await page.locator('.measures tbody tr').count()).toBe(3);
      expect(await page.getByText('NOT FOR CONSTRUCTION').first().isVisible()).toBe(true);
      expect(await page.locator('script').count()).toBe(0);
    }
    await context.close();
  });
});
