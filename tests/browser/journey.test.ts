/**
 * The whole journey as three people in three profiles of a browser, who exchange files: a supervisor begins a register
 * and appoints the trainer's key; the trainer sets a sheet; the apprentice answers it with the network cut; the trainer
 * grades it again and signs; the supervisor brings the register in and reads it on the crew board.
 * Right answers come from src/practice, the keys and signatures from the pages themselves.
 */
import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { keyOf } from '../../src/practice/key.ts';
import { sheetDraws } from '../../src/practice/sheet.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { formatLength, fromInches } from '../../src/trade/length.ts';
import { openBrowser } from './browser.ts';
import { type Served, serve } from './serve.ts';

const run = promisify(execFile);
const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const speak = speaker(library.words.get('en') ?? new Map());
const sheet = practice.sheets.get('measure-and-mark');
if (sheet === undefined) throw new Error('the sheet of this journey is gone');

const phrase = { boss: 'five rods and a strut', trainer: 'two sleeves one gap' };
const apprentice = 'p-17';
const trainer = 'p-03';
const bench = 4711;

let browser: Browser;
let site: Served;
let folder: string;
/** What a page of any profile complained of: a refused policy, an error, a request to another host. */
const complaints: string[] = [];

interface Person {
  readonly context: BrowserContext;
  readonly page: Page;
}

async function person(): Promise<Person> {
  const context = await browser.newContext({ acceptDownloads: true });
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

/** Presses what saves a file, and keeps it. */
async function saved(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).click(),
  ]);
  const path = join(folder, `${Math.random().toString(36).slice(2)}-${download.suggestedFilename()}`);
  await download.saveAs(path);
  return path;
}

async function makeKey(page: Page, device: string, passphrase: string): Promise<void> {
  await page.getByLabel('Name of this device').first().fill(device);
  await page.getByLabel('Passphrase').first().fill(passphrase);
  await page.getByLabel('The same once more').fill(passphrase);
  await page.getByRole('button', { name: 'Make my key' }).click();
  await page.getByText(`device ${device}`).waitFor();
}

/** Chooses one of a group of boxes. */
const choose = (page: Page, group: string, option: string) =>
  page
    .getByRole('group', { name: group, exact: true })
    .getByRole('radio', { name: option, exact: true })
    .check();

/** Chooses the plain value of every pair of the task: none is taken for granted. */
async function choosePlain(page: Page): Promise<void> {
  const pairs = page.locator('select[id^="witness-"]:not(#witness-task)');
  for (const pair of await pairs.all()) await pair.selectOption({ index: 1 });
}

/** Writes a length into the three fields by their first, as a text pasted whole. */
async function write(page: Page, group: string, text: string): Promise<void> {
  const feet = page.getByRole('group', { name: group, exact: true }).getByLabel('Feet', { exact: true });
  await feet.fill(text);
  await feet.press('Tab');
}

const rightAnswers = (benchNumber: number) =>
  sheetDraws(sheet, benchNumber, practice).map(({ draw }) => ({
    draw,
    answers: keyOf(draw, practice.world, { lang: 'en', speak }).answers,
  }));

const prompts = (benchNumber: number) =>
  rightAnswers(benchNumber).map(({ draw, answers }) =>
    draw.family.asks.map((ask) => ({
      id: ask.id,
      text: formatLength(fromInches(answers[ask.id] as number), 64),
    })),
  );

async function takeAllPoints(page: Page, how: 'Seen' | 'Missed'): Promise<void> {
  for (const point of library.tasks.get('T05')?.critical ?? []) {
    await choose(page, speak({ say: `T05.critical-${point}` }), how);
  }
}

/** The register's file unpacked into a folder, as the command takes it. */
async function unpacked(path: string): Promise<string> {
  const { files } = JSON.parse(await readFile(path, 'utf8')) as { files: Record<string, string> };
  const root = await mkdtemp(join(folder, 'register-'));
  for (const [name, text] of Object.entries(files)) {
    await mkdir(dirname(join(root, name)), { recursive: true });
    await writeFile(join(root, name), text);
  }
  return root;
}

async function command(...args: readonly string[]): Promise<unknown> {
  const { stdout } = await run(process.execPath, ['src/cli/bin.ts', 'register', ...args]);
  return JSON.parse(stdout).result;
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'trayhand-journey-'));
  [browser, site] = await Promise.all([openBrowser(), serve(process.env['SITE_DIR'] ?? 'dist')]);
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
  await rm(folder, { recursive: true, force: true });
});

describe('three people, three devices, files between them', () => {
  let boss: Person;
  let coach: Person;
  let learner: Person;
  let registerFile: string;
  let answersFile: string;
  let blankFile: string;

  test('the supervisor begins a register and appoints the trainer’s key', async () => {
    [boss, coach, learner] = await Promise.all([person(), person(), person()]);
    await go(coach.page, 'register');
    await makeKey(coach.page, 'kt-phone', phrase.trainer);
    const publicFile = await saved(coach.page, 'Take out its public file');
    expect(JSON.parse(await readFile(publicFile, 'utf8'))).toEqual({
      v: 1,
      kind: 'public-key',
      publicKey: expect.stringMatching(/^[0-9a-f]{64}$/),
    });

    const { page } = boss;
    await go(page, 'register');
    await makeKey(page, 'office-desk', phrase.boss);
    // Everything empty: every field that wants something says so, and what is written stays.
    await page.getByRole('button', { name: 'Begin the register' }).click();
    await page.getByText('no time zone is given').waitFor();
    await page.getByText('no passphrase is written').waitFor();
    await page.getByLabel('Your own id').fill('p-01');
    await page.getByLabel('Days are counted in').fill('UTC');
    await page.locator('#begin-pass').fill(phrase.boss);
    await page.getByRole('button', { name: 'Begin the register' }).click();
    await page.getByText('Every signature holds').waitFor();

    const wrapped = await saved(page, 'Carry off the wrapped key');
    await page.getByLabel('Public file of the witness’s key').setInputFiles(wrapped);
    await page.getByText('this is the secret key file; never hand it out').waitFor();
    await page.getByLabel('Public file of the witness’s key').setInputFiles(publicFile);
    await page.getByLabel('The witness’s id').fill(trainer);
    await page.locator('#appoint-pass').fill(phrase.boss);
    await page.getByRole('button', { name: 'Sign the appointment' }).click();
    await page.getByText('Signed. Entry').waitFor();
    expect(await page.getByText('It has never been carried off this device.').count()).toBe(1);
    registerFile = await saved(page, 'Carry it off');
    await page.getByText('Last carried off this device on').waitFor();
    expect(await command('verify', await unpacked(registerFile))).toMatchObject({ entries: 2, problems: [] });
  });

  test('the trainer takes the register in and sets a sheet', async () => {
    const { page } = coach;
    await page.getByLabel('Bring a register in').setInputFiles(registerFile);
    await page.getByText('2 new entries; 2 in all.').waitFor();
    await page.getByText('It is appointed: all tasks').waitFor();
    await go(page, 'set');
    await page.getByLabel('Sheet', { exact: true }).selectOption('measure-and-mark');
    await page.getByRole('button', { name: 'Save the file' }).click();
    await page.getByText('Write 1 to 64 letters, digits').waitFor();
    await page.getByLabel('Who it is for').fill(apprentice);
    await page.getByLabel('Bench number').fill(String(bench));
    const set = await saved(page, 'Save the file');
    expect(JSON.parse(await readFile(set, 'utf8'))).toEqual({
      v: 1,
      kind: 'set',
      sheet: 'measure-and-mark',
      bench,
      person: apprentice,
      task: 'T05',
    });
    await page.getByLabel('Bench number').fill(String(bench + 1));
    const another = await saved(page, 'Save the file');

    // A sheet handed over with nothing on it.
    await go(learner.page, 'answer');
    await learner.page.getByLabel('Open the file you were given').setInputFiles(another);
    await learner.page.getByLabel('Name of this device').fill('dm-phone');
    await learner.page.getByRole('button', { name: 'Begin', exact: true }).click();
    for (const place of [1, 2, 3, 4, 5]) {
      await learner.page.getByRole('heading', { name: `Draw ${place} of 6` }).waitFor();
      await learner.page.getByRole('button', { name: 'Next draw' }).click();
    }
    await learner.page.getByRole('button', { name: 'Look it over' }).click();
    blankFile = await saved(learner.page, 'Save the answers');
    // Saved is not handed over: the person can look again, and saves again.
    await learner.page.getByText('Saved as a file. Hand it to your trainer').waitFor();
    await learner.page.getByRole('button', { name: 'Go back and look at the answers' }).click();
    await learner.page.getByRole('heading', { name: 'Before you hand it over' }).waitFor();
    await learner.page.reload({ waitUntil: 'networkidle' });
    await learner.page.getByRole('heading', { name: 'Before you hand it over' }).waitFor();
    blankFile = await saved(learner.page, 'Save the answers');
    await learner.page.getByRole('button', { name: 'Put this sheet away' }).click();
    await learner.page.getByLabel('Open the file you were given').setInputFiles(blankFile);
    await learner.page.getByText('This is not a set sheet;').waitFor();
    await learner.page.getByLabel('Open the file you were given').setInputFiles(set);
    await learner.page.getByRole('button', { name: 'Begin', exact: true }).click();
    await learner.page.getByRole('heading', { name: 'Draw 1 of 6' }).waitFor();
  });

  test('the apprentice answers it; it outlives a reload and a cut network; nothing is signed there meanwhile', async () => {
    const { page, context } = learner;
    const draws = prompts(bench);
    const asked = (place: number) =>
      practice.families.get(rightAnswers(bench)[place - 1]?.draw.family.id ?? '');
    expect(asked(1)?.id).toBe('cut-with-insertion');
    const shownPrompts = async () => page.locator('form.asks legend').allTextContents();

    const [first] = draws;
    const [prompt = ''] = await shownPrompts();
    await write(page, prompt, first?.[0]?.text ?? '');
    await page.reload({ waitUntil: 'networkidle' });
    const feet = page.getByRole('group', { name: prompt, exact: true }).getByLabel('Feet', { exact: true });
    await expect.poll(() => feet.inputValue()).toBe(first?.[0]?.text.split("'")[0]);

    const other = await context.newPage();
    await go(other, 'witness');
    await other.getByText('A sheet is being answered here').waitFor();
    expect(await other.getByRole('button', { name: /^Sign/ }).count()).toBe(0);
    await other.close();

    await context.setOffline(true);
    for (const [i, asks] of draws.entries()) {
      await page.getByRole('heading', { name: `Draw ${i + 1} of 6` }).waitFor();
      const texts = await shownPrompts();
      expect(texts).toHaveLength(asks.length);
      // What was written before the reload stands already.
      const rest = [...asks.entries()].slice(i === 0 ? 1 : 0);
      for (const [k, { text }] of rest) await write(page, texts[k] ?? '', text);
      expect(await page.getByText(/Holds|Rework/).count()).toBe(0);
      await page.getByRole('button', { name: i < 5 ? 'Next draw' : 'Look it over' }).click();
      if (i !== 2) continue;
      // A reload comes back to the draw that was open.
      await page.getByRole('heading', { name: 'Draw 4 of 6' }).waitFor();
      await context.setOffline(false);
      await page.reload({ waitUntil: 'networkidle' });
      await page.getByRole('heading', { name: 'Draw 4 of 6' }).waitFor();
      await context.setOffline(true);
    }
    expect(await page.getByText('written', { exact: true }).count()).toBe(6);
    answersFile = await saved(page, 'Save the answers');
    await context.setOffline(false);
    const { device, person: who, answers } = JSON.parse(await readFile(answersFile, 'utf8'));
    expect({ device, who, count: answers.length }).toEqual({ device: 'dm-phone', who: apprentice, count: 6 });
  });

  test('the trainer cannot sign as shown what does not pass, nor for himself, nor with another passphrase', async () => {
    const { page } = coach;
    await go(page, 'witness');
    await page.getByLabel('Answers file, if a sheet was set').setInputFiles(blankFile);
    await page.getByText('It is not passed.').waitFor();
    await takeAllPoints(page, 'Seen');
    expect(await page.getByRole('radio', { name: 'Shown', exact: true }).isDisabled()).toBe(true);
    await page.getByText('graded again, the answers do not pass.').waitFor();
    await page.getByRole('button', { name: 'Take these answers off' }).click();
    expect(await page.getByRole('radio', { name: 'Shown', exact: true }).isDisabled()).toBe(false);
    await choose(page, speak({ say: 'T05.critical-waste-side' }), 'Missed');
    expect(await page.getByRole('radio', { name: 'Shown', exact: true }).isDisabled()).toBe(true);
    await page.getByText('a critical point was missed.').waitFor();
    await choose(page, speak({ say: 'T05.critical-waste-side' }), 'Seen');

    await page.getByLabel('Who', { exact: true }).fill(trainer);
    await page.getByText('Not chosen yet.').first().waitFor();
    await page.locator('#witness-cannot', { hasText: 'every choice under the task' }).waitFor();
    await choosePlain(page);
    expect(await page.getByText('Not chosen yet.').count()).toBe(0);
    await choose(page, 'Manner', 'Performed');
    await choose(page, 'Alone or with help', 'Alone');
    await choose(page, 'Done and answered in my sight', 'Yes');
    await choose(page, 'Outcome', 'Shown');
    await page.locator('#witness-cannot', { hasText: 'nobody signs for himself' }).waitFor();
    expect(await page.getByRole('button', { name: /^Sign as/ }).isDisabled()).toBe(true);

    await page.getByLabel('Who', { exact: true }).fill(apprentice);
    await page.getByText(`${apprentice} is new here`).first().waitFor();
    await page.getByLabel('Answers file, if a sheet was set').setInputFiles(answersFile);
    await page.getByText('It is passed.').waitFor();
    await page.getByLabel('Passphrase').fill('three sleeves no gap');
    await page.getByRole('button', { name: /^Sign as/ }).click();
    await page.getByText('does not open this key').waitFor();
    expect(await page.getByLabel('Passphrase').inputValue()).toBe('');
  });

  test('the trainer measures, reads what the signature says, signs and carries it off', async () => {
    const { page } = coach;
    for (const piece of ['piece 1', 'piece 2', 'piece 3']) {
      await page.getByLabel('What', { exact: true }).fill(piece);
      await page.getByLabel('Measured with').fill('tape 14');
      await write(page, 'Wanted', `7'-8 5/8"`);
      await write(page, 'Got', `7'-8 9/16"`);
      await page.getByRole('button', { name: 'Write it down' }).click();
      await page.getByRole('button', { name: `Take off ${piece}` }).waitFor();
    }
    const says = await page.locator('.says').textContent();
    expect(says).toContain(`saw ${apprentice} at T05`);
    expect(says).toContain('6 of 6 draws of sheet 5, bench 4711, hold, answered on dm-phone');
    expect(says).toContain(
      'critical points: 4 seen, 0 asked, 0 missed; 3 of 3 measured: shown, good to the end of',
    );
    await page.getByLabel('Passphrase').fill(phrase.trainer);
    await page.getByRole('button', { name: /^Sign as/ }).click();
    await page.getByText('Measure and mark: Shown.').waitFor();
    registerFile = await saved(page, 'Carry it off');
    const root = await unpacked(registerFile);
    expect(await command('verify', root)).toMatchObject({ entries: 3, problems: [] });
    const today = new Date().toISOString().slice(0, 10);
    expect(await command('board', root, '--on', today)).toMatchObject({
      people: expect.arrayContaining([
        expect.objectContaining({
          id: apprentice,
          tasks: expect.objectContaining({ T05: expect.objectContaining({ standing: 'shown' }) }),
        }),
      ]),
    });
  });

  test('the supervisor brings it in, and the crew board says Shown with the witness’s initials', async () => {
    const { page } = boss;
    const names = join(folder, 'people.json');
    const people = [
      { id: apprentice, name: 'Dana Mott' },
      { id: trainer, name: 'Kai Torvald' },
    ];
    await writeFile(names, JSON.stringify({ people }));
    await go(page, 'register');
    await page.getByLabel('Bring a register in').setInputFiles(registerFile);
    await page.getByText('1 new entry; 3 in all.').waitFor();
    await page.getByLabel('File of names').setInputFiles(names);
    await page.getByText('2 names are here.').waitFor();
    await go(page, 'crew/own');
    const cell = page.getByRole('link', { name: /^Dana Mott, Measure and mark: Shown, witness Kai Torvald/ });
    await cell.waitFor();
    expect(await cell.locator('svg text').textContent()).toBe('KT');
    expect(await page.getByRole('link', { name: /: Shown,/ }).count()).toBe(1);
    await page.locator('summary', { hasText: 'This job needs' }).click();
    await page.getByLabel('T05 Measure and mark').check();
    await expect.poll(() => page.locator('.ready .huge').textContent()).toBe('Dana Mott');
    await page.getByLabel('T06 Cut and deburr').check();
    await expect.poll(() => page.locator('.ready .huge').textContent()).toBe('Nobody');
    await page.getByText('Dana Mott lacks only T06.').waitFor();
  });

  test('an altered line is not taken, another register is refused, and a lost register comes back from its file', async () => {
    const { page } = boss;
    const bundle = JSON.parse(await readFile(registerFile, 'utf8')) as { files: Record<string, string> };
    const altered = Object.entries(bundle.files).map(([name, text]) => [
      name,
      name.includes('.kt-phone.') ? text.replace('"kind":"check"', '"kind":"chick"') : text,
    ]);
    const alteredFile = join(folder, 'altered.json');
    await writeFile(alteredFile, JSON.stringify({ ...bundle, files: Object.fromEntries(altered) }));
    await go(page, 'register');
    await page.getByLabel('Bring a register in').setInputFiles(alteredFile);
    await page
      .getByText('1 line of that file was altered or could not be read, and was not taken.')
      .waitFor();
    await page.getByText('Every signature holds').waitFor();

    // Another owner's register does not mix with this one.
    const stranger = await person();
    await go(stranger.page, 'register');
    await makeKey(stranger.page, 'other-desk', phrase.boss);
    await stranger.page.getByRole('button', { name: /^Take this device’s: / }).click();
    await stranger.page.locator('#begin-pass').fill(phrase.boss);
    await stranger.page.getByRole('button', { name: 'Begin the register' }).click();
    await stranger.page.getByText('Every signature holds').waitFor();
    const strange = await saved(stranger.page, 'Carry it off');
    await page.getByLabel('Bring a register in').setInputFiles(strange);
    await page.getByText('another register: it began differently').waitFor();
    await stranger.context.close();

    // A browser that has cleared its storage: the altered copy alone shows what does not hold, the good one mends it.
    const cleared = await person();
    await go(cleared.page, 'register');
    await cleared.page.getByLabel('Bring a register in').setInputFiles(alteredFile);
    await cleared.page.getByText('1 to look into').waitFor();
    await cleared.page.getByText('Bring in another copy that holds the entry as it was signed.').waitFor();
    await cleared.page.getByLabel('Bring a register in').setInputFiles(registerFile);
    await cleared.page.getByText('Every signature holds').waitFor();
    await cleared.context.close();
  });

  test('no page complained, and none asked another host', () => {
    expect(complaints).toEqual([]);
  });
});
