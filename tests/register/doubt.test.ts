/** Forks, gaps, retirement, settling, take-over, erasing: what counts, what is in doubt, what is settled. */
import { beforeAll, describe, expect, test } from 'vitest';
import { at, Book, checkBody, kd, lz, next, owner, signerOf, stranger } from './book.ts';

let staffed: Book;
beforeAll(async () => {
  staffed = await Book.staffed();
});
const standing = async (b: Book, person = 'DM', task = 'T2', on = '2026-06-01') => {
  const board = await b.board({ on, people: [person] });
  const found = board.people.find((p) => p.id === person)?.tasks[task];
  return [found?.standing, ...(found?.why ?? []).map((w) => w.code)].join(' ');
};
/** KD signs on two devices of one name: number 1 stands twice. */
async function forked(): Promise<{ b: Book; left: string; right: string }> {
  const b = staffed.copy();
  await b.on('2026-02-01').check(kd, 'EI', 'T2', '2026-02-01');
  const [one, two] = [b.copy(), b.copy()];
  const left = await one.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
  const right = await two.on('2026-02-03').check(kd, 'HV', 'T2', '2026-02-03');
  join(b, one, two);
  return { b, left, right };
}
function join(into: Book, ...books: Book[]): void {
  const files: Record<string, string> = {};
  for (const book of books) {
    for (const [path, text] of Object.entries(book.files)) {
      const known = new Set((files[path] ?? '').split('\n'));
      const fresh = path.startsWith('headers/')
        ? text.split('\n').filter((l) => l !== '' && !known.has(l))
        : [];
      files[path] = path.startsWith('headers/')
        ? `${files[path] ?? ''}${fresh.map((l) => `${l}\n`).join('')}`
        : text;
    }
  }
  into.files = files;
}

describe('fork', () => {
  test('both branches are in doubt, what was before is not', async () => {
    const { b } = await forked();
    expect(await b.codes()).toEqual(['fork']);
    expect([await standing(b), await standing(b, 'HV'), await standing(b, 'EI')]).toEqual([
      'show again ?',
      'show again ?',
      'shown',
    ]);
  });
  test('the owner settles it: one branch stands, the other counts for nothing', async () => {
    const { b, left } = await forked();
    await b.on('2026-02-10').act(owner, 'settle', 'DM', [left]);
    expect(await b.codes()).toEqual(['fork settled']);
    expect([await standing(b), await standing(b, 'HV')]).toEqual(['shown', 'not shown']);
  });
  test('the later settlement wins; two that do not know each other settle nothing', async () => {
    const { b, left, right } = await forked();
    await b.on('2026-02-10').act(owner, 'settle', 'DM', [left]);
    const tablet = { ...owner, device: 'tablet' };
    const apart = b.copy();
    await b.on('2026-02-11').act(tablet, 'settle', 'HV', [right]);
    expect([await standing(b), await standing(b, 'HV')]).toEqual(['not shown', 'shown']);
    const other = { ...owner, device: 'laptop' };
    await apart.on('2026-02-11').act(other, 'settle', 'DM', [left]);
    join(b, b.copy(), apart);
    expect(await b.codes()).toEqual(['fork']);
    expect([await standing(b), await standing(b, 'HV')]).toEqual(['show again ?', 'show again ?']);
  });
  test('a witness settles nothing', async () => {
    const { b, left } = await forked();
    await b.on('2026-02-10').act(lz, 'settle', 'DM', [left]);
    expect(await b.codes()).toEqual(['fork', 'not-appointed'].sort((x, y) => (x < y ? -1 : 1)));
    expect(await standing(b)).toBe('show again ?');
  });
  test('a branch that a retirement names wins over a settlement', async () => {
    const { b, left, right } = await forked();
    await b.on('2026-02-10').act(owner, 'settle', 'DM', [left]);
    await b.on('2026-02-11').retire(kd, 'KD', [right]);
    expect([await standing(b), await standing(b, 'HV')]).toEqual(['not shown', 'shown']);
    expect((await b.codes()).every((c) => c.endsWith('settled'))).toBe(true);
  });
  test('a signer goes on along the branch that stands', async () => {
    const { b, left } = await forked();
    await b.on('2026-02-10').act(owner, 'settle', 'DM', [left]);
    const after = await b.on('2026-02-12').check(kd, 'JT', 'T2', '2026-02-12');
    expect(b.header(after).prev).toBe(left);
    expect(await standing(b, 'JT')).toBe('shown');
  });
  test('a fork of the owner is settled from another of his devices that is not forked', async () => {
    const b = staffed.copy();
    const [one, two] = [b.copy(), b.copy()];
    const left = await one.on('2026-02-02').appoint(stranger, 'ST');
    await two.on('2026-02-03').appoint(signerOf(9, 'p'), 'XX');
    join(b, one, two);
    await b.on('2026-02-04').check(stranger, 'DM', 'T2', '2026-02-04');
    expect(await standing(b)).toBe('show again ?');
    const same = b.copy();
    await same.on('2026-02-05').act(owner, 'settle', 'ST', [left]);
    expect(await same.codes()).toEqual(['fork']);
    await b.on('2026-02-05').act({ ...owner, device: 'tablet' }, 'settle', 'ST', [left]);
    expect(await b.codes()).toEqual(['fork settled']);
    expect(await standing(b)).toBe('shown');
  });
});

/** Doubt ends with the branch that gave rise to it: what counts for nothing casts none, and asks for nothing. */
describe('what a losing branch lacks', () => {
  const without = (b: Book, id: string): void => b.remove(`bodies/${b.header(id).body}.json`);
  test('a body on a branch that lost is no doubt of anybody; on the one that stands it is', async () => {
    const { b, left, right } = await forked();
    await b.on('2026-02-04').check(lz, 'HV', 'T1', '2026-02-04');
    without(b, right);
    expect(await b.codes()).toEqual(['body-missing', 'fork']);
    expect(await standing(b, 'HV', 'T1', '2026-02-05')).toBe('show again ?');
    const other = b.copy();
    await b.on('2026-02-10').act(owner, 'settle', 'DM', [left]);
    expect(await b.codes()).toEqual(['body-missing settled', 'fork settled']);
    expect(await standing(b, 'HV', 'T1', '2026-02-11')).toBe('shown');
    await other.on('2026-02-10').act(owner, 'settle', 'HV', [right]);
    expect(await other.codes()).toEqual(['body-missing', 'fork settled']);
    expect(await standing(other, 'HV', 'T1', '2026-02-11')).toBe('show again ?');
  });
  test('a body of what a retirement that knew it cut off is settled; of what it did not know is not', async () => {
    const b = staffed.copy();
    const kept = await b.on('2026-02-01').check(kd, 'HV', 'T1', '2026-02-01');
    const cut = await b.on('2026-02-02').check(kd, 'HV', 'T2', '2026-02-02');
    const apart = b.copy();
    await b.on('2026-02-03').retire(kd, 'KD', [kept]);
    const late = await apart.on('2026-02-04').check(kd, 'HV', 'T3', '2026-02-04');
    without(b, cut);
    expect(await b.codes()).toEqual(['after-retirement settled', 'body-missing settled']);
    expect(await standing(b, 'HV', 'T1', '2026-02-05')).toBe('shown');
    without(apart, late);
    join(b, b.copy(), apart);
    without(b, cut);
    expect((await b.codes()).filter((code) => code.startsWith('body-missing'))).toEqual([
      'body-missing settled',
      'body-missing',
    ]);
    expect(await standing(b, 'HV', 'T1', '2026-02-05')).toBe('shown');
  });
  test('a body of what somebody signed about himself is no doubt of him, and is listed', async () => {
    const b = staffed.copy();
    await b.on('2026-02-01').check(lz, 'KD', 'T1', '2026-02-01');
    const own = await b.on('2026-02-02').check(kd, 'KD', 'T1', '2026-02-02');
    without(b, own);
    expect(await b.codes()).toEqual(['body-missing', 'own-signature']);
    expect(await standing(b, 'KD', 'T1', '2026-02-05')).toBe('shown');
  });
  test('a time set back on a branch that lost is settled with it', async () => {
    const b = staffed.copy();
    await b.on('2026-02-01').check(kd, 'EI', 'T2', '2026-02-01');
    const [one, two] = [b.copy(), b.copy()];
    const left = await one.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const { seq, prev } = one.header(left);
    const early = { seq, prev, kind: 'check', about: 'HV' };
    await two.on('2026-01-20').raw(kd, early, checkBody('T2', '2026-01-20'));
    join(b, one, two);
    expect((await b.codes()).sort()).toEqual(['back-dated', 'fork']);
    await b.on('2026-02-10').act(owner, 'settle', 'DM', [left]);
    expect((await b.codes()).sort()).toEqual(['back-dated settled', 'fork settled']);
  });
});

describe('gap', () => {
  /** KD's newest entry is cited by LZ and not held. KD is appointed for T2 alone. */
  async function lacking(): Promise<{ b: Book; gone: string; text: string }> {
    const b = await Book.begun();
    await b.appoint(kd, 'KD', ['T2']);
    await b.appoint(lz, 'LZ');
    await b.on('2026-02-02').check(lz, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-02').check(lz, 'DM', 'T4', '2026-02-02');
    const gone = await b.on('2026-02-10').check(kd, 'HV', 'T2', '2026-02-10');
    await b.on('2026-02-11').check(lz, 'EI', 'T2', '2026-02-11');
    await b.on('2026-02-12').check(lz, 'JT', 'T2', '2026-02-12');
    const text = b.files[b.file(kd)] ?? '';
    b.remove(b.file(kd));
    return { b, gone, text };
  }
  test('every showing is in doubt that the missing entry may speak against, and no other', async () => {
    const { b } = await lacking();
    expect(await b.codes()).toEqual(['gap']);
    // seen before the citing entry was entered, of a task that KD may sign
    expect(await standing(b, 'DM', 'T2')).toBe('show again ?');
    expect(await standing(b, 'EI', 'T2')).toBe('show again ?'); // seen on that very day
    expect(await standing(b, 'JT', 'T2')).toBe('shown'); // seen a day later
    expect(await standing(b, 'DM', 'T4', '2026-03-01')).toBe('shown'); // KD was never appointed for T4
  });
  test('lost for good: its doubt ends; when it comes in it counts as usual', async () => {
    const { b, gone, text } = await lacking();
    await b.on('2026-03-01').act(owner, 'settle', null, [gone]);
    expect(await b.codes()).toEqual(['gap settled']);
    expect([await standing(b), await standing(b, 'HV')]).toEqual(['shown', 'not shown']);
    b.files = { ...b.files, [b.file(kd)]: text };
    expect(await b.codes()).toEqual([]);
    expect(await standing(b, 'HV')).toBe('shown');
  });
  test('a missing entry of the owner may have been anything', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-03').appoint(stranger, 'ST');
    await b.on('2026-02-04').check(kd, 'EI', 'T4', '2026-02-04');
    b.edit(b.file(owner), (t) => `${t.split('\n').slice(0, 3).join('\n')}\n`);
    expect(await b.codes()).toEqual(['gap']);
    expect([await standing(b), await standing(b, 'EI', 'T4', '2026-02-05')]).toEqual([
      'show again ?',
      'show again ?',
    ]);
  });
  test('what stood before a missing entry in its chain is known to whoever cites it: no doubt is handed out twice', async () => {
    const b = staffed.copy(); // KD cites the owner's last entry, LZ's appointment, and nothing before it
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const [begun, first, , ...rest] = (b.files[b.file(owner)] ?? '').split('\n');
    b.edit(b.file(owner), () => [begun, first, ...rest].join('\n'));
    expect(await b.codes()).toEqual(['gap']);
    expect(await standing(b)).toBe('show again ?');
    await b.on('2026-02-05').check(kd, 'EI', 'T2', '2026-02-05');
    const again = await b.board({ on: '2026-02-05' });
    expect(again.people.find((p) => p.id === 'EI')?.tasks['T2']?.standing).toBe('shown');
  });
  test('it is listed even when nobody is left with standing to speak of it', async () => {
    const b = await Book.begun();
    await b.appoint(kd, 'KD');
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    b.edit(b.file(owner), (t) => `${t.split('\n')[0]}\n`);
    expect(await b.codes()).toEqual(['gap', 'not-appointed']);
    expect(await standing(b)).toBe('not shown');
  });
  test('a stranger who cites what never was puts nobody in doubt', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const seen = [{ ...b.cite(b.begin), id: 'ab'.repeat(32), seq: 7 }, b.cite(b.begin)].sort((x, y) =>
      x.id < y.id ? -1 : 1,
    );
    await b.on('2026-02-20').raw(stranger, { kind: 'seen', seen }, null);
    expect(await b.codes()).toEqual(['gap', 'not-appointed']);
    expect(await standing(b)).toBe('shown');
  });
  test('what a retirement cut off is no gap any more', async () => {
    const { b } = await lacking();
    await b.on('2026-03-01').retire(kd, 'KD', []);
    expect(await b.codes()).toEqual(['gap settled']);
    expect(await standing(b)).toBe('shown');
  });
  test('behind a hole in a chain all of it is in doubt, and a doubtful not-yet still counts', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(lz, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-03').check(kd, 'EI', 'T2', '2026-02-03');
    await b.on('2026-02-04').check(kd, 'HV', 'T2', '2026-02-04');
    await b.on('2026-02-10').check(kd, 'DM', 'T2', '2026-02-10', { outcome: 'not-yet' });
    b.edit(b.file(kd), (t) =>
      t
        .split('\n')
        .filter((_, i) => i !== 1)
        .join('\n'),
    );
    expect(await standing(b)).toBe('show again N ?');
    expect(await b.codes()).toEqual(['gap']);
  });
});

describe('retirement', () => {
  test('what is named and before it stands, what follows is cut off', async () => {
    const b = staffed.copy();
    const first = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-03').check(kd, 'EI', 'T2', '2026-02-03');
    const tablet = { ...kd, device: 'tablet' };
    await b.on('2026-02-04').check(tablet, 'HV', 'T2', '2026-02-04');
    await b.on('2026-02-10').retire(kd, 'KD', [first]);
    expect([await standing(b), await standing(b, 'EI'), await standing(b, 'HV')]).toEqual([
      'shown',
      'not shown',
      'not shown',
    ]);
    // the owner knew both when he cut them off
    expect(await b.codes()).toEqual(['after-retirement settled', 'after-retirement settled']);
  });
  test('of several the least stands, and none means nothing', async () => {
    const b = staffed.copy();
    const first = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const second = await b.on('2026-02-03').check(kd, 'EI', 'T2', '2026-02-03');
    await b.on('2026-02-10').retire(kd, 'KD', [second]);
    expect([await standing(b), await standing(b, 'EI')]).toEqual(['shown', 'shown']);
    await b.retire(kd, 'KD', [first]);
    expect([await standing(b), await standing(b, 'EI')]).toEqual(['shown', 'not shown']);
    await b.retire(kd, 'KD', []);
    expect(await standing(b)).toBe('not shown');
  });
  test('a retired key writes nothing more, and is never appointed again', async () => {
    const b = staffed.copy();
    await b.on('2026-02-10').retire(kd, 'KD', []);
    await expect(b.check(kd, 'DM', 'T2', '2026-02-10')).rejects.toThrow(/retired/);
    await b.appoint(kd, 'KD');
    expect(await b.codes()).toEqual(['after-retirement']);
  });
  test('an owner who is retired as a witness goes on as owner', async () => {
    const b = staffed.copy();
    await b.appoint(owner, 'OW');
    await b.on('2026-02-02').check(owner, 'DM', 'T2', '2026-02-02');
    const tablet = { ...owner, device: 'tablet' };
    await b.on('2026-02-03').retire(owner, 'OW', [], tablet);
    expect(await standing(b)).toBe('not shown');
    expect((await b.judged({ now: at('2026-03-01') })).authority.appointments.length).toBe(3);
  });
});

describe('ownership', () => {
  async function taken(): Promise<Book> {
    const b = staffed.copy();
    await b.succeed(next);
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    return b;
  }
  test('the key that was named takes over; what the old owner signs since counts for nothing', async () => {
    const b = await taken();
    const old = b.copy();
    await b.on('2026-02-10').act(next, 'take-over', null, []);
    await old.on('2026-02-09').appoint(stranger, 'ST');
    join(b, b.copy(), old);
    expect(await b.codes()).toEqual(['after-retirement']);
    const { authority } = await b.judged({ now: at('2026-03-01') });
    expect([authority.owner, authority.appointments.length]).toEqual([next.publicKey, 2]);
    await b.on('2026-02-12').appoint(stranger, 'ST', 'all', '2026-01-01', next);
    await b.check(stranger, 'EI', 'T2', '2026-02-12');
    expect([await standing(b), await standing(b, 'EI')]).toEqual(['shown', 'shown']);
    await expect(b.appoint(lz, 'LZ')).rejects.toThrow(/taken over/);
  });
  test('nobody takes over who was not named', async () => {
    const b = await taken();
    await b.on('2026-02-10').act(stranger, 'take-over', null, []);
    expect(await b.codes()).toEqual(['not-appointed']);
  });
  test('two take-overs that do not know each other: nobody is owner', async () => {
    const b = await taken();
    const apart = b.copy();
    await b.on('2026-02-10').act(next, 'take-over', null, []);
    await b.on('2026-02-11').appoint(stranger, 'ST', 'all', '2026-01-01', next);
    await apart.on('2026-02-10').act({ ...next, device: 'other' }, 'take-over', null, []);
    join(b, b.copy(), apart);
    await b.on('2026-02-12').check(stranger, 'EI', 'T2', '2026-02-12');
    expect([await standing(b), await standing(b, 'EI')]).toEqual(['shown', 'not shown']);
    const { notes } = await b.board({ on: '2026-03-01' });
    expect(notes.map((n) => n.say)).toContain('registerNote.owner-forked');
  });
  test('the board says when no successor is named', async () => {
    const says = async (b: Book) => (await b.board({ on: '2026-03-01' })).notes.map((n) => n.say);
    expect(await says(staffed.copy())).toContain('registerNote.no-successor');
    expect(await says(await taken())).not.toContain('registerNote.no-successor');
  });
});

describe('erasing', () => {
  test('a person is erased whatever was known when; a body of his that is gone is no problem', async () => {
    const b = staffed.copy();
    const id = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-10').act(owner, 'erase', 'DM', []);
    const row = async () =>
      (await b.board({ on: '2026-03-01', knownOn: '2026-02-05' })).people.find((p) => p.id === 'DM');
    expect(await row()).toMatchObject({ id: 'DM', erased: true, tickets: [] });
    expect((await row())?.tasks['T2']?.standing).toBe('not shown');
    b.remove(`bodies/${b.header(id).body}.json`);
    expect(await b.codes()).toEqual([]);
  });
  test('a missing body puts all tasks of its person in doubt, and of nobody else', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const id = await b.check(kd, 'DM', 'T4', '2026-02-02');
    await b.check(kd, 'EI', 'T2', '2026-02-02');
    b.remove(`bodies/${b.header(id).body}.json`);
    expect([await standing(b), await standing(b, 'EI')]).toEqual(['show again ?', 'shown']);
  });
  test('a missing appointment’s body: its witness’s checks are in doubt', async () => {
    const b = staffed.copy();
    const id = await b.appoint(stranger, 'ST');
    await b.on('2026-02-02').check(stranger, 'DM', 'T2', '2026-02-02');
    b.remove(`bodies/${b.header(id).body}.json`);
    expect(await standing(b)).toBe('show again ?');
  });
});

describe('settling a time', () => {
  test('a back-dated entry that the owner takes is in doubt no more', async () => {
    const b = staffed.copy();
    const cited = await b.on('2026-02-05').check(kd, 'EI', 'T2', '2026-02-05');
    const id = await b
      .on('2026-02-02')
      .raw(
        lz,
        { about: 'DM', seen: [b.cite(cited)] },
        checkBody('T2', '2026-02-02', { variant: { width: '4' } }),
      );
    expect(await standing(b)).toBe('show again ?');
    await b.on('2026-02-10').act(owner, 'settle', 'DM', [id]);
    expect(await b.codes()).toEqual(['back-dated settled']);
    expect(await standing(b)).toBe('shown');
  });
});
