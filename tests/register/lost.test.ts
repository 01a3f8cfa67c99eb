/** A line that is gone: what was named, cut off, seconded or withdrawn by it, and what still follows from its citations. */
import { beforeEach, describe, expect, test } from 'vitest';
import { lose } from './acts/refusals.ts';
import { Book, kd, lz, owner } from './book.ts';

let b: Book;
beforeEach(async () => {
  b = await Book.staffed();
});
const standing = async (person: string): Promise<string | undefined> => {
  const board = await b.board({ on: '2026-03-01' });
  const row = board.people.find((p) => p.id === person)?.tasks['T2'];
  return row && [row.standing, ...row.why.map((w) => w.code)].join(' ');
};
const codes = async (): Promise<readonly string[]> =>
  (await b.judged()).problems
    .map(({ code, settled }) => (settled === true ? `${code} settled` : code))
    .sort();
const check = (who: typeof kd, person: string, on: string, outcome: 'shown' | 'not-yet' = 'shown') =>
  b.on(on).check(who, person, 'T2', on, { outcome });

describe('the entry that a retirement names as the last that stands', () => {
  test('may have spoken against a showing, and doubt stays when it is gone', async () => {
    await check(kd, 'DM', '2026-02-01');
    const against = await check(lz, 'DM', '2026-02-02', 'not-yet');
    await b.on('2026-02-03').retire(lz, 'LZ', [against]);
    expect(await standing('DM')).toBe('show again N');
    lose(b, against);
    expect(await standing('DM')).toBe('show again ?');
    expect(await codes()).toEqual(['gap']);
  });
  test('keeps what stands before it in its chain when it is gone', async () => {
    await check(lz, 'DM', '2026-02-01');
    const last = await check(lz, 'EI', '2026-02-01');
    const after = await check(lz, 'HV', '2026-02-01');
    await b.on('2026-02-03').retire(lz, 'LZ', [last]);
    lose(b, last);
    const { authority, view } = await b.judged();
    expect(authority.voids.has(after)).toBe(true);
    expect(view.list.filter((p) => p.header.kind === 'check' && !authority.voids.has(p.id)).length).toBe(1);
    expect(await standing('DM')).toBe('show again ?');
  });
  test('stands though what it cut off is gone, by which alone it was cited', async () => {
    const last = await check(kd, 'DM', '2026-02-01');
    const cut = await check(kd, 'EI', '2026-02-01');
    await b.on('2026-02-03').retire(kd, 'KD', [last]);
    expect(await standing('DM')).toBe('shown');
    lose(b, cut);
    expect(await standing('DM')).toBe('shown');
    expect(await codes()).toEqual(['gap settled']);
  });
});

test('what a cut off entry alone speaks of is listed, and may be settled', async () => {
  const last = await check(kd, 'DM', '2026-02-01');
  const gone = await check(lz, 'DM', '2026-02-02', 'not-yet');
  await check(kd, 'EI', '2026-02-02');
  await b.on('2026-02-03').retire(kd, 'KD', [last]);
  lose(b, gone);
  expect((await codes()).filter((code) => code.startsWith('gap'))).toHaveLength(1);
});

describe('an act on a line that is gone', () => {
  test.each(['withdraw', 'second'] as const)('%s: is no fault of its signer', async (kind) => {
    const gone = await check(kd, 'DM', '2026-02-01');
    b.on('2026-02-02');
    if (kind === 'second') await b.second(lz, 'DM', gone);
    else await b.act(owner, kind, 'DM', [gone]);
    lose(b, gone);
    expect(await codes()).toEqual(['gap']);
  });
});
