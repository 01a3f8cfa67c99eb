/** Devices of people for tests in a browser: profiles that exchange files, and registers looked at with the command. */
import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import type { Served } from './serve.ts';

const run = promisify(execFile);

export interface Profile {
  readonly context: BrowserContext;
  readonly page: Page;
}

export class Devices {
  /** What a page of any profile complained of: a refused policy, an error, a request to another host. */
  readonly complaints: string[] = [];
  private readonly browser: Browser;
  private readonly site: Served;
  private readonly folder: string;
  private count = 0;

  constructor(browser: Browser, site: Served, folder: string) {
    this.browser = browser;
    this.site = site;
    this.folder = folder;
  }

  /** A profile of its own. @param at  moment that its clock stands at; the machine's own clock when left out */
  async profile(at?: number): Promise<Profile> {
    const context = await this.browser.newContext({ acceptDownloads: true, timezoneId: 'UTC' });
    const page = await context.newPage();
    if (at !== undefined) await page.clock.install({ time: at });
    page.on('console', (message) => {
      if (message.type() === 'error') this.complaints.push(`${page.url()}: ${message.text()}`);
    });
    page.on('pageerror', (error) => this.complaints.push(`${page.url()}: ${error.message}`));
    page.on('request', (request) => {
      const own = request.url().startsWith(this.site.url) || request.url().startsWith('blob:');
      if (!own) this.complaints.push(request.url());
    });
    return { context, page };
  }

  /** Opens a page and waits until its islands answer. */
  async go(page: Page, path: string): Promise<void> {
    await page.goto(`${this.site.url}en/${path}/`, { waitUntil: 'load' });
    await page.locator('astro-island[ssr]').waitFor({ state: 'detached' });
  }

  /** Presses what saves a file, and keeps it. */
  async saved(page: Page, name: string): Promise<string> {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name, exact: true }).click(),
    ]);
    const path = this.fresh(download.suggestedFilename());
    await download.saveAs(path);
    return path;
  }

  /** A text as a file to hand over. */
  async file(name: string, text: string): Promise<string> {
    const path = this.fresh(name);
    await writeFile(path, text);
    return path;
  }

  private fresh(name: string): string {
    this.count += 1;
    return join(this.folder, `${this.count}-${name}`);
  }

  /** A register's file unpacked into a folder, as the command takes it. */
  async unpacked(path: string): Promise<string> {
    const { files } = JSON.parse(await readFile(path, 'utf8')) as { files: Record<string, string> };
    const root = await mkdtemp(join(this.folder, 'register-'));
    for (const [name, text] of Object.entries(files)) {
      await mkdir(dirname(join(root, name)), { recursive: true });
      await writeFile(join(root, name), text);
    }
    return root;
  }
}

/** Runs a verb of the register group; a verb that exits with 1 or 2 says so in what it prints. */
export async function command<Result>(...args: readonly string[]): Promise<Result> {
  const done = run(process.execPath, ['src/cli/bin.ts', 'register', ...args]);
  const { stdout } = await done.catch((error: { stdout?: string }) => {
    if (typeof error.stdout === 'string' && error.stdout !== '') return { stdout: error.stdout };
    throw error;
  });
  return JSON.parse(stdout).result as Result;
}
