/**
 * A sheet goes from a trainer's phone to an apprentice's and back with nothing but pictures: each page's code is
 * photographed as it stands on the screen, and the picture is given to the other page's entry. The supervisor's desk
 * appoints the trainer's key from a picture too, and the register goes there and back as a file, from the appointment
 * to the entry behind the crew board. Profiles of a browser, the phones of phone size, once in the light look and once
 * in the dark one. Then what a bad picture gets, and links.
 */
import { Buffer } from 'node:buffer';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { keyOf } from '../../src/practice/key.ts';
import { sheetDraws } from '../../src/practice/sheet.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { packed } from '../../src/schema/link.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { codeSvg } from '../../src/site/code.ts';
import { formatLength, fromInches } from '../../src/trade/length.ts';
import { openBrowser } from './browser.ts';
import { Devices } from './devices.ts';
import { type Served, serve } from './serve.ts';

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
const sheet = practice.sheets.get('measure-and-mark');
if (sheet === undefined) throw new Error('the sheet of this journey is gone');
const bench = 4711;
const [boss, trainer, apprentice] = ['p-01', 'p-03', 'p-17'];
const phrase = 'two sleeves one gap';

let browser: Browser;
let site: Served;
let folder: string;
/** Desks, and the files that go between all devices. */
let devices: Devices;
/** What a page complained of: a refused policy, an error, a request to another host or one that carries what is behind #. */
const complaints: string[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'trayhand-handing-'));
  [browser, site] = await Promise.all([openBrowser(), serve(process.env['SITE_DIR'] ?? 'dist')]);
  devices = new Devices(browser, site, folder);
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
  await rm(folder, { recursive: true, force: true });
});

interface Phone {
  readonly context: BrowserContext;
  readonly page: Page;
}

async function phone(colorScheme: 'light' | 'dark'): Promise<Phone> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    deviceScaleFactor: 2,
    hasTouch: true,
    isMobile: true,
    colorScheme,
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`${page.url()}: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url().split('#')[0] ?? '';
    const foreign = !url.startsWith(site.url) && !url.startsWith('blob:');
    if (foreign || /(set|answers|key)=/.test(url)) complaints.push(url);
  });
  return { context, page };
}

const go = (page: Page, path: string) => page.goto(`${site.url}en/${path}/`, { waitUntil: 'networkidle' });

/** The whole screen with a code on it, as a camera held over it would have it. */
async function photographed(page: Page, code: string | RegExp): Promise<Buffer> {
  const shown = page.getByRole('img', { name: code });
  await shown.waitFor();
  await shown.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  return page.screenshot();
}

const picture = (buffer: Buffer, name = 'IMG_0001.png') => ({
  name,
  mimeType: name.endsWith('jpg') ? 'image/jpeg' : 'image/png',
  buffer,
});

const takePicture = (page: Page, buffer: Buffer, name?: string) =>
  page.getByLabel('Take a picture of its code').first().setInputFiles(picture(buffer, name));

/** Writes a length into the three fields by their first, as a text pasted whole. */
async function write(page: Page, group: string, text: string): Promise<void> {
  const feet = page.getByRole('group', { name: group, exact: true }).getByLabel('Feet', { exact: true });
  await feet.fill(text);
  await feet.press('Tab');
}

const draws = sheetDraws(sheet, bench, practice);

/** Answers every draw, right. */
async function answerAll(page: Page): Promise<void> {
  for (const [i, { draw }] of draws.entries()) {
    await page.getByRole('heading', { name: `Draw ${i + 1} of 6` }).waitFor();
    const { answers } = keyOf(draw, practice.world, language);
    const prompts = await page.locator('form.asks legend').allTextContents();
    for (const [k, { id }] of draw.family.asks.entries()) {
      await write(page, prompts[k] ?? '', formatLength(fromInches(answers[id] as number), 64));
    }
    await page.getByRole('button', { name: i < 5 ? 'Next draw' : 'Look it over' }).click();
  }
}

async function makeKey(page: Page, device: string): Promise<void> {
  await page.getByLabel('Name of this device').first().fill(device);
  await page.getByLabel('Passphrase').first().fill(phrase);
  await page.getByLabel('The same once more').fill(phrase);
  await page.getByRole('button', { name: 'Make my key' }).click();
  await page.getByText(`device ${device}`).waitFor();
}

/** Chooses one of a group of boxes. */
const choose = (page: Page, group: string, option: string) =>
  page
    .getByRole('group', { name: group, exact: true })
    .getByRole('radio', { name: option, exact: true })
    .check();

const noSidewaysScroll = async (page: Page) =>
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);

/** What a camera makes of a picture. Worked on a canvas of a page of its own. */
async function through(image: Buffer, lens: string, type = 'image/png'): Promise<Buffer> {
  const page = await browser.newPage();
  try {
    const url = await page.evaluate(
      async ([data, how, kind]) => {
        const blob = await (await fetch(`data:image/png;base64,${data}`)).blob();
        const bitmap = await createImageBitmap(blob);
        const { width, height } = bitmap;
        const canvas = Object.assign(document.createElement('canvas'), { width, height });
        const context = canvas.getContext('2d');
        if (context === null) throw new Error('no canvas');
        context.fillStyle = '#7a7a72';
        context.fillRect(0, 0, width, height);
        if (how === 'blurred') context.filter = 'blur(9px)';
        if (how === 'tilted') {
          context.translate(width / 2, height / 2);
          context.rotate(0.14);
          context.transform(0.8, 0.03, -0.05, 0.78, 0, 0);
          context.translate(-width / 2, -height / 2);
          context.filter = 'blur(0.8px) brightness(0.7) contrast(0.8)';
        }
        if (how === 'cut off') context.drawImage(bitmap, 0, height * 0.45);
        else context.drawImage(bitmap, 0, 0);
        return canvas.toDataURL(kind, 0.75);
      },
      [image.toString('base64'), lens, type] as const,
    );
    return Buffer.from(url.split(',')[1] ?? '', 'base64');
  } finally {
    await page.close();
  }
}

/** A code of any text, as a picture. */
async function codeOf(text: string): Promise<Buffer> {
  const page = await browser.newPage({ viewport: { width: 500, height: 500 } });
  try {
    await page.setContent(`<body style="margin:40px;width:400px">${codeSvg(text)}</body>`);
    await page.locator('svg').evaluate((svg) => {
      svg.setAttribute('width', '400');
      svg.setAttribute('height', '400');
    });
    return await page.screenshot();
  } finally {
    await page.close();
  }
}

/** A set sheet on the trainer's screen, as a picture, and its link. */
async function setSheet(page: Page): Promise<{ readonly shot: Buffer; readonly link: string }> {
  await go(page, 'set');
  await page.getByLabel('Sheet', { exact: true }).selectOption(sheet?.id ?? '');
  await page.getByLabel('Who it is for').fill(apprentice);
  await page.getByLabel('Bench number').fill(String(bench));
  await page.getByRole('button', { name: 'Show the link and code' }).click();
  const shot = await photographed(page, `Code of sheet 5, bench ${bench}, for ${apprentice}`);
  return { shot, link: await page.getByLabel('Link', { exact: true }).inputValue() };
}

describe.each(['light', 'dark'] as const)('two phones in the %s look, pictures between them', (look) => {
  let desk: Phone;
  let coach: Phone;
  let learner: Phone;
  let answersShot: Buffer;

  beforeAll(async () => {
    [desk, coach, learner] = await Promise.all([devices.profile(), phone(look), phone(look)]);
  });
  afterAll(async () => {
    await Promise.all([desk, coach, learner].map((one) => one?.context.close()));
  });

  test('the supervisor’s desk appoints the trainer’s key from a picture of its code', async () => {
    await go(coach.page, 'register');
    await makeKey(coach.page, 'kt-phone');
    await coach.page.getByText('Show its public half as text, link and code').click();
    const shot = await photographed(coach.page, /^Code of the public key/);
    const digits = await coach.page.getByText(/^[0-9a-f]{64}$/).textContent();
    await noSidewaysScroll(coach.page);

    const { page } = desk;
    await devices.go(page, 'register');
    await makeKey(page, 'office-desk');
    await page.getByLabel('Your own id').fill(boss);
    await page.getByLabel('Days are counted in').fill('UTC');
    await page.locator('#begin-pass').fill(phrase);
    await page.getByRole('button', { name: 'Begin the register' }).click();
    await page.getByText('Every signature holds').waitFor();
    // A file of another key first: the picture that comes after it empties the box with that file's name.
    // That of RFC 8032, section 7.1, test 1.
    const publicKey = 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a';
    const other = { v: 1, kind: 'public-key', publicKey };
    const box = page.getByLabel('Public file of the witness’s key');
    await box.setInputFiles(await devices.file('other-key.json', JSON.stringify(other)));
    await page.getByText('Key d75a9801.', { exact: true }).waitFor();
    expect(await box.inputValue()).toContain('other-key.json');
    await takePicture(page, shot);
    await page.getByText(`Key ${digits?.slice(0, 8)}.`, { exact: true }).waitFor();
    expect(await box.inputValue()).toBe('');
    const says = page.locator('blockquote[aria-labelledby="appoint-says"]');
    expect(await says.count()).toBe(0);
    await page.getByLabel('The witness’s id').fill(trainer);
    await page.getByLabel('From the day on').fill('2026-03-09');
    const sentence = `Key ${digits?.slice(0, 8)} to ${trainer}, for all tasks, from 9 March 2026, for good.`;
    expect(await says.textContent()).toBe(sentence);
    await page.getByLabel('From the day on').fill('');

    // A passphrase that does not open the key: said under its box, which has the focus again, and nothing else is lost.
    await page.getByText('Begun. Entry').waitFor();
    const pass = page.locator('#appoint-pass');
    await pass.fill(`${phrase}s`);
    await page.getByRole('button', { name: 'Sign the appointment' }).click();
    await page.locator('#appoint-pass-refused', { hasText: 'does not open this key' }).waitFor();
    await expect.poll(() => pass.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await pass.inputValue()).toBe('');
    expect(await page.getByLabel('The witness’s id').inputValue()).toBe(trainer);
    await page.locator('#appoint-pass').fill(phrase);
    await page.getByRole('button', { name: 'Sign the appointment' }).click();
    await page.getByText('Signed. Entry').waitFor();
    await expect.poll(() => page.getByText('Begun. Entry').count()).toBe(0);
    // The sheet of this device bears no day of the works.
    expect(await page.locator('.title-block').textContent()).not.toContain('2026');
    await expect.poll(() => page.getByLabel('The witness’s id').inputValue()).toBe('');
    expect(await page.getByText(`Key ${digits?.slice(0, 8)}.`, { exact: true }).count()).toBe(0);
    expect(await page.getByLabel('Take a picture of its code').first().inputValue()).toBe('');
    await coach.page
      .getByLabel('Bring a register in')
      .setInputFiles(await devices.saved(page, 'Carry it off'));
    await coach.page.getByText('It is appointed: all tasks').waitFor();

    // The key that may take over comes the same way.
    await page.locator('#drill-lost-owner-key summary').click();
    const naming = page.locator('section.act', { hasText: 'Name the key that may take over' });
    await naming.getByLabel('Take a picture of its code').setInputFiles(picture(shot));
    await naming.getByText(`Key ${digits?.slice(0, 8)}.`, { exact: true }).waitFor();
  });

  test('the apprentice’s phone reads the set sheet off the trainer’s screen, and answers with the network cut', async () => {
    const { shot } = await setSheet(coach.page);
    await noSidewaysScroll(coach.page);
    const { page, context } = learner;
    await go(page, 'answer');
    await noSidewaysScroll(page);
    await context.setOffline(true);
    await takePicture(page, shot);
    await page.getByText(`Sheet 5 for ${apprentice}, bench ${bench}`).waitFor();
    await page.getByLabel('Name of this device').fill('dm-phone');
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await answerAll(page);
    await page.getByRole('button', { name: 'Show the link and code' }).click();
    answersShot = await photographed(
      page,
      `Code of the answers to sheet 5, bench ${bench}, by ${apprentice}`,
    );
    await noSidewaysScroll(page);
    await context.setOffline(false);
    // The code stands black on white in the dark look too.
    const colours = await page.locator('.code').evaluate((element) => {
      const fill = (part: string) => getComputedStyle(element.querySelector(part) ?? element).fill;
      return [getComputedStyle(element).backgroundColor, fill('rect'), fill('path')];
    });
    expect(colours).toEqual(['rgb(255, 255, 255)', 'rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
  });

  test('the trainer’s phone reads the answers off the apprentice’s screen and grades them again', async () => {
    const { page } = coach;
    await go(page, 'witness');
    await takePicture(page, await through(answersShot, 'tilted', 'image/jpeg'), 'IMG_0002.jpg');
    await page.getByText('It is passed.').waitFor();
    await page.getByText('Answered on dm-phone.').waitFor();
    expect(await page.getByLabel('Who', { exact: true }).inputValue()).toBe(apprentice);
    await noSidewaysScroll(page);
  });

  test('the entry for files takes a picture as well', async () => {
    const { page } = coach;
    await page.getByRole('button', { name: 'Take these answers off' }).click();
    await page.getByLabel('Answers file, if a sheet was set').setInputFiles(picture(answersShot));
    await page.getByText('It is passed.').waitFor();
  });

  test.runIf(look === 'light')(
    'what the trainer saw and signs stands on the supervisor’s board, with the sheet behind it',
    async () => {
      const { page } = coach;
      for (const point of library.tasks.get('T05')?.critical ?? [])
        await choose(page, language.speak({ say: `T05.critical-${point}` }), 'Seen');
      const pairs = page.locator('select[id^="witness-"]:not(#witness-task)');
      for (const pair of await pairs.all()) await pair.selectOption({ index: 1 });
      await choose(page, 'Manner', 'Performed');
      await choose(page, 'Alone or with help', 'Alone');
      await choose(page, 'Done and answered in my sight', 'Yes');
      await choose(page, 'Outcome', 'Shown');
      await page.getByLabel('Passphrase').fill(phrase);
      await page.getByRole('button', { name: /^Sign as/ }).click();
      await page.getByText('Measure and mark: Shown.').waitFor();
      await noSidewaysScroll(page);
      const register = await devices.saved(page, 'Carry it off');

      // The same answers once more: both who signs and who sets is told that this bench was used.
      await go(page, 'witness');
      await takePicture(page, answersShot);
      await page
        .getByText(/^Already used for entry [0-9a-f]{8}, T05, 4 in.*: a new bench asks something new\.$/)
        .waitFor();
      await go(page, 'set');
      await page.getByLabel('Sheet', { exact: true }).selectOption(sheet?.id ?? '');
      await page.getByLabel('Who it is for').fill(apprentice);
      await page.getByLabel('Bench number').fill(String(bench));
      const had = page.getByText(
        new RegExp(`^${apprentice} has had bench ${bench} of this sheet: entry [0-9a-f]{8}, T05\\.`),
      );
      await had.waitFor();
      await page.getByLabel('Bench number').fill(String(bench + 1));
      await page.getByText('No entry that counts in the register here used bench').waitFor();
      expect(await had.count()).toBe(0);

      const board = desk.page;
      await board.getByLabel('Bring a register in').setInputFiles(register);
      await board.getByText('1 new entry; 3 in all.').waitFor();
      const people = [
        { id: apprentice, name: 'Dana Mott' },
        { id: trainer, name: 'Kai Torvald' },
      ];
      const names = await devices.file('people.json', JSON.stringify({ people }));
      await board.getByLabel('File of names').setInputFiles(names);
      await board.getByText('2 names are here.').waitFor();
      await devices.go(board, 'witness');
      await board.getByLabel('Who', { exact: true }).fill('dana mott');
      await board.getByText(`${apprentice} is Dana Mott.`, { exact: true }).waitFor();
      expect(await board.getByText('is new here').count()).toBe(0);
      await devices.go(board, 'crew/own');
      const cell = board.getByRole('link', {
        name: /^Dana Mott, Measure and mark: Shown, witness Kai Torvald/,
      });
      await cell.waitFor();
      expect(await cell.locator('svg text').textContent()).toBe('KT');
      expect(await board.getByRole('link', { name: /: Shown,/ }).count()).toBe(1);

      await board.getByRole('columnheader').getByRole('link', { name: 'Dana Mott' }).click();
      await board.locator('.stand[id="T05"] .entry-links a').click();
      const row = board.locator('.entry-row');
      await expect.poll(() => board.evaluate(() => document.activeElement?.className)).toBe('entry-row');
      expect(await row.count()).toBe(1);
      await row.locator('summary').click();
      await row.getByText(`Answers of sheet ${sheet.id}, bench ${bench}, given on dm-phone.`).waitFor();
      await row.getByText('The signature holds.').waitFor();
      expect(await row.locator('.entry-by').textContent()).toContain('Kai Torvald');
    },
  );
});

describe('a picture that does not do', () => {
  let learner: Phone;
  let shot: Buffer;
  let link: string;
  beforeAll(async () => {
    learner = await phone('light');
    ({ shot, link } = await setSheet(learner.page));
    await go(learner.page, 'answer');
  });
  afterAll(() => learner?.context.close());

  test.each(['blurred', 'cut off'])('%s: it says how to take it again', async (lens) => {
    await takePicture(learner.page, await through(shot, lens));
    const said = learner.page.getByRole('alert').filter({ hasText: 'no code could be read in this picture' });
    await said.waitFor();
    expect(await said.textContent()).toContain('keep all four corners and the white edge in it');
  });

  test('a code of something else', async () => {
    await takePicture(learner.page, await codeOf('https://example.org/menu'));
    await learner.page.getByText('this holds something else than a set sheet').waitFor();
  });

  test('a code of ours that belongs on another page', async () => {
    await takePicture(
      learner.page,
      await codeOf(`${site.url}en/witness/${await packed('answers', { v: 1 })}`),
    );
    await learner.page.getByText('it holds answers to a sheet; the witness’s page opens them').waitFor();
  });

  test('a code of a set sheet with something wrong in it', async () => {
    const set = { v: 1, kind: 'set', sheet: 'measure-and-mark', bench: 0, person: apprentice, task: 'T05' };
    await takePicture(learner.page, await codeOf(`${site.url}en/answer/${await packed('set', set)}`));
    await learner.page.getByText('this is no bench number').waitFor();
  });

  test('no picture at all', async () => {
    await takePicture(learner.page, Buffer.from('half a picture'));
    await learner.page.getByText('this is no picture that can be opened here').waitFor();
  });

  test('after all of them the good one is taken', async () => {
    await takePicture(learner.page, shot);
    await learner.page.getByText(`Sheet 5 for ${apprentice}, bench ${bench}`).waitFor();
    expect(link).toContain('/en/answer/#set=');
  });
});

describe('links', () => {
  let learner: Phone;
  let link: string;
  beforeAll(async () => {
    learner = await phone('light');
    ({ link } = await setSheet(learner.page));
  });
  afterAll(() => learner?.context.close());
  const opened = async (address: string): Promise<Page> => {
    // Another page first: an address that differs behind # alone loads nothing anew.
    await go(learner.page, 'set');
    await learner.page.goto(address, { waitUntil: 'networkidle' });
    return learner.page;
  };

  test('one that is not whole, one of a later version and one of another page say so', async () => {
    await (await opened(link.slice(0, -4))).getByText('this is not whole').waitFor();
    await (await opened(link.replace('#set=2.', '#set=9.'))).getByText('a later version').waitFor();
    const page = await opened(link.replace('#set=', '#run='));
    await page.getByText('it holds a run; the page “Your run” opens it').waitFor();
  });

  test('a link that was pasted opens the sheet', async () => {
    const page = await opened(`${site.url}en/answer/`);
    await page.getByText('Or paste its link').click();
    await page.getByLabel('Link that you were sent').fill('https://example.org/');
    await page.getByRole('button', { name: 'Open the link' }).click();
    await page.getByText('this is no link of these pages').waitFor();
    await page.getByLabel('Link that you were sent').fill(`  ${link.slice(0, 80)} ${link.slice(80)} `);
    await page.getByRole('button', { name: 'Open the link' }).click();
    await page.getByText(`Sheet 5 for ${apprentice}, bench ${bench}`).waitFor();
  });

  test('a link opens the sheet, is gone from the address, and another does not push a begun sheet away', async () => {
    const page = await opened(link);
    await page.getByText(`Sheet 5 for ${apprentice}, bench ${bench}`).waitFor();
    expect(new URL(page.url()).hash).toBe('');
    await page.getByLabel('Name of this device').fill('dm-phone');
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await page.getByRole('heading', { name: 'Draw 1 of 6' }).waitFor();
    // A link within the page: nothing is loaded, so nothing is to be waited for but what it does.
    const follow = (to: string) => page.evaluate((address) => window.location.assign(address), to);
    await follow(link);
    await page.getByRole('heading', { name: 'Draw 1 of 6' }).waitFor();

    const other = { v: 1, kind: 'set', sheet: sheet.id, bench: bench + 1, person: apprentice, task: 'T05' };
    const said = `Another sheet has arrived: sheet 5, bench ${bench + 1}, for ${apprentice}.`;
    await follow(`${site.url}en/answer/${await packed('set', other)}`);
    await page.getByText(said).waitFor();
    expect(await page.getByText('Another sheet has arrived').count()).toBe(1);
    await page.getByRole('heading', { name: 'Draw 1 of 6' }).waitFor();
    expect(new URL(page.url()).hash).toBe('');
    // It waits through a reload, and a link that comes while the page is still being read is not lost either.
    const third = { ...other, bench: bench + 2 };
    await page.goto('about:blank');
    await page.goto(`${site.url}en/answer/${await packed('set', third)}`);
    await page.getByText(said).waitFor();
    await page.getByText(`sheet 5, bench ${bench + 2}, for ${apprentice}.`).waitFor();

    await page.getByText('End this sheet without saving it').click();
    await page.getByRole('button', { name: 'End it' }).click();
    await page.getByText(`Sheet 5 for ${apprentice}, bench ${bench + 1}`).waitFor();
    await page.reload();
    await page.getByText(`Sheet 5 for ${apprentice}, bench ${bench + 1}`).waitFor();
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await page.getByRole('heading', { name: 'Draw 1 of 6' }).waitFor();
    await page.getByText(`sheet 5, bench ${bench + 2}, for ${apprentice}.`).waitFor();
    expect(await page.getByText('Another sheet has arrived').count()).toBe(1);
  });
});

test('no page complained, and nothing behind # went to any server', () => {
  expect([...complaints, ...devices.complaints]).toEqual([]);
});
