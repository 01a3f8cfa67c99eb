/**
 * `npm run bench -- register-browser`: a register of 5,000 entries opened on a device that is four times slower than
 * this one, from where the device keeps it: the first time, and after the page was loaded again. Wanted: under a second
 * after the first time. The modules are served as they lie, their types taken off, so that no built site is needed.
 */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { openBrowser } from '../browser/browser.ts';
import { modulePage, moduleText } from '../browser/modules.ts';
import { bigMap, bigRegister, LAST_DAY } from '../register/big.ts';

const ENTRIES = 5000;
const SLOWER = 4;
const TURNS = 5;

const server = createServer((request, response) => {
  const path = new URL(request.url ?? '/', 'http://host').pathname;
  const text = path === '/' ? modulePage('bench') : moduleText(path);
  if (text === undefined) response.writeHead(404).end();
  else response.setHeader('content-type', path === '/' ? 'text/html' : 'text/javascript').end(text);
});
await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
const { port } = server.address() as AddressInfo;

/** Runs in the page, with the modules of the site: what is timed is the opening, not the loading of the modules. */
async function open(given: {
  readonly now: number;
  readonly on: string;
  readonly map: ReturnType<typeof bigMap>;
  readonly files?: Readonly<Record<string, string>>;
}) {
  Date.now = () => given.now;
  const at = async (path: string, name: string): Promise<CallableFunction> =>
    ((await import(path)) as Record<string, CallableFunction>)[name] as CallableFunction;
  const ownRegister = await at('/src/site/device/register.ts', 'ownRegister');
  const openStore = await at('/src/site/device/store.ts', 'openStore');
  const boardOf = await at('/src/register/board.ts', 'boardOf');
  if (given.files !== undefined) await (await openStore()).put('register', given.files, 'files');
  const began = performance.now();
  const opened = await ownRegister();
  const between = performance.now();
  const board = boardOf(opened.judged, { on: given.on, map: given.map });
  const ended = performance.now();
  // What was found good is kept in the background.
  await new Promise((done) => setTimeout(done, 500));
  return { open: between - began, board: ended - between, people: board.people.length as number };
}

const browser = await openBrowser();
try {
  const tab = await browser.newPage();
  const slow = await tab.context().newCDPSession(tab);
  await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const load = () => tab.goto(`http://127.0.0.1:${port}/`);
  const now = Date.parse('2026-12-01T00:00:00Z');
  const asked = { now, on: LAST_DAY, map: bigMap(40) };
  await load();
  const files = bigRegister({ entries: ENTRIES, people: 60, witnesses: 8, tasks: 40, apart: 20 });
  const first = await tab.evaluate(open, { ...asked, files });
  const again: { open: number; board: number }[] = [];
  for (let turn = 0; turn < TURNS; turn++) {
    await load();
    again.push(await tab.evaluate(open, asked));
  }
  const middle = again.sort((a, b) => a.open - b.open)[Math.floor(TURNS / 2)] ?? first;
  const ms = (time: number): string => `${time.toFixed(0)} ms`;
  console.log(`${ENTRIES} entries, ${first.people} people, a device ${SLOWER} × slower`);
  console.log(`  opened the first time: ${ms(first.open)}, its board ${ms(first.board)}`);
  console.log(
    `  opened after a new loading: ${ms(middle.open)}, ${(middle.open / first.open).toFixed(2)} × the first time, its board ${ms(middle.board)}`,
  );
} finally {
  await browser.close();
  server.close();
}
