/**
 * What may be tried against a register, one test a row: what is caught is caught; of what is not, the board or
 * FORMAT.md says so.
 */
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { holdFiles, type RegisterFiles } from '../../src/register/held.ts';
import { mergeRegisters } from '../../src/register/merge.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { at, Book, checkBody, kd, lz, owner, signerOf, stranger, verify } from './book.ts';

const now = at('2026-06-01');
const page = readFileSync(new URL('../../src/register/FORMAT.md', import.meta.url), 'utf8');
const nothing = page
  .slice(page.indexOf('### What nothing can prevent'), page.indexOf('## Problems'))
  .replaceAll('\n', ' ');

/** The row of FORMAT.md's table of threats that begins so: what shows it, always or not, what slips through. */
function told(threat: string): { shows: string; always: string; slips: string } {
  const table = page.slice(page.indexOf('## Threats'), page.indexOf('### What nothing can prevent'));
  const rows = table.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
  const found = rows.find(([, first]) => first === threat);
  if (found === undefined) throw new Error(`no row for ${threat}`);
  const [, , shows = '', always = '', slips = ''] = found;
  return { shows, always, slips };
}

let staffed: Book;
beforeAll(async () => {
  staffed = await Book.staffed();
});
const join = async (a: RegisterFiles, b: RegisterFiles): Promise<RegisterFiles> =>
  mergeRegisters(await holdFiles(a, verify), await holdFiles(b, verify), { now, dayIn }).files;

const rowOf = async (b: Book, person = 'DM', task = 'T2') => {
  const board = await b.board({ on: '2026-06-01', people: [person] });
  const row = board.people.find((p) => p.id === person)?.tasks[task];
  return [row?.standing, ...(row?.why ?? []).map((w) => w.code)].join(' ');
};
/** Numbers and times that a board prints, by device. */
const printed = async (b: Book, more: { now?: number } = {}) => {
  const { signers } = await b.board({ on: '2026-06-01', ...more });
  return Object.fromEntries(signers.map((s) => [s.device, [s.last, s.at]]));
};
/** Takes the line of an entry out of its file. */
function drop(b: Book, id: string): void {
  const { signer, device } = b.header(id);
  const signed = [kd, lz, owner, stranger].find((s) => s.publicKey === signer) ?? owner;
  const path = b.file({ ...signed, device });
  const kept = (b.files[path] ?? '')
    .split('\n')
    .slice(0, -1)
    .filter((line) => {
      const { body, seq } = b.header(id);
      const { header } = JSON.parse(line);
      return header.seq !== seq || header.body !== body;
    });
  if (kept.length === 0) b.remove(path);
  else b.edit(path, () => kept.map((line) => `${line}\n`).join(''));
}

describe('forged record, no key', () => {
  test('caught: a line signed by somebody else than it says, or by a key that nobody appointed', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').raw({ ...stranger, publicKey: kd.publicKey }, { about: 'DM', seen: [] }, {});
    expect(await b.codes()).toEqual(['altered']);
    const c = staffed.copy();
    await c.on('2026-02-02').check(stranger, 'DM', 'T2', '2026-02-02');
    expect(await c.codes()).toEqual(['not-appointed']);
    expect(await rowOf(c)).toBe('not shown');
  });
  test('not caught, and FORMAT.md says so: a key that a dishonest owner appoints', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').appoint(stranger, 'invented');
    await b.on('2026-02-03').check(stranger, 'DM', 'T2', '2026-02-03');
    expect([await b.codes(), await rowOf(b)]).toEqual([[], 'shown']);
    expect(told('an entry signed with no right key').slips).toMatch(/owner appoints/);
    expect(nothing).toMatch(/dishonest owner who invents a second person/);
  });
});

describe('altered record', () => {
  test('caught: in the header, in the body, in the signature', async () => {
    const b = staffed.copy();
    const id = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02', { outcome: 'not-yet' });
    const path = `bodies/${b.header(id).body}.json`;
    const changes: [string, (t: string) => string, string][] = [
      [b.file(kd), (t) => t.replace('"about":"DM"', '"about":"EI"'), 'altered'],
      [
        b.file(kd),
        (t) => t.replace(/"signature":"./, (s) => s.slice(0, -1) + (s.endsWith('0') ? '1' : '0')),
        'altered',
      ],
      [path, (t) => t.replace('not-yet', 'shown'), 'altered'],
    ];
    for (const [file, change, code] of changes) {
      const c = b.copy();
      c.edit(file, change);
      expect(await c.codes(), file).toContain(code);
      expect(await rowOf(c)).not.toBe('shown');
    }
    expect(told('an entry changed afterwards')).toMatchObject({ always: 'yes', slips: '' });
  });
});

describe('deleted, middle of a chain', () => {
  test('caught once a later entry is held', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const middle = await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03', { outcome: 'not-yet' });
    await b.on('2026-02-04').check(kd, 'EI', 'T2', '2026-02-04');
    expect(await rowOf(b)).toBe('show again N');
    drop(b, middle);
    expect(await b.codes()).toEqual(['gap']);
    // what may have been spoken against is in doubt, and so is what follows in that chain
    expect([await rowOf(b), await rowOf(b, 'EI')]).toEqual(['show again ?', 'show again ?']);
    expect(told('an entry taken out of the middle').always).toMatch(/once a later entry is held/);
  });
});

describe('deleted, newest of a chain', () => {
  async function newest() {
    const b = staffed.copy();
    await b.on('2026-02-02').check(lz, 'DM', 'T2', '2026-02-02');
    const last = await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03', { outcome: 'not-yet' });
    return { b, last };
  }
  test('caught where somebody cited it', async () => {
    const { b, last } = await newest();
    await b.on('2026-02-04').check(lz, 'EI', 'T2', '2026-02-04');
    drop(b, last);
    expect([await b.codes(), await rowOf(b)]).toEqual([['gap'], 'show again ?']);
  });
  test('caught by a copy that still has it: joined, it is back', async () => {
    const { b, last } = await newest();
    const whole = b.files;
    drop(b, last);
    expect([await b.codes(), await rowOf(b)]).toEqual([[], 'shown']);
    b.files = await join(b.files, whole);
    expect(await rowOf(b)).toBe('show again N');
  });
  test('not caught where nobody shared it: FORMAT.md says so, and the board shows every last number', async () => {
    const { b, last } = await newest();
    const before = await printed(b);
    drop(b, last);
    const after = await printed(b);
    expect([before['kd-phone'], after['kd-phone']]).toEqual([[0, '2026-02-03T12:01:00.000Z'], undefined]);
    expect(told('the newest entries taken off').slips).toMatch(/never shared/);
    expect(nothing).toMatch(/A tail that was never shared with anyone/);
  });
});

describe('whole signer removed', () => {
  test('caught by citations of him', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(lz, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03', { outcome: 'not-yet' });
    await b.on('2026-02-04').check(lz, 'EI', 'T2', '2026-02-04');
    b.remove(b.file(kd));
    expect([await b.codes(), await rowOf(b)]).toEqual([['gap'], 'show again ?']);
  });
  test('caught where the owner is taken out: nothing of the register is left to be read', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(lz, 'DM', 'T2', '2026-02-02');
    b.remove(b.file(owner));
    await expect(b.codes()).rejects.toThrow(/no beginning/);
  });
  test('not caught where nobody cited him: his appointment is left, and FORMAT.md says so', async () => {
    const b = staffed.copy();
    await b.on('2026-02-03').check(kd, 'DM', 'T2', '2026-02-03', { outcome: 'not-yet' });
    b.remove(b.file(kd));
    expect(await b.codes()).toEqual([]);
    const judged = await b.judged({ now });
    expect(judged.authority.appointments.some((a) => a.key === kd.publicKey)).toBe(true);
    expect(told('all of one signer taken out').always).toMatch(/if one is left/);
  });
});

describe('rollback of a folder to an old state', () => {
  async function rolled() {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const old = b.files;
    await b.on('2026-02-10').check(kd, 'DM', 'T2', '2026-02-10', { outcome: 'not-yet' });
    return { b, old };
  }
  test('caught by a device that had seen more: what it signs cites what is gone', async () => {
    const { b, old } = await rolled();
    await b.on('2026-02-11').check(lz, 'EI', 'T2', '2026-02-11');
    const folder = b.copy();
    folder.files = { ...b.files, [b.file(kd)]: old[b.file(kd)] ?? '' };
    expect([await folder.codes(), await rowOf(folder)]).toEqual([['gap'], 'show again ?']);
  });
  test('caught by a device that holds more: joined, nothing is lost, whichever way', async () => {
    const { b, old } = await rolled();
    expect(await join(old, b.files)).toEqual(await join(b.files, old));
    const back = b.copy();
    back.files = await join(old, b.files);
    expect(await rowOf(back)).toBe('show again N');
  });
  test('caught when its own device writes on from the old state: a fork', async () => {
    const { b, old } = await rolled();
    const restored = b.copy();
    restored.files = old;
    await restored.on('2026-02-12').check(kd, 'EI', 'T2', '2026-02-12');
    b.files = await join(b.files, restored.files);
    expect(await b.codes()).toEqual(['fork']);
  });
  test('not caught on a new device with the old folder alone: FORMAT.md says so; the last number is lower', async () => {
    const { b, old } = await rolled();
    const before = await printed(b);
    const folder = b.copy();
    folder.files = old;
    expect([await folder.codes(), await rowOf(folder)]).toEqual([[], 'shown']);
    expect((await printed(folder))['kd-phone']).toEqual([0, '2026-02-02T12:01:00.000Z']);
    expect(before['kd-phone']).toEqual([1, '2026-02-10T12:01:00.000Z']);
    const row = told('the whole folder put back to an earlier state');
    expect(row.shows).toMatch(/last numbers printed on every board/);
    expect(row.slips).toMatch(/new device that holds only the old folder/);
  });
});

describe('reordered files', () => {
  test('no effect: lines backwards, all in one file, the files in another order', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-03').check(lz, 'DM', 'T2', '2026-02-03', { outcome: 'not-yet' });
    const want = await b.board({ on: '2026-03-01' });
    const lines = Object.entries(b.files)
      .filter(([path]) => path.startsWith('headers/'))
      .flatMap(([, text]) => text.split('\n').filter((l) => l !== ''));
    const rest = Object.entries(b.files).filter(([path]) => !path.startsWith('headers/'));
    b.files = Object.fromEntries([
      [
        'headers/all.jsonl',
        lines
          .reverse()
          .map((l) => `${l}\n`)
          .join(''),
      ],
      ...rest.reverse(),
    ]);
    expect([await b.codes(), await b.board({ on: '2026-03-01' })]).toEqual([[], want]);
  });
  test('between two who never saw each other there is no order: both are looked at, the lower stands', async () => {
    const [one, two] = [staffed.copy(), staffed.copy()];
    await one.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await two.on('2026-02-02').check(lz, 'DM', 'T2', '2026-02-02', { outcome: 'not-yet' });
    one.files = await join(one.files, two.files);
    expect(await rowOf(one)).toBe('show again N');
    expect(told('files or lines in another order').slips).toMatch(/no order/);
  });
});

describe('back-dated time', () => {
  test('caught when it is earlier than its own last entry, or than anything it has seen', async () => {
    const b = staffed.copy();
    const first = await b.on('2026-02-10').check(kd, 'EI', 'T2', '2026-02-10');
    const early = { about: 'DM', kind: 'check', time: '2026-02-02T12:00:00.000Z' };
    const own = b.copy();
    await own.raw(kd, { ...early, prev: first, seq: 1 }, checkBody('T2', '2026-02-02'));
    expect([await own.codes(), await rowOf(own)]).toEqual([['back-dated'], 'show again ?']);
    const seen = b.copy();
    await seen.raw(lz, { ...early, seen: [b.cite(first)] }, checkBody('T2', '2026-02-02'));
    expect([await seen.codes(), await rowOf(seen)]).toEqual([['back-dated'], 'show again ?']);
    expect(told('a clock set back').always).toMatch(/behind what is cited/);
  });
  test('not caught after all it cites: the board takes the day entered from the citations, FORMAT.md says the rest', async () => {
    const b = staffed.copy();
    const id = await b.on('2026-01-02').check(kd, 'DM', 'T2', '2026-01-02');
    expect(await b.codes()).toEqual([]);
    expect(b.header(id).time).toBe('2026-01-02T12:01:00.000Z');
    expect(told('a clock set back').slips).toMatch(/a false time after all it cites/);
    expect(page).toMatch(
      /`time` is the signer's word; only the order that the citations force is more than that/,
    );
  });
});

/** One key writes on from one state in two places. */
async function twice(): Promise<{ b: Book; left: Book; right: Book; first: string; second: string }> {
  const b = staffed.copy();
  await b.on('2026-02-01').check(kd, 'EI', 'T2', '2026-02-01');
  const [left, right] = [b.copy(), b.copy()];
  const first = await left.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
  const second = await right.on('2026-02-03').check(kd, 'HV', 'T2', '2026-02-03');
  return { b, left, right, first, second };
}

describe('fork', () => {
  test('caught when both branches are held: both in doubt, what was before is not', async () => {
    const { b, left, right } = await twice();
    b.files = await join(left.files, right.files);
    expect(await b.codes()).toEqual(['fork']);
    expect([await rowOf(b), await rowOf(b, 'HV'), await rowOf(b, 'EI')]).toEqual([
      'show again ?',
      'show again ?',
      'shown',
    ]);
    expect((await b.board({ on: '2026-03-01' })).notes).toContainEqual({
      say: 'registerNote.problems',
      values: { count: 1 },
    });
  });
  test('not caught while the branches never meet: FORMAT.md says so', async () => {
    const { left, right } = await twice();
    expect([await left.codes(), await right.codes()]).toEqual([[], []]);
    const row = told('two histories from one key (copied key, old backup)');
    expect([row.always, row.slips]).toEqual(['when both are held', 'branches that never meet']);
  });
});

describe('cloned key', () => {
  test('caught when owner and thief both write, and ended by a retirement that needs no clock', async () => {
    const { b, left, right, first } = await twice();
    b.files = await join(left.files, right.files);
    await b.on('2026-02-10').retire(kd, 'KD', [first]);
    expect((await b.codes()).sort()).toEqual(['after-retirement settled', 'fork settled']);
    expect([await rowOf(b), await rowOf(b, 'HV')]).toEqual(['shown', 'not shown']);
  });
  test('caught on a second device: a retirement cuts off every device that it does not name', async () => {
    const b = staffed.copy();
    const honest = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-03').check({ ...kd, device: 'thief' }, 'HV', 'T2', '2026-02-03');
    expect(Object.keys(await printed(b))).toContain('thief');
    await b.on('2026-02-10').retire(kd, 'KD', [honest]);
    expect([await rowOf(b), await rowOf(b, 'HV')]).toEqual(['shown', 'not shown']);
  });
  test('not caught when the thief writes only after the holder stopped: FORMAT.md says so', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    await b.on('2026-02-09').check(kd, 'HV', 'T2', '2026-02-09'); // the same key in another hand
    expect([await b.codes(), await rowOf(b, 'HV')]).toEqual([[], 'shown']);
    expect(told('a stolen key').slips).toMatch(/only after the holder stopped/);
    expect(page).toMatch(/does \*\*not\*\* prove .*who held the phone/);
  });
});

describe('restored backup of own device', () => {
  test('caught as a fork; the owner says which branch stands, and it ends', async () => {
    const { b, left, right, second } = await twice();
    b.files = await join(left.files, right.files);
    await b.on('2026-02-10').act(owner, 'settle', 'HV', [second]);
    expect(await b.codes()).toEqual(['fork settled']);
    expect([await rowOf(b), await rowOf(b, 'HV')]).toEqual(['not shown', 'shown']);
  });
});

describe('revoked witness', () => {
  test('caught whatever his clock says: what follows the last entry that stands counts for nothing', async () => {
    const b = staffed.copy();
    const last = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const apart = b.copy();
    await b.on('2026-02-10').retire(kd, 'KD', [last]);
    await apart.on('2026-02-05').check(kd, 'HV', 'T2', '2026-02-05'); // he has not seen it, or says so
    b.files = await join(b.files, apart.files);
    expect(await b.codes()).toEqual(['after-retirement']);
    expect([await rowOf(b), await rowOf(b, 'HV')]).toEqual(['shown', 'not shown']);
  });
  test('not caught: what he honestly signed and had not shared; copies it has not reached; FORMAT.md says so', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const unaware = b.copy();
    await b.on('2026-02-10').retire(kd, 'KD', []);
    expect([await rowOf(b), await rowOf(unaware)]).toEqual(['not shown', 'shown']);
    const { slips } = told('a witness taken off');
    expect(slips).toMatch(/had not shared by then/);
    expect(slips).toMatch(/has not reached/);
  });
});

describe('colluding witness', () => {
  test('not caught by any signature: it counts, and FORMAT.md says so', async () => {
    const b = staffed.copy();
    const id = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
    expect(await rowOf(b, 'DM', 'T3')).toBe('not shown 2'); // one alone is not enough where two are wanted
    await b.second(lz, 'DM', id);
    expect([await b.codes(), await rowOf(b, 'DM', 'T3')]).toEqual([[], 'shown']);
    expect(told('a false fact signed with a good key')).toMatchObject({ always: 'no' });
    expect(nothing).toMatch(/Two witnesses who lie together/);
  });
  test('one person with two keys is caught: by person he is his own second, and signs for himself', async () => {
    const b = staffed.copy();
    const other = signerOf(6, 'kd-tablet');
    await b.appoint(other, 'KD');
    const id = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02');
    await b.second(other, 'DM', id);
    await b.check(other, 'KD', 'T2', '2026-02-02');
    expect(await b.codes()).toEqual(['own-signature', 'own-signature']);
    expect([await rowOf(b, 'DM', 'T3'), await rowOf(b, 'KD')]).toEqual(['not shown 2', 'not shown']);
    expect(told('a witness signs for himself').always).toMatch(/^by person/);
  });
});

describe('wrong clock', () => {
  test('caught beyond 24 h ahead: shown on the board, not counted until its time has come', async () => {
    const b = staffed.copy();
    await b.on('2026-02-12').check(kd, 'DM', 'T2', '2026-02-12');
    const early = await b.board({ on: '2026-02-12', people: ['DM'], now: at('2026-02-10') });
    expect(early.people.find((p) => p.id === 'DM')?.tasks['T2']?.standing).toBe('not shown');
    expect(early.notes.map((n) => n.say)).toContain('registerNote.ahead');
    expect(await rowOf(b)).toBe('shown');
    expect(told('a clock set ahead').always).toBe('beyond 24 h');
  });
  test('not caught within 24 h, nor where the reader’s own is wrong: FORMAT.md says so, the board shows how old every head is', async () => {
    const b = staffed.copy();
    await b.on('2026-02-12').check(kd, 'DM', 'T2', '2026-02-12');
    const early = await b.board({ on: '2026-02-12', people: ['DM'], now: at('2026-02-11T13:00:00Z') });
    expect(early.people.find((p) => p.id === 'DM')?.tasks['T2']?.standing).toBe('shown');
    expect(early.notes.map((n) => n.say)).not.toContain('registerNote.ahead');
    expect(told('a clock set ahead').slips).toMatch(/less than that/);
    expect((await printed(b))['kd-phone']?.[1]).toBe('2026-02-12T12:01:00.000Z');
  });
});

describe('withheld sync', () => {
  test('not caught until joined: the board shows the age of each signer’s head, and FORMAT.md says so', async () => {
    const b = staffed.copy();
    await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    const back = b.copy();
    await back.on('2026-05-01').check(kd, 'DM', 'T2', '2026-05-01', { outcome: 'not-yet' });
    expect([await b.codes(), await rowOf(b)]).toEqual([[], 'shown']);
    expect((await printed(b))['kd-phone']).toEqual([0, '2026-02-02T12:01:00.000Z']);
    expect(told('entries held back from everyone')).toMatchObject({
      shows: expect.stringMatching(/last number and when/),
      always: 'no',
      slips: expect.stringMatching(/until copies are joined/),
    });
    b.files = await join(b.files, back.files);
    expect(await rowOf(b)).toBe('show again N');
  });
});
