import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hashOf } from '../../src/register/bytes.ts';
import type { Citation, Header } from '../../src/register/header.ts';
import type { Entry } from '../../src/register/held.ts';
import { arrange, chainBack, latest, numbered, type Placed } from '../../src/register/order.ts';
import { Reach } from '../../src/register/reach.ts';
import { model } from './orderModel.ts';

const roll = fc.nat({ max: 999 });
/** What one entry is made of: whose it is, what it follows, what it has seen, and where it lies. */
const step = fc.record({
  signer: fc.nat({ max: 2 }),
  device: fc.nat({ max: 1 }),
  time: fc.nat({ max: 40 }),
  follows: roll,
  fault: roll,
  seen: fc.array(fc.record({ which: roll, fault: roll }), { maxLength: 4 }),
  held: roll,
});
type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

const idOf = (i: number): string => hashOf(`entry ${i}`);
const cite = ({ id, header: { signer, device, seq } }: Entry): Citation => ({ id, signer, device, seq });

/** A history with forks, holes, citations of what never was, of other chains as one's own, with wrong numbers. */
function historyOf(steps: readonly Step[], holes: number): Entry[] {
  const all: Entry[] = [];
  for (const [i, s] of steps.entries()) {
    const chain = { signer: `s${s.signer}`, device: `d${s.device}` };
    const own = all.filter((e) => e.header.signer === chain.signer && e.header.device === chain.device);
    // Mostly the last, sometimes another (a fork), seldom one of another chain.
    const among = s.fault < 30 ? all : own;
    const before = s.follows < 750 ? among.at(-1) : among[s.follows % Math.max(1, among.length)];
    const wrong = s.fault >= 30 && s.fault < 80 ? (s.fault % 4) - 1 : 0;
    const never = s.fault >= 80 && s.fault < 120;
    const seen = s.seen.flatMap(({ which, fault }): Citation[] => {
      const e = all[all.length - 1 - (which % Math.max(1, all.length))];
      if (e === undefined) return [];
      if (fault < 40) return [{ ...cite(e), id: idOf(-1 - (which % 5)) }];
      if (fault < 80) return [{ ...cite(e), seq: e.header.seq + (fault % 3) }];
      if (fault < 120) return [{ ...cite(e), ...chain }];
      return [cite(e)];
    });
    const header: Header = {
      ...{ v: 1, kind: 'seen', register: 'r', about: null, target: [], key: null, body: null },
      ...chain,
      seq: Math.max(0, (before?.header.seq ?? -1) + 1 + wrong),
      prev: never ? idOf(-1 - (s.follows % 5)) : (before?.id ?? null),
      seen,
      time: '',
    };
    all.push({ id: idOf(i), header, signature: '', time: i + s.time, file: '', line: i });
  }
  return all.filter((_, i) => (steps[i] as Step).held >= holes);
}

const history = fc
  .tuple(fc.array(step, { maxLength: 40 }), fc.constantFrom(0, 0, 60, 200))
  .map(([steps, holes]) => historyOf(steps, holes));

describe('order', () => {
  test('is what the sets of all pasts say, whatever is forked, missing or wrongly cited', () => {
    fc.assert(
      fc.property(history, (entries) => {
        const wanted = model(entries);
        const order = arrange(entries);
        expect(order.list.map((p) => p.id)).toEqual(wanted.map((m) => m.id));
        for (const [i, p] of order.list.entries()) {
          const { past, mayKnow, id: _, before, ...facts } = wanted[i] as (typeof wanted)[number];
          expect(p).toMatchObject({ ...facts, rank: i });
          expect(p.before?.id).toBe(before);
          for (const [k, q] of order.list.entries()) {
            expect(order.isPast(p, q), `${i} knows ${k}`).toBe(past.has(q.id));
            expect(order.mayKnow(p, q), `${i} may know ${k}`).toBe(mayKnow(wanted[k] as never));
          }
          for (let seq = 0; seq <= p.header.seq + 2; seq++) {
            expect(numbered(p, seq)).toBe([...chainBack(p)].find((q) => q.header.seq === seq));
          }
        }
      }),
      { numRuns: 300 },
    );
  });
  test('the latest of some are those that no other of them knows', () => {
    fc.assert(
      fc.property(history, fc.array(roll, { maxLength: 12 }), (entries, picks) => {
        const order = arrange(entries);
        const among = picks.map((i) => order.list[i % 40]).filter((p): p is Placed => p !== undefined);
        const known = (p: Placed): boolean => among.some((q) => order.isPast(q, p));
        expect(latest(order, among)).toEqual(among.filter((p) => !known(p)));
      }),
      { numRuns: 100 },
    );
  });
});

describe('reach', () => {
  test('branches of branches know what they branched from, and who cites one knows it too', () => {
    const reach = new Reach();
    const far = reach.add([], undefined);
    const trunk = reach.add([far], undefined);
    const next = reach.add([trunk], trunk);
    const branch = reach.add([trunk], trunk);
    const twig = reach.add([branch], branch);
    const other = reach.add([branch], branch);
    const citing = reach.add([other], undefined);
    expect(new Set([trunk, next, branch, twig, other, citing].map((p) => p.stretch)).size).toBe(4);
    for (const p of [trunk, next, branch, twig, other, citing]) expect(reach.knows(p, far)).toBe(true);
    for (const p of [next, twig]) expect(reach.knows(citing, p)).toBe(false);
    for (const p of [trunk, branch, other]) expect(reach.knows(citing, p)).toBe(true);
    expect([reach.knows(other, other), reach.knows(trunk, branch), reach.knows(branch, next)]).toEqual([
      false,
      false,
      false,
    ]);
  });
});
