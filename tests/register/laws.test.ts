import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { boardOf } from '../../src/register/board.ts';
import { bundleText, readBundle } from '../../src/register/bundle.ts';
import { holdFiles, type RegisterFiles } from '../../src/register/held.ts';
import type { NoRegister } from '../../src/register/judged.ts';
import { mergeRegisters } from '../../src/register/merge.ts';
import { openRegister } from '../../src/register/register.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { at, Book, kd, lz, map, owner, signerOf, verify } from './book.ts';

const now = at('2026-06-01');
const asked = { now, dayIn };
const lines = (files: RegisterFiles): { path: string; line: string }[] =>
  Object.entries(files)
    .filter(([path]) => path.startsWith('headers/'))
    .flatMap(([path, text]) =>
      text
        .split('\n')
        .filter((l) => l !== '')
        .map((line) => ({ path, line })),
    );
const boardAt = async (files: RegisterFiles, more: { knownOn?: string } = {}) => {
  const { judged } = await openRegister(files, { verify, ...asked, ...more });
  return boardOf(judged, { on: '2026-03-01', map, people: ['DM', 'EI', 'HV', 'JT'], ...more });
};

let full: Book;
/** A register after each of its entries, oldest first. */
const states: RegisterFiles[] = [];
beforeAll(async () => {
  full = await Book.staffed();
  const keep = () => states.push(full.files);
  keep();
  const shown = await full.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
  keep();
  await full.on('2026-02-03').check(lz, 'DM', 'T1', '2026-02-03', { outcome: 'not-yet' });
  keep();
  const two = await full.on('2026-02-04').check(kd, 'EI', 'T3', '2026-02-04');
  keep();
  await full.on('2026-02-05').second(lz, 'EI', two);
  keep();
  await full
    .on('2026-02-06')
    .check({ ...kd, device: 'tablet' }, 'HV', 'T2', '2026-02-06', { help: 'with-help' });
  keep();
  await full.on('2026-02-07').act(owner, 'withdraw', 'DM', [shown]);
  keep();
  await full.on('2026-02-08').check(kd, 'JT', 'T4', '2026-02-08');
  keep();
});

/** Any part of the register that has its beginning: lines dropped at will, at least the first of the owner kept. */
const part = () =>
  fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }).map((keep): RegisterFiles => {
    const files: Record<string, string> = Object.fromEntries(
      Object.entries(full.files).filter(([path]) => !path.startsWith('headers/')),
    );
    for (const [i, { path, line }] of lines(full.files).entries()) {
      if (!line.includes('"kind":"begin"') && !keep[i % keep.length]) continue;
      files[path] = `${files[path] ?? ''}${line}\n`;
    }
    return files;
  });

describe('joining copies', () => {
  const join = async (a: RegisterFiles, b: RegisterFiles): Promise<RegisterFiles> =>
    mergeRegisters(await holdFiles(a, verify), await holdFiles(b, verify), asked).files;

  test('commutative, associative, idempotent, and nothing is lost', async () => {
    await fc.assert(
      fc.asyncProperty(part(), part(), part(), async (a, b, c) => {
        const ab = await join(a, b);
        expect(ab).toEqual(await join(b, a));
        expect(await join(ab, c)).toEqual(await join(a, await join(b, c)));
        expect(await join(ab, ab)).toEqual(ab);
        expect(await join(ab, a)).toEqual(ab);
        const ids = new Set(lines(ab).map((l) => l.line));
        for (const { line } of [...lines(a), ...lines(b)]) expect(ids).toContain(line);
      }),
      { numRuns: 40 },
    );
  });
  test('counts what came in, and drops bodies of who is erased', async () => {
    const before = await holdFiles(states[3] ?? {}, verify);
    const after = await holdFiles(full.files, verify);
    expect(mergeRegisters(before, after, asked)).toMatchObject({ added: 4, entries: 10, dropped: 0 });
    const erased = full.copy();
    await erased.on('2026-03-01').act(owner, 'erase', 'DM', []);
    const merged = mergeRegisters(after, await holdFiles(erased.files, verify), asked);
    // DM's check, not-yet, and the withdrawal
    expect(merged).toMatchObject({ added: 1, entries: 11, dropped: 3 });
    expect(Object.keys(merged.files).filter((p) => p.startsWith('bodies/'))).toHaveLength(8);
    const { judged } = await openRegister(merged.files, { verify, ...asked });
    expect(judged.problems).toEqual([]);
  });
  test('another beginning is refused; a changed line is left behind', async () => {
    const other = await Book.begun('UTC', null, signerOf(8, 'x'));
    await expect(join(full.files, other.files)).rejects.toThrow(/another register/);
    const changed = full.copy();
    changed.edit(changed.file(lz), (t) => t.replace('"seq":0', '"seq":9'));
    const joined = await join(states[0] ?? {}, changed.files);
    expect(Object.values(joined).join('')).not.toContain('"seq":9');
  });
});

describe('order', () => {
  test('of files and lines does not matter, nor how often a line stands', async () => {
    const want = await boardAt(full.files);
    await fc.assert(
      fc.asyncProperty(fc.infiniteStream(fc.nat()), fc.boolean(), async (chance, twice) => {
        const shuffled = [...lines(full.files), ...(twice ? lines(full.files) : [])]
          .map((l) => ({ ...l, by: chance.next().value as number }))
          .sort((a, b) => a.by - b.by);
        // Names of files prove nothing: everything in one.
        const text = shuffled.map((l) => `${l.line}\n`).join('');
        const rest = Object.entries(full.files).filter(([path]) => !path.startsWith('headers/'));
        const files = Object.fromEntries([...rest.reverse(), ['headers/all.jsonl', text]]);
        expect(await boardAt(files)).toEqual(want);
      }),
      { numRuns: 30 },
    );
  });
  test('a register in one file is the register', async () => {
    expect(readBundle(bundleText(full.files))).toEqual(full.files);
    expect(await boardAt(readBundle(bundleText({ ...full.files, 'notes.txt': 'x' })))).toEqual(
      await boardAt(full.files),
    );
    for (const bad of [
      '',
      '{}',
      '{"v":1,"kind":"register","files":{"../x":"y"}}',
      '{"v":1,"kind":"register","files":{"headers/../x":"y"}}',
      '{"v":2,"kind":"register","files":{}}',
    ]) {
      expect(() => readBundle(bad)).toThrow();
    }
  });
});

describe('earlier states', () => {
  test('each is closed, has no fault, and shows what stood then', async () => {
    for (const files of states) {
      const { judged } = await openRegister(files, { verify, ...asked });
      expect(judged.problems).toEqual([]);
    }
    const days = [
      '2026-02-01',
      '2026-02-02',
      '2026-02-03',
      '2026-02-04',
      '2026-02-05',
      '2026-02-06',
      '2026-02-07',
      '2026-02-08',
    ];
    for (const [i, knownOn] of days.entries()) {
      const then = await boardAt(states[i] ?? {});
      const now = await boardAt(full.files, { knownOn });
      expect({ ...now, knownOn: null }, knownOn).toEqual(then);
    }
  });
  test('the next entry cites every head that is new, and none twice', async () => {
    const book = full.copy();
    const first = await book.on('2026-03-01').check(lz, 'DM', 'T2', '2026-03-01');
    expect(book.header(first).seen).toHaveLength(3); // owner, KD's phone and tablet
    const next = await book.check(lz, 'EI', 'T2', '2026-03-01');
    expect(book.header(next).seen).toHaveLength(0);
  });
  test('more than 32 new heads go along in entries of kind seen', async () => {
    const book = await Book.begun();
    await book.appoint(kd, 'KD');
    await book.appoint(lz, 'LZ');
    const parts = Array.from({ length: 70 }, (_, i) => ({ ...kd, device: `d-${i}` }));
    const copies = await Promise.all(
      parts.map(async (device) => {
        const copy = book.copy();
        await copy.on('2026-02-02').check(device, 'DM', 'T2', '2026-02-02');
        return copy;
      }),
    );
    for (const copy of copies) book.files = { ...book.files, ...copy.files };
    const id = await book.on('2026-02-03').check(lz, 'EI', 'T2', '2026-02-03');
    const chain = (book.files[book.file(lz)] ?? '')
      .split('\n')
      .slice(0, -1)
      .map((l) => JSON.parse(l).header);
    // 70 devices and the owner
    expect(chain.map((h) => [h.kind, h.seq, h.seen.length])).toEqual([
      ['seen', 0, 32],
      ['seen', 1, 32],
      ['check', 2, 7],
    ]);
    const judged = await book.judged({ now });
    const last = judged.view.order.byId.get(id);
    expect(judged.view.list.every((p) => p === last || judged.view.order.isPast(last as never, p))).toBe(
      true,
    );
    expect(judged.problems).toEqual([]);
  });
});

// A byte that is changed, taken out or put in twice, at every place: changed.test.ts.
describe('a line', () => {
  test('that is not the newest of its chain is missed when it is taken out', async () => {
    for (const { path, line } of lines(full.files)) {
      const text = full.files[path] as string;
      const kept = text.replace(`${line}\n`, '');
      const { held, problems } = await openRegister(
        { ...full.files, [path]: kept },
        { verify, ...asked },
      ).then(
        ({ held, judged }) => ({ held, problems: judged.problems }),
        (cause) => ({ held: (cause as NoRegister).held, problems: [(cause as NoRegister).problem] }),
      );
      const cited =
        held.entries.size > 0 &&
        [...held.entries.values()].some(({ header }) =>
          [header.prev, ...header.seen.map((s) => s.id)].some((id) => id !== null && !held.entries.has(id)),
        );
      expect(problems.some((p) => p.code === 'gap')).toBe(cited);
    }
  });
});
