/**
 * Makes large honest registers fast: the headers are written as an honest device would write them, without judging
 * the register anew for each. A `seen` entry goes before whatever has more than 32 new heads to cite.
 */
import { createPrivateKey, type KeyObject, sign } from 'node:crypto';
import { hashOf, toHex } from '../../src/register/bytes.ts';
import type { JsonObject } from '../../src/register/canonical.ts';
import { canonical } from '../../src/register/canonical.ts';
import {
  type Citation,
  type Header,
  headerText,
  MOST_SEEN,
  SIGNED_PREFIX,
} from '../../src/register/header.ts';
import { markerText, type RegisterFiles } from '../../src/register/held.ts';
import { publicKeyOf } from '../../src/register/keys.ts';
import { bodyPath, chainPath, MARKER } from '../../src/register/paths.ts';
import type { MapTask, TaskMap } from '../../src/register/taskMap.ts';

export interface Size {
  readonly entries: number;
  readonly people: number;
  readonly witnesses: number;
  readonly tasks: number;
  /** Entries that a device signs before it looks at the others' again. */
  readonly apart: number;
}

/** Tasks T1 … Tn: every fifth wants a second witness, every third has two variants. */
export const bigMap = (tasks: number): TaskMap => ({
  tasks: Array.from({ length: tasks }, (_, i): MapTask => {
    const variants: MapTask['variants'] = i % 3 === 0 ? { width: ['4', '2', '6'] } : {};
    const plain = { months: 12, tickets: [], parts: [], trainHours: 1, variants };
    const revisions = [{ n: 1, on: '2025-01-01', showAgain: false }];
    return { id: `T${i + 1}`, second: i % 5 === 0, revisions, ...plain };
  }),
});

interface Chain {
  readonly signer: string;
  readonly device: string;
  readonly key: KeyObject;
  readonly lines: string[];
  readonly cited: Map<Chain, number>;
  head: string | null;
}

const START = Date.parse('2026-01-05T12:00:00Z');
export const LAST_DAY = '2026-11-30';

export function bigRegister({ entries, people, witnesses, tasks, apart }: Size): RegisterFiles {
  const files: Record<string, string> = {};
  let count = 0;
  let now = START;
  let begin: string | null = null;
  // A small generator of numbers: the same register every time.
  let state = 12345;
  const chance = (below: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };

  const chainOf = (n: number, device: string): Chain => {
    const seed = new Uint8Array(32).fill(n & 255).fill(n >> 8, 0, 1);
    const key = createPrivateKey({
      key: Buffer.concat([Buffer.from('302e020100300506032b657004220420', 'hex'), seed]),
      format: 'der',
      type: 'pkcs8',
    });
    const signer = toHex(publicKeyOf(seed));
    return { signer, device, key, lines: [], cited: new Map(), head: null };
  };
  const owner = chainOf(300, 'office');
  const crew = Array.from({ length: witnesses }, (_, i) => chainOf(i + 1, `phone-${i + 1}`));
  const chains = [owner, ...crew];

  const newHeads = (own: Chain): readonly Citation[] => {
    const heads: Citation[] = [];
    for (const c of chains) {
      if (c === own || c.head === null || (own.cited.get(c) ?? 0) === c.lines.length) continue;
      own.cited.set(c, c.lines.length);
      heads.push({ id: c.head, signer: c.signer, device: c.device, seq: c.lines.length - 1 });
    }
    return heads.sort((a, b) => (a.id < b.id ? -1 : 1));
  };
  const put = (
    chain: Chain,
    fields: Pick<Header, 'kind'> & Partial<Header>,
    body: JsonObject | null,
    looks: boolean,
  ): string => {
    const seen = looks ? newHeads(chain) : [];
    if (seen.length > MOST_SEEN) throw new RangeError('more heads than an entry may cite');
    now += Math.floor(28_000_000_000 / entries);
    const salt = hashOf(`${count}`).slice(0, 32);
    count += 1;
    const text = body === null ? null : canonical({ ...body, salt });
    const hash = text === null ? null : hashOf(text);
    if (text !== null && hash !== null) files[bodyPath(hash)] = text;
    const header: Header = {
      ...{ v: 1, register: begin, signer: chain.signer, device: chain.device },
      ...{ seq: chain.lines.length, prev: chain.head, seen, time: new Date(now).toISOString() },
      ...{ about: null, target: [], key: null, body: hash },
      ...fields,
    };
    const written = headerText(header);
    const signature = sign(null, Buffer.from(SIGNED_PREFIX + written), chain.key).toString('hex');
    chain.lines.push(`{"header":${written},"signature":"${signature}"}`);
    chain.head = hashOf(written);
    return chain.head;
  };

  begin = put(owner, { kind: 'begin', about: 'OW' }, { zone: 'UTC' }, false);
  files[MARKER] = markerText(begin);
  for (const [i, c] of crew.entries()) {
    const about = `W-${i + 1}`;
    put(owner, { kind: 'appoint', key: c.signer, about }, { tasks: 'all', on: '2026-01-01' }, false);
  }
  const last: { id: string; about: string; task: string; by: Chain }[] = [];
  while (count < entries) {
    const by = crew[chance(crew.length)] as Chain;
    const looks = by.head === null || chance(apart) === 0;
    const turn = chance(100);
    const seconded = last[chance(last.length)];
    if (turn < 6 && seconded !== undefined && seconded.by !== by) {
      // Who seconds a check has seen it.
      put(by, { kind: 'second', about: seconded.about, target: [seconded.id] }, { saw: true }, true);
      continue;
    }
    if (turn === 6) {
      const until = '2027-06-30';
      put(
        by,
        { kind: 'ticket', about: `p-${chance(people)}` },
        { ticket: `W${1 + chance(8)}`, issuer: 'a', number: '1', until },
        looks,
      );
      continue;
    }
    const task = chance(tasks);
    const about = `p-${chance(people)}`;
    const on = new Date(now).toISOString().slice(0, 10);
    const body = {
      ...{
        task: `T${task + 1}`,
        revision: 1,
        variant: task % 3 === 0 ? { width: ['4', '2', '6'][chance(3)] as string } : {},
      },
      ...{
        outcome: chance(10) === 0 ? 'not-yet' : 'shown',
        manner: 'performed',
        help: chance(12) === 0 ? 'with-help' : 'alone',
      },
      ...{ inSight: true, stopped: false, on, evidence: null },
      points: [
        { point: 'guards', how: 'seen' },
        { point: 'support', how: 'asked' },
      ],
      measured: [{ what: 'sag', wanted: 'at most 1/4 in', got: '3/16 in', tool: 'string line' }],
    };
    const id = put(by, { kind: 'check', about }, body, looks);
    if (task % 5 === 0) last[chance(50)] = { id, about, task: body.task, by };
    if (turn === 7) put(by, { kind: 'withdraw', about, target: [id] }, { why: 'wrong person' }, false);
  }
  for (const c of chains) {
    if (c.lines.length > 0) files[chainPath(c.signer, c.device)] = `${c.lines.join('\n')}\n`;
  }
  return files;
}
