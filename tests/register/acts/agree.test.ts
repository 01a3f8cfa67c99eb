/**
 * An act refuses exactly what the judge objects to: whatever it signs counts and does what it is for, and what it
 * refuses, signed by hand all the same, counts for nothing, wherever the rules say so. Histories are random: any act by
 * any key about anyone, on devices that lag behind, with lines lost and clocks set back.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isWithdrawn } from '../../../src/register/acts/named.ts';
import { dropped } from '../../../src/register/bodies.ts';
import { checksOf } from '../../../src/register/checks.ts';
import { branchOf } from '../../../src/register/forks.ts';
import type { RegisterFiles } from '../../../src/register/held.ts';
import type { Judged } from '../../../src/register/judged.ts';
import { isBackDated, type Placed } from '../../../src/register/order.ts';
import { withWritten } from '../../../src/register/write.ts';
import { type Fault, GivenError } from '../../../src/trade/given.ts';
import { at, Book, kd, lz, map } from '../book.ts';
import { byHand, kd2, kinds, mt, signers, type Tried, type Try, triedOf } from './world.ts';

type Step =
  | { readonly how: 'now' | 'behind' | 'early'; readonly t: Try; readonly back: number }
  | { readonly how: 'lose'; readonly line: number };

const tries: fc.Arbitrary<Try> = fc.record({
  kind: fc.constantFrom(...kinds),
  signer: fc.nat({ max: signers.length - 1 }),
  entries: fc.array(fc.nat({ max: 11 }), { minLength: 1, maxLength: 3 }),
  person: fc.nat({ max: 6 }),
  key: fc.nat({ max: signers.length - 1 }),
  pick: fc.nat({ max: 11 }),
  fit: fc.boolean(),
});
const steps: fc.Arbitrary<Step> = fc.oneof(
  { weight: 12, arbitrary: fc.record({ how: fc.constant('now' as const), t: tries, back: fc.constant(0) }) },
  {
    weight: 3,
    arbitrary: fc.record({
      how: fc.constantFrom('behind' as const, 'early' as const),
      t: tries,
      back: fc.nat({ max: 5 }),
    }),
  },
  { weight: 1, arbitrary: fc.record({ how: fc.constant('lose' as const), line: fc.nat({ max: 11 }) }) },
);

/** Faults that the rules have the judge find too; all others are the act's own care, or cannot be told afterwards. */
const judged = (f: Fault, { draft, signer }: Tried, before: Judged): boolean => {
  const { kind } = draft;
  const { message, field } = f;
  const acted = kind === 'second' || kind === 'withdraw' || kind === 'correct';
  const isOwner = !before.authority.forked && before.authority.owner === signer.publicKey;
  const witnessing = ['check', 'second', 'ticket', 'assigned'].includes(kind);
  if (message === 'this key is retired') {
    if (field === 'key') return kind !== 'take-over' && (witnessing || !isOwner);
    return field === 'witness';
  }
  if (/^no such entry|^an entry of kind/.test(message)) return acted;
  if (kind === 'succeed' && field === 'next') return false;
  // What was said about a person who is erased is gone: nobody can tell any more what it took to sign it.
  if (message.startsWith('not appointed for')) return !before.view.erased.has(draft.about ?? '');
  return [
    /^not the owner’s key/,
    /^the ownership/,
    /^nobody signs/,
    /^neither the owner’s/,
    /^the second witness is/,
    /^the key is bound/,
    /^the owner named no key/,
    /^this key is the owner’s already/,
    /^not the key that the owner named/,
  ].some((p) => p.test(message));
};

/** Problems that are not settled: by line, and what is missing by its id, whoever is the first that speaks of it. */
const wrong = (j: Judged): Set<string> =>
  new Set(
    j.problems
      .filter((p) => p.settled !== true)
      .map((p) => (p.code === 'gap' ? String(p.say.values?.['id']) : `${p.file}:${p.line}`)),
  );

/** What was signed does what it is for. */
function does(before: Judged, after: Judged, p: Placed, signer: string): void {
  const { kind, target, about, key } = p.header;
  const [id = ''] = target;
  if (kind === 'check' || kind === 'second' || kind === 'correct') {
    expect(after.authority.body(p, kind).state).toBe('held');
  }
  if (kind === 'second') {
    const check = [...checksOf(after, map, undefined).values()].flat().find((c) => c.entry.id === id);
    expect(check?.seconds.map((s) => s.entry.id)).toContain(p.id);
  }
  if (kind === 'withdraw') expect(isWithdrawn(after, id)).toBe(true);
  if (kind === 'appoint') expect(after.authority.appointments.map((a) => a.entry.id)).toContain(p.id);
  if (kind === 'succeed') expect(after.authority.successions.at(-1)?.id).toBe(p.id);
  if (kind === 'take-over') expect([after.authority.owner, after.authority.forked]).toEqual([signer, false]);
  if (kind === 'erase') expect(after.view.erased.has(about ?? '')).toBe(true);
  if (kind === 'settle') isSettled(after, id);
  if (kind === 'retire') {
    for (const q of after.view.list) {
      const named = target.some((t) => {
        const end = after.view.order.byId.get(t);
        return end?.chain === q.chain && (end === q || after.view.order.isPast(end, q));
      });
      const witness = ['check', 'second', 'ticket', 'assigned'].includes(q.header.kind);
      if (q.header.signer !== key || named || (after.authority.byOwner(q) && !witness)) continue;
      expect(after.counts(q)).toBe(false);
    }
    for (const t of target) expect(after.authority.retirements.at(-1)?.stands.has(t)).toBe(true);
  }
  expect(before.view.order.byId.has(p.id)).toBe(false);
}

function isSettled(after: Judged, id: string): void {
  const q = after.view.order.byId.get(id);
  const gap = after.gaps.filter((g) => g.cited.id === id);
  if (q === undefined) expect(gap.map((g) => g.settled)).not.toContain(false);
  else {
    if (isBackDated(q)) {
      const found = after.problems.find(
        (x) => x.file === q.file && x.line === q.line && x.code === 'back-dated',
      );
      expect(found?.settled).toBe(true);
    }
    for (const { fork, settled, lost } of after.forks) {
      const branch = branchOf(fork, q);
      if (branch === undefined) continue;
      // The forked device settles nothing of its own; a back-dated entry on it may have been all that was meant.
      expect([settled, lost.includes(branch)]).toEqual([true, false]);
    }
  }
}

/** Takes one line out of a chain, never the beginning. */
function without(files: RegisterFiles, j: Judged, n: number): RegisterFiles {
  const list = j.view.order.list.slice(1);
  const gone = list[n % Math.max(1, list.length)];
  if (gone === undefined) return files;
  const lines = (files[gone.file] ?? '').split('\n');
  return { ...files, [gone.file]: lines.filter((_, i) => i !== gone.line - 1).join('\n') };
}

/** What goes with a person goes, and no other body that was here. */
function dropsRight(after: Judged, before: RegisterFiles, now: RegisterFiles): void {
  const stays = after.view.order.list.flatMap(({ header: { about, kind, body } }) => {
    const goes = about !== null && after.view.erased.has(about) && dropped.includes(kind);
    return body === null || goes ? [] : [`bodies/${body}.json`];
  });
  expect(stays.filter((path) => before[path] !== undefined && now[path] === undefined)).toEqual([]);
  const gone = Object.keys(before).filter((path) => now[path] === undefined);
  expect(gone.filter((path) => !path.startsWith('bodies/'))).toEqual([]);
}

const tally = new Map<string, number>();
const count = (what: string): void => {
  tally.set(what, (tally.get(what) ?? 0) + 1);
};

/** A staffed register: KD with two keys, LZ for some tasks, MT from the second day on, a successor named. */
async function staffed(): Promise<Book> {
  const book = await Book.staffed();
  await book.appoint(kd2, 'KD');
  await book.appoint(mt, 'MT', ['T1', 'T3'], '2026-01-02');
  await book.check(kd, 'DM', 'T3', '2026-01-01');
  await book.check(lz, 'EI', 'T1', '2026-01-01');
  return book;
}

async function run(history: readonly Step[]): Promise<void> {
  const book = await staffed();
  const states: RegisterFiles[] = [book.files];
  let now = at('2026-01-02');
  let salt = 0;
  const chance = (n: number): Uint8Array<ArrayBuffer> => {
    salt += 1;
    return new Uint8Array(n).fill(salt & 255).fill(salt >>> 8, 0, 1);
  };
  const salted = (): number => {
    salt += 1;
    return 1_000_000 + salt;
  };
  const open = (files: RegisterFiles): Promise<Judged> => {
    book.files = files;
    return book.judged({ now });
  };
  for (const step of history) {
    now += 60_000;
    const files = states.at(-1) as RegisterFiles;
    if (step.how === 'lose') {
      states.push(without(files, await open(files), step.line));
      continue;
    }
    const base = step.how === 'behind' ? (states.at(-1 - step.back) ?? files) : files;
    const before = await open(base);
    const tried = triedOf(before, step.t);
    const { signer } = tried;
    if (step.how === 'early') {
      states.push((await byHand(before, files, tried, now - 3_600_000, salted())).files);
      continue;
    }
    try {
      const written = await tried.act(before, { signer, now, chance });
      const own = withWritten(base, written);
      const after = await open(own);
      const p = after.view.order.byId.get(written.entry) as Placed;
      expect(after.authority.voids.get(p.id)?.say.say).toBeUndefined();
      expect(after.counts(p)).toBe(true);
      const known = wrong(before);
      // Which branch stands is a choice: what the other one had retired or appointed goes with it.
      const concerned = p.header.kind === 'settle' ? [`${p.file}:${p.line}`] : [...wrong(after)];
      expect(concerned.filter((x) => wrong(after).has(x) && !known.has(x))).toEqual([]);
      does(before, after, p, signer.publicKey);
      dropsRight(after, base, own);
      count(`${p.header.kind} signed`);
      // What a device that lags behind signed comes in beside what it did not know.
      states.push(step.how === 'behind' ? withWritten(files, written) : own);
    } catch (error) {
      if (!(error instanceof GivenError)) throw error;
      const found = error.faults.filter((f) => judged(f, tried, before));
      if (found.length > 0) {
        const hand = await byHand(before, base, tried, now, salted());
        const after = await open(hand.files);
        expect(after.authority.voids.has(hand.id), found.map((f) => f.message).join('; ')).toBe(true);
        count(`${tried.draft.kind} objected to`);
      } else count(`${tried.draft.kind} refused`);
    }
  }
}

test('an act refuses what the judge objects to, and nothing that it signs is objected to', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(steps, { minLength: 8, maxLength: 24 }), async (history) => run(history)),
    { numRuns: Number(process.env['RUNS'] ?? 40) },
  );
  if (process.env['TALLY']) console.log(tally);
  for (const kind of new Set<string>(kinds)) {
    expect(tally.get(`${kind} signed`), `${kind} signed`).toBeGreaterThan(0);
    expect(tally.get(`${kind} objected to`), `${kind} objected to`).toBeGreaterThan(0);
  }
}, 900_000);
