/**
 * `npm run bench -- register`, `npm run bench -- register 1000000`: a large honest register, each time as a ratio
 * against a baseline of the same run. Wanted: opened at 0.7 or more of the bare verify rate, judging aside; opened
 * again in a small part of that; board within a second and 500 MB; growth with an exponent of 1.1 at most from a tenth
 * of the size. Beside the time by the clock stands the processor's, all threads together: on a busy machine only that
 * compares. A million entries want `node --expose-gc --max-old-space-size=16000 tests/bench/bench.ts register 1000000`.
 */
import { verify as bareVerify, createPublicKey, hash as engineHash, type KeyObject } from 'node:crypto';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { boardOf } from '../../src/register/board.ts';
import { fromHex, utf8 } from '../../src/register/bytes.ts';
import { seenOf } from '../../src/register/checks.ts';
import { signedBytes } from '../../src/register/header.ts';
import { type Held, holdFiles, verifiedKey } from '../../src/register/held.ts';
import { judge } from '../../src/register/judge.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { bigMap, bigRegister, LAST_DAY } from '../register/big.ts';
import { timed } from './ratio.ts';

const hash = (text: string): string => engineHash('sha256', text, 'hex');

const most = Number(process.argv[3] ?? 100_000);
const verify = verifierOf(globalThis.crypto.subtle);
const map = bigMap(40);
const asked = { now: Date.parse('2026-12-01T00:00:00Z'), dayIn };

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
const inUse = (): number => {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
};

/** The engine's own verify, one signature after the other on one thread, keys opened beforehand. */
function bare(held: Held): () => void {
  const keys = new Map<string, KeyObject>();
  const work = [...held.entries.values()].map(({ header, signature }) => {
    const der = Buffer.concat([Buffer.from('302a300506032b6570032100', 'hex'), fromHex(header.signer)]);
    const key = keys.get(header.signer) ?? createPublicKey({ key: der, format: 'der', type: 'spki' });
    keys.set(header.signer, key);
    return { key, bytes: signedBytes(header), signature: fromHex(signature) };
  });
  return () => {
    for (const { key, bytes, signature } of work) {
      if (!bareVerify(null, bytes, key, signature)) throw new Error('a signature is not good');
    }
  };
}

/** Milliseconds by the clock, and of the processor. */
interface Spent {
  readonly wall: number;
  readonly cpu: number;
}
const NO_TIME: Spent = { wall: 0, cpu: 0 };
const sum = (a: Spent, b: Spent): Spent => ({ wall: a.wall + b.wall, cpu: a.cpu + b.cpu });

async function spent(work: () => unknown): Promise<Spent> {
  const before = process.cpuUsage();
  const wall = await timed(work);
  const { user, system } = process.cpuUsage(before);
  return { wall, cpu: (user + system) / 1000 };
}

interface Times {
  readonly hold: Spent;
  readonly judge: Spent;
  readonly board: Spent;
  /** Bare verifying against reading and verifying: 1 is as fast. */
  readonly rate: Spent;
  /** MB in use: open, and with a board. */
  readonly mb: number;
}

async function measure(entries: number): Promise<Times> {
  const files = bigRegister({ entries, people: 2000, witnesses: 24, tasks: 40, apart: 20 });
  const size = Object.values(files).reduce((sum, text) => sum + utf8(text).length, 0) / 1e6;
  const empty = inUse();
  let held: Held = await holdFiles(files, async () => true, undefined, { hash }); // warms up
  const raw = bare(held);
  // Turn and turn about, so that a busy machine slows both.
  let [hold, plain, again, judging] = [NO_TIME, NO_TIME, NO_TIME, NO_TIME];
  const turns = entries > 20_000 ? 1 : 3;
  for (let turn = 0; turn < turns; turn++) {
    const known = new Set([...held.entries.values()].map(verifiedKey));
    hold = sum(hold, await spent(async () => (held = await holdFiles(files, verify, undefined, { hash }))));
    plain = sum(plain, await spent(raw));
    again = sum(again, await spent(() => holdFiles(files, verify, known, { hash })));
    judging = sum(judging, await spent(() => seenOf(judge(held, asked))));
  }
  const judged = judge(held, asked);
  if (judged.problems.length > 0) throw new Error('an honest register has problems');
  // As opening a register does.
  seenOf(judged);
  const loaded = inUse();
  const first = await spent(() => boardOf(judged, { on: LAST_DAY, map }));
  let next = NO_TIME;
  for (let turn = 0; turn < turns; turn++) {
    next = sum(next, await spent(() => boardOf(judged, { on: LAST_DAY, map })));
  }
  const board = boardOf(judged, { on: LAST_DAY, map });
  const ms = ({ wall, cpu }: Spent, of = turns): string =>
    `${(wall / of).toFixed(0)} ms (${(cpu / of).toFixed(0)} of the processor)`;
  const ratio = (a: Spent, b: Spent): string =>
    `${(a.wall / b.wall).toFixed(2)} (${(a.cpu / b.cpu).toFixed(2)})`;
  const n = entries.toLocaleString('en');
  console.log(`${n} entries, ${size.toFixed(0)} MB of text, ${board.people.length} people`);
  console.log(`  read and verified: ${ms(hold)}, at ${ratio(plain, hold)} of the bare rate: ${ms(plain)}`);
  console.log(`  read again, known: ${ms(again)}, ${ratio(again, hold)} × the first time`);
  console.log(`  judged: ${ms(judging)}, ${ratio(judging, plain)} × bare verifying`);
  console.log(`  first board: ${ms(first, 1)}, the next ${ms(next)}`);
  console.log(
    `  in use: ${(loaded - empty).toFixed(0)} MB open, ${(inUse() - loaded).toFixed(0)} MB the board`,
  );
  const each = (all: Spent): Spent => ({ wall: all.wall / turns, cpu: all.cpu / turns });
  const rate = { wall: plain.wall / hold.wall, cpu: plain.cpu / hold.cpu };
  return { hold: each(hold), judge: each(judging), board: first, rate, mb: inUse() - empty };
}

const small = await measure(most / 10);
const large = await measure(most);
for (const what of ['hold', 'judge', 'board'] as const) {
  const growth = (of: keyof Spent): string => {
    const times = large[what][of] / small[what][of];
    return `${times.toFixed(1)} × the time (exponent ${Math.log10(times).toFixed(2)})`;
  };
  console.log(`${what}: 10 × the entries, ${growth('wall')}; of the processor ${growth('cpu')}`);
}

/** What a large register is held to; with fewer entries than these the figures say nothing. */
const targets: readonly (readonly [string, boolean])[] = [
  ['verified at 0.7 of the bare rate or more', Math.max(large.rate.wall, large.rate.cpu) >= 0.7],
  ['a board of 100,000 entries within 1 s', large.board.wall <= Math.max(1000, most / 100)],
  ['in use within 500 MB a 100,000 entries', large.mb <= Math.max(500, most / 200)],
  ...(['hold', 'judge', 'board'] as const).map(
    (what) =>
      [`${what}: exponent 1.1 at most`, Math.log10(large[what].cpu / small[what].cpu) <= 1.1] as const,
  ),
];
const missed = targets.filter(([, met]) => !met).map(([what]) => what);
if (most >= 100_000 && missed.length > 0) {
  console.log(`NOT MET: ${missed.join('; ')}`);
  process.exitCode = 1;
}
