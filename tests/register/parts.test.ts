/** Laws over parts of a register with an entry of every kind: joined, as it stood earlier, and with entries lacking. */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Board, boardOf } from '../../src/register/board.ts';
import { isKnownKind } from '../../src/register/bodies.ts';
import type { Header } from '../../src/register/header.ts';
import { idOf } from '../../src/register/header.ts';
import { holdFiles, type RegisterFiles } from '../../src/register/held.ts';
import type { Judged } from '../../src/register/judged.ts';
import { mergeRegisters } from '../../src/register/merge.ts';
import { openRegister } from '../../src/register/register.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { at, map, owner, verify } from './book.ts';
import { type EveryKind, everyKind } from './everyKind.ts';

const now = at('2026-06-01');
const asked = { now, dayIn };
const people = ['DM', 'EI', 'HV', 'JT', 'KD', 'LZ', 'OW', 'TH'];

interface Line {
  readonly path: string;
  readonly line: string;
  readonly header: Header;
  readonly id: string;
  /** Everything that it cites. */
  readonly cites: readonly string[];
}
function linesOf(files: RegisterFiles): readonly Line[] {
  return Object.entries(files)
    .filter(([path]) => path.startsWith('headers/'))
    .flatMap(([path, text]) =>
      text
        .split('\n')
        .slice(0, -1)
        .map((line): Line => {
          const { header } = JSON.parse(line) as { header: Header };
          const cites = [header.prev, ...header.seen.map((s) => s.id)].filter((id) => id !== null);
          return { path, line, header, id: idOf(header), cites };
        }),
    );
}
/** The register with some of its lines alone; bodies all. */
function only(files: RegisterFiles, keep: (line: Line) => boolean): RegisterFiles {
  const part: Record<string, string> = Object.fromEntries(
    Object.entries(files).filter(([path]) => !path.startsWith('headers/')),
  );
  for (const l of linesOf(files)) if (keep(l)) part[l.path] = `${part[l.path] ?? ''}${l.line}\n`;
  return part;
}
const open = async (files: RegisterFiles, more: { knownOn?: string } = {}): Promise<Judged> =>
  (await openRegister(files, { verify, ...asked, ...more })).judged;
const regrade = (evidence: unknown) => (evidence as { good: boolean }).good;
const boardFrom = (judged: Judged, more: { knownOn?: string } = {}): Board =>
  boardOf(judged, { on: '2026-04-15', map, people, regrade, ...more });

let whole: EveryKind;
let unerased: EveryKind;
beforeAll(async () => {
  whole = await everyKind({ erased: true });
  unerased = await everyKind({ erased: false });
});
/** Which lines are kept, by their place; the beginning always. */
const choice = () => fc.array(fc.boolean(), { minLength: 40, maxLength: 40 });
function partBy(files: RegisterFiles, keep: readonly boolean[]): RegisterFiles {
  const places = new Map(linesOf(files).map((l, i) => [l.id, i]));
  return only(files, (l) => l.header.kind === 'begin' || keep[places.get(l.id) ?? 0] === true);
}

test('every kind is in it, and one that nobody knows', () => {
  const kinds = new Set(linesOf(whole.book.files).map((l) => l.header.kind));
  const known =
    'begin appoint check seen second withdraw correct retire settle succeed take-over erase ticket assigned';
  expect([...kinds].filter(isKnownKind).sort()).toEqual(known.split(' ').sort());
  expect([...kinds].filter((kind) => !isKnownKind(kind))).toEqual(['later-kind']);
});

describe('joining copies', () => {
  const join = async (a: RegisterFiles, b: RegisterFiles): Promise<RegisterFiles> =>
    mergeRegisters(await holdFiles(a, verify), await holdFiles(b, verify), asked).files;

  test('commutative, associative, idempotent, nothing is lost, and the board is the same', async () => {
    await fc.assert(
      fc.asyncProperty(choice(), choice(), choice(), async (x, y, z) => {
        const [a, b, c] = [x, y, z].map((keep) => partBy(whole.book.files, keep)) as [
          RegisterFiles,
          RegisterFiles,
          RegisterFiles,
        ];
        const ab = await join(a, b);
        expect(ab).toEqual(await join(b, a));
        expect(await join(ab, c)).toEqual(await join(a, await join(b, c)));
        expect(await join(ab, ab)).toEqual(ab);
        expect(await join(ab, a)).toEqual(ab);
        const held = new Set(linesOf(ab).map((l) => l.line));
        for (const { line } of [...linesOf(a), ...linesOf(b)]) expect(held).toContain(line);
        // dropping what an erase drops, and nothing else, changes no board
        const both = partBy(
          whole.book.files,
          x.map((kept, i) => kept || y[i] === true),
        );
        expect(boardFrom(await open(ab))).toEqual(boardFrom(await open(both)));
      }),
      { numRuns: 30 },
    );
  });
});

describe('a part that is closed', () => {
  test('each earlier moment has no fault but what it had then, and its board is the one of that day', async () => {
    const { book, moments } = unerased;
    for (const { files, day } of moments) {
      const then = boardFrom(await open(files));
      const known = boardFrom(await open(book.files, { knownOn: day }), { knownOn: day });
      // notes speak of problems known today: they are not what stood then
      expect({ ...known, knownOn: null, notes: [] }, day).toEqual({ ...then, notes: [] });
    }
  });
  test('under prev and seen, in any way: no gap, and nothing is in doubt', async () => {
    const lines = linesOf(unerased.book.files);
    const byId = new Map(lines.map((l) => [l.id, l]));
    const close = (id: string, into: Set<string>): Set<string> => {
      if (into.has(id)) return into;
      into.add(id);
      for (const cited of byId.get(id)?.cites ?? []) close(cited, into);
      return into;
    };
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.nat({ max: lines.length - 1 }), { minLength: 1, maxLength: 4 }),
        async (heads) => {
          const kept = new Set<string>([unerased.book.begin]);
          for (const i of heads) close((lines[i] as Line).id, kept);
          const part = only(unerased.book.files, (l) => kept.has(l.id));
          const judged = await open(part);
          expect(judged.problems.filter((p) => p.code === 'gap' && p.settled !== true)).toEqual([]);
          expect(judged.gaps).toEqual([]);
          expect(judged.entries).toBe(kept.size);
          const doubtful = judged.view.list.filter((p) => judged.doubt(p) !== undefined);
          expect(doubtful).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('any other part', () => {
  test('every entry that is cited and not held is reported, and what follows it in its chain is in doubt', async () => {
    await fc.assert(
      fc.asyncProperty(choice(), async (keep) => {
        const part = partBy(unerased.book.files, keep);
        const lines = linesOf(part);
        const held = new Set(lines.map((l) => l.id));
        const cited = new Set(lines.flatMap((l) => l.cites.filter((id) => !held.has(id))));
        const judged = await open(part);
        const cutOff = (id: string) => {
          const p = judged.view.order.byId.get(id);
          return p !== undefined && judged.authority.voids.get(id)?.code === 'after-retirement';
        };
        // what was cut off cites for nobody
        const spoken = new Set(
          lines.filter((l) => !cutOff(l.id)).flatMap((l) => l.cites.filter((id) => !held.has(id))),
        );
        const reported = new Set(judged.gaps.map((g) => g.cited.id));
        expect([...spoken].filter((id) => !reported.has(id))).toEqual([]);
        expect([...reported].filter((id) => !cited.has(id))).toEqual([]);
        expect(judged.problems.filter((p) => p.code === 'gap')).toHaveLength(reported.size);

        const ended = new Set(judged.gaps.filter((g) => g.cut || g.settled).map((g) => g.cited.id));
        for (const p of judged.view.list) {
          const { prev } = p.header;
          if (prev === null || held.has(prev) || ended.has(prev)) continue;
          expect(judged.doubt(p)).toBeDefined();
        }
      }),
      { numRuns: 120 },
    );
  });
  test('nothing is shown that an entry speaks against which is cited and not held', async () => {
    const { book } = unerased;
    const full = boardFrom(await open(book.files));
    let found = 0;
    await fc.assert(
      fc.asyncProperty(choice(), async (keep) => {
        // the owner's word is held whole: who was appointed for what is known
        const places = new Map(linesOf(book.files).map((l, i) => [l.id, i]));
        const part = only(
          book.files,
          (l) => l.header.signer === owner.publicKey || keep[places.get(l.id) ?? 0] === true,
        );
        const lines = linesOf(part);
        const held = new Set(lines.map((l) => l.id));
        const lacking = new Set(lines.flatMap((l) => l.cites.filter((id) => !held.has(id))));
        const board = boardFrom(await open(part));
        for (const person of full.people) {
          for (const [task, row] of Object.entries(person.tasks)) {
            const against = row.why.find((w) => w.code === 'N' || w.code === 'W');
            if (against?.entry == null || !lacking.has(against.entry)) continue;
            found += 1;
            const here = board.people.find((p) => p.id === person.id)?.tasks[task];
            expect(here?.standing, `${person.id} ${task}`).not.toBe('shown');
          }
        }
      }),
      { numRuns: 200 },
    );
    expect(found).toBeGreaterThan(0);
  });
});
