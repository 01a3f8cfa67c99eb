/**
 * `npm run bench -- register`, `npm run bench -- register 1000000`: a large honest register, each time as a ratio
 * against a baseline of the same run. Wanted: opened at 0.7 or more of the bare verify rate, judging aside; opened
 * again in a small part of that; board within a second and 500 MB; growth with an exponent of 1.1 at most from a tenth
 * of the size. A million entries want `node --expose-gc --max-old-space-size=16000 tests/bench/bench.ts register 1000000`.
 */
import { verify as bareVerify, createPublicKey, type KeyObject } from 'node:crypto';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { boardOf } from '../../src/register/board.ts';
import { fromHex, utf8 } from '../../src/register/bytes.ts';
import { signedBytes } from '../../src/register/header.ts';
import { type Held, holdFiles, verifiedKey } from '../../src/register/held.ts';
import { judge } from '../../src/register/judge.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { bigMap, bigRegister, LAST_DAY } from '../register/big.ts';
import { timed } from './ratio.ts';

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

interface Times {
  readonly hold: number;
  readonly judge: number;
  readonly board: number;
}

async function measure(entries: number): Promise<Times> {
  const files = bigRegister({ entries, people: 2000, witnesses: 24, tasks: 40, apart: 20 });
  const size = Object.values(files).reduce((sum, text) => sum + utf8(text).length, 0) / 1e6;
  const empty = inUse();
  let held: Held = await holdFiles(files, async () => true); // warms up
  const raw = bare(held);
  // Turn and turn about, so that a busy machine slows both.
  let [hold, plain, again, judging] = [0, 0, 0, 0];
  const turns = entries > 20_000 ? 1 : 3;
  for (let turn = 0; turn < turns; turn++) {
    const known = new Set([...held.entries.values()].map(verifiedKey));
    hold += await timed(async () => {
      held = await holdFiles(files, verify);
    });
    plain += await timed(raw);
    again += await timed(() => holdFiles(files, verify, known));
    judging += await timed(() => judge(held, asked));
  }
  const judged = judge(held, asked);
  if (judged.problems.length > 0) throw new Error('an honest register has problems');
  const loaded = inUse();
  const first = await timed(() => boardOf(judged, { on: LAST_DAY, map }));
  let next = 0;
  for (let turn = 0; turn < turns; turn++) next += await timed(() => boardOf(judged, { on: LAST_DAY, map }));
  const board = boardOf(judged, { on: LAST_DAY, map });
  const ms = (sum: number): string => `${(sum / turns).toFixed(0)} ms`;
  const n = entries.toLocaleString('en');
  console.log(`${n} entries, ${size.toFixed(0)} MB of text, ${board.people.length} people`);
  console.log(
    `  read and verified: ${ms(hold)}, at ${(plain / hold).toFixed(2)} of the bare rate (${ms(plain)})`,
  );
  console.log(`  read again, known: ${ms(again)}, ${(again / hold).toFixed(2)} × the first time`);
  console.log(`  judged: ${ms(judging)}, ${(judging / plain).toFixed(2)} × bare verifying`);
  console.log(`  first board: ${first.toFixed(0)} ms, the next ${ms(next)}`);
  console.log(
    `  in use: ${(loaded - empty).toFixed(0)} MB open, ${(inUse() - loaded).toFixed(0)} MB the board`,
  );
  return { hold: hold / turns, judge: judging / turns, board: first };
}

const small = await measure(most / 10);
const large = await measure(most);
for (const what of ['hold', 'judge', 'board'] as const) {
  const growth = large[what] / small[what];
  console.log(
    `${what}: 10 × the entries, ${growth.toFixed(1)} × the time (exponent ${Math.log10(growth).toFixed(2)})`,
  );
}
