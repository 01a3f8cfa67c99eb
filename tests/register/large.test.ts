import { beforeAll, describe, expect, test } from 'vitest';
import { boardOf } from '../../src/register/board.ts';
import { holdFiles } from '../../src/register/held.ts';
import { judge } from '../../src/register/judge.ts';
import type { Judged } from '../../src/register/judged.ts';
import { chainBack, latest } from '../../src/register/order.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { bigMap, bigRegister, LAST_DAY } from './big.ts';

const ENTRIES = 5000;
let judged: Judged;
/** Bytes of arrays of numbers more than before. */
let inArrays = 0;

beforeAll(async () => {
  const files = bigRegister({ entries: ENTRIES, people: 100, witnesses: 12, tasks: 40, apart: 20 });
  // Whether its signatures are good is no matter here, and takes the most time.
  const held = await holdFiles(files, async () => true);
  const before = process.memoryUsage().arrayBuffers;
  judged = judge(held, { now: Date.parse('2026-12-01T00:00:00Z'), dayIn });
  inArrays = process.memoryUsage().arrayBuffers - before;
}, 120_000);

describe('a register of five thousand entries', () => {
  test('is opened without fault, and without a set of the past for every entry', () => {
    expect(judged.entries).toBeGreaterThanOrEqual(ENTRIES);
    expect(judged.problems).toEqual([]);
    // A bit for every entry in the past of every other would be 3 MB.
    expect(inArrays).toBeLessThan(1.5e6);
  });
  test('keeps each honest chain as one stretch, and every entry knows its chain', () => {
    const { order } = judged.view;
    const chains = new Set(order.list.map((p) => p.chain));
    expect(chains.size).toBe(13);
    expect(new Set(order.list.map((p) => p.stretch)).size).toBe(13);
    const heads = [...chains].map((chain) => order.list.filter((p) => p.chain === chain).at(-1));
    for (const head of heads) {
      if (head === undefined) throw new Error('a chain without its head');
      const own = [...chainBack(head)];
      expect(own).toHaveLength(head.header.seq + 1);
      expect(own.every((p) => p === head || order.isPast(head, p))).toBe(true);
      expect(own.some((p) => order.isPast(p, head))).toBe(false);
    }
    expect(latest(order, order.list).length).toBeLessThanOrEqual(13);
  });
  test('has a board of everybody', () => {
    const board = boardOf(judged, { on: LAST_DAY, map: bigMap(40) });
    // The crew of 100, whoever of them has an entry; the owner and the twelve witnesses.
    expect(board.people.length).toBeGreaterThan(100);
    const cells = board.people.flatMap((p) => Object.values(p.tasks));
    expect(new Set(cells.map((c) => c.standing)).size).toBe(4);
    expect(cells.filter((c) => c.standing === 'shown').length).toBeGreaterThan(1250);
  });
});
