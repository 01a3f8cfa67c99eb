/** Makes the vectors of `refused/` that are not there yet. Run: node tests/register/vectors/make.ts */
import { existsSync, writeFileSync } from 'node:fs';
import type { ProblemCode } from '../../../src/register/held.ts';
import { at, Book, checkBody, kd, lz, signerOf, stranger } from '../book.ts';

interface Fault {
  readonly name: string;
  readonly why: string;
  readonly codes: readonly ProblemCode[];
  /** How DM stands in T1 on 2026-02-20, and the code of why. */
  readonly stands: readonly [standing: string, code?: string];
  /** Brings one fault into a register in which DM showed T1 on 2026-02-02. */
  readonly bring: (book: Book, shown: string) => Promise<void> | void;
  /** Makes the register itself, where the fault lies in how it was made. */
  readonly start?: () => Promise<[Book, string]>;
}

const start = async (): Promise<[Book, string]> => {
  const book = await Book.staffed();
  const shown = await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
  await book.on('2026-02-03').check(lz, 'EI', 'T1', '2026-02-03');
  return [book, shown];
};

/** Puts one sign in place of another in the nth line of a file. */
const inLine = (n: number, from: string, to: string) => (text: string) =>
  text
    .split('\n')
    .map((line, i) => (i === n - 1 ? line.replace(from, to) : line))
    .join('\n');
const withoutLine = (n: number) => (text: string) => text.split('\n').filter((_, i) => i !== n - 1).join('\n');

const nobody: Fault['stands'] = ['not shown'];
const well: Fault['stands'] = ['shown'];
const doubt: Fault['stands'] = ['show again', '?'];

const faults: readonly Fault[] = [
  {
    name: 'time-changed-after-signing',
    why: 'KD’s check is dated a day earlier than he signed it',
    codes: ['altered'],
    stands: nobody,
    // LZ cites the last entry of KD's chain; here nothing follows the check that was changed.
    start: async () => {
      const book = await Book.staffed();
      return [book, await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02')];
    },
    bring: (b) => b.edit(b.file(kd), inLine(1, '"time":"2026-02-02', '"time":"2026-02-01')),
  },
  {
    name: 'person-changed-after-signing',
    why: 'the check is made out to somebody else than the witness signed for',
    codes: ['altered'],
    stands: nobody,
    start: async () => {
      const book = await Book.staffed();
      return [book, await book.on('2026-02-02').check(kd, 'ZZ', 'T1', '2026-02-02')];
    },
    bring: (b) => b.edit(b.file(kd), inLine(1, '"about":"ZZ"', '"about":"DM"')),
  },
  {
    name: 'outcome-changed-in-the-body',
    why: 'a not-yet was made a showing in the body’s file; the hash in the header says otherwise',
    codes: ['altered'],
    stands: doubt,
    bring: async (b) => {
      const id = await b.on('2026-02-10').check(kd, 'DM', 'T1', '2026-02-10', { outcome: 'not-yet' });
      b.edit(`bodies/${b.header(id).body}.json`, (t) => t.replace('not-yet', 'shown'));
    },
  },
  {
    name: 'signature-of-another-key',
    why: 'a stranger signed an entry that names KD as its signer',
    codes: ['altered'],
    stands: well,
    bring: async (b, shown) => {
      const signer = { ...stranger, publicKey: kd.publicKey };
      const header = { seq: 1, prev: shown, device: kd.device, about: 'DM' };
      await b.on('2026-02-10').raw(signer, header, checkBody('T1', '2026-02-10', { outcome: 'not-yet' }));
    },
  },
  {
    name: 'line-with-a-space-added',
    why: 'the same values in other bytes: not the canonical form',
    codes: ['altered'],
    stands: nobody,
    start: async () => {
      const book = await Book.staffed();
      return [book, await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02')];
    },
    bring: (b) => b.edit(b.file(kd), inLine(1, '{"header":', '{"header": ')),
  },
  {
    name: 'marker-of-another-beginning',
    why: 'the folder’s pointer names a beginning that is not here',
    codes: ['altered'],
    stands: well,
    bring: (b) => b.edit('register.json', (t) => t.replace(/"begin":"[0-9a-f]{4}/, '"begin":"0000')),
  },
  {
    name: 'line-taken-out-of-the-middle',
    why: 'KD’s second of three entries is gone; his third names it as the one before',
    codes: ['gap'],
    // What is missing may have been KD's not-yet.
    stands: doubt,
    start: async () => {
      const book = await Book.staffed();
      const shown = await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
      await book.on('2026-02-10').check(kd, 'DM', 'T1', '2026-02-10', { outcome: 'not-yet' });
      await book.check(kd, 'EI', 'T1', '2026-02-10');
      return [book, shown];
    },
    bring: (b) => b.edit(b.file(kd), withoutLine(2)),
  },
  {
    name: 'newest-line-taken-off',
    why: 'KD’s not-yet is gone; LZ had seen it',
    codes: ['gap'],
    stands: doubt,
    start: async () => {
      const book = await Book.staffed();
      const shown = await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
      await book.on('2026-02-10').check(kd, 'DM', 'T1', '2026-02-10', { outcome: 'not-yet' });
      await book.on('2026-02-11').check(lz, 'EI', 'T1', '2026-02-11');
      return [book, shown];
    },
    bring: (b) => b.edit(b.file(kd), withoutLine(2)),
  },
  {
    name: 'number-left-out',
    why: 'KD signed number 2 straight after number 0',
    codes: ['gap'],
    stands: doubt,
    bring: async (b, shown) => {
      await b.on('2026-02-10').raw(kd, { seq: 2, prev: shown, about: 'EI' }, checkBody('T1', '2026-02-10'));
    },
  },
  {
    name: 'two-entries-of-one-number',
    why: 'KD’s key signed two different entries as number 1: a copied key or an old backup',
    codes: ['fork'],
    stands: doubt,
    start: async () => {
      const book = await Book.staffed();
      const first = await book.on('2026-02-01').check(kd, 'EI', 'T1', '2026-02-01');
      const shown = await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
      await book.on('2026-02-03').raw(kd, { seq: 1, prev: first, about: 'EI' }, checkBody('T4', '2026-02-03'));
      return [book, shown];
    },
    bring: () => {},
  },
  {
    name: 'signer-never-appointed',
    why: 'nobody appointed this key for anything',
    codes: ['not-appointed'],
    stands: nobody,
    start: async () => {
      const book = await Book.staffed();
      return [book, await book.on('2026-02-02').check(stranger, 'DM', 'T1', '2026-02-02')];
    },
    bring: () => {},
  },
  {
    name: 'appointed-for-another-task',
    why: 'the witness was appointed for T4, and signed T1',
    codes: ['not-appointed'],
    stands: nobody,
    start: async () => {
      const book = await Book.begun();
      await book.appoint(kd, 'KD', ['T4']);
      return [book, await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02')];
    },
    bring: () => {},
  },
  {
    name: 'appointed-from-a-later-day',
    why: 'the appointment begins the day after what was seen',
    codes: ['not-appointed'],
    stands: nobody,
    start: async () => {
      const book = await Book.begun();
      await book.appoint(kd, 'KD', 'all', '2026-02-03');
      return [book, await book.on('2026-02-04').check(kd, 'DM', 'T1', '2026-02-02')];
    },
    bring: () => {},
  },
  {
    name: 'appointed-after-the-check-was-entered',
    why: 'an appointment that is entered later does not reach back, whatever its first day',
    codes: ['not-appointed'],
    stands: nobody,
    start: async () => {
      const book = await Book.begun();
      await book.appoint(lz, 'LZ');
      const shown = await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02');
      await book.on('2026-02-03').appoint(kd, 'KD', 'all', '2026-01-01');
      return [book, shown];
    },
    bring: () => {},
  },
  {
    name: 'appointed-by-a-witness',
    why: 'only the owner appoints',
    codes: ['not-appointed'],
    stands: well,
    bring: async (b) => {
      await b.on('2026-02-10').appoint(stranger, 'ST', 'all', '2026-01-01', kd);
    },
  },
  {
    name: 'key-appointed-for-a-second-person',
    why: 'a key is bound to one person for good',
    codes: ['not-appointed'],
    stands: well,
    bring: async (b) => {
      await b.on('2026-02-10').appoint(kd, 'XX');
    },
  },
  {
    name: 'witness-signs-for-himself',
    why: 'KD’s key signed that KD showed T1',
    codes: ['own-signature'],
    stands: well,
    bring: async (b) => {
      await b.on('2026-02-10').check(kd, 'KD', 'T1', '2026-02-10');
    },
  },
  {
    name: 'witness-signs-for-himself-with-a-second-key',
    why: 'a second key of the same person is he himself',
    codes: ['own-signature'],
    stands: nobody,
    start: async () => {
      const book = await Book.begun();
      const other = signerOf(7, 'tablet');
      await book.appoint(kd, 'DM');
      await book.appoint(other, 'DM');
      return [book, await book.on('2026-02-02').check(other, 'DM', 'T1', '2026-02-02')];
    },
    bring: () => {},
  },
  {
    name: 'written-after-retirement',
    why: 'KD’s key was retired after its first entry, and went on',
    codes: ['after-retirement'],
    stands: well,
    bring: async (b, shown) => {
      await b.on('2026-02-10').retire(kd, 'KD', [shown]);
      const header = { seq: 1, prev: shown, about: 'DM' };
      await b.on('2026-02-11').raw(kd, header, checkBody('T1', '2026-02-11', { outcome: 'not-yet' }));
    },
  },
  {
    name: 'dated-before-what-it-follows',
    why: 'LZ’s entry is dated before the entry of KD that it cites',
    codes: ['back-dated'],
    stands: doubt,
    start: async () => {
      const book = await Book.staffed();
      const cited = await book.on('2026-02-05').check(kd, 'EI', 'T1', '2026-02-05');
      const seen = [book.cite(cited)];
      const shown = await book.on('2026-02-02').raw(lz, { about: 'DM', seen }, checkBody('T1', '2026-02-02'));
      return [book, shown];
    },
    bring: () => {},
  },
  {
    name: 'name-twice-in-a-line',
    why: 'two readers could take it differently',
    codes: ['unreadable'],
    stands: nobody,
    start: async () => {
      const book = await Book.staffed();
      return [book, await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02')];
    },
    bring: (b) => b.edit(b.file(kd), inLine(1, '{"about":"DM",', '{"about":"DM","about":"DM",')),
  },
  {
    name: 'field-nobody-knows-in-a-header',
    why: 'unknown fields are refused, signed or not',
    codes: ['unreadable'],
    stands: well,
    bring: async (b, shown) => {
      const more = { remark: 'hello' } as object;
      await b.on('2026-02-10').raw(kd, { seq: 1, prev: shown, about: 'DM', ...more }, checkBody('T1', '2026-02-10'));
    },
  },
  {
    name: 'stopped-and-shown-at-once',
    why: 'a stopped attempt shows nothing; the body is none',
    codes: ['unreadable'],
    stands: well,
    bring: async (b) => {
      await b.on('2026-02-10').check(kd, 'EI', 'T4', '2026-02-10', { stopped: true });
    },
  },
  {
    name: 'seen-after-the-day-of-entry',
    why: 'nobody has seen what is yet to come',
    codes: ['unreadable'],
    stands: well,
    bring: async (b) => {
      await b.on('2026-02-10').check(kd, 'EI', 'T4', '2026-02-11');
    },
  },
  {
    name: 'key-of-small-order',
    why: 'one signature of such a key fits many texts: no such key signs anything',
    codes: ['altered'],
    stands: well,
    bring: async (b) => {
      const key = 'c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a';
      const sign = async () => new Uint8Array(64);
      await b.on('2026-02-10').raw({ publicKey: key, device: 'x', sign }, { about: 'DM' }, checkBody('T1', '2026-02-10'));
    },
  },
  {
    name: 'last-line-cut',
    why: 'the write was cut off in the middle of a line',
    codes: ['torn-tail'],
    stands: nobody,
    start: async () => {
      const book = await Book.staffed();
      return [book, await book.on('2026-02-02').check(kd, 'DM', 'T1', '2026-02-02')];
    },
    bring: (b) => b.edit(b.file(kd), (t) => t.slice(0, -20)),
  },
  {
    name: 'body-taken-away',
    why: 'the body of an entry about DM is not here, and DM is not erased: all his tasks are in doubt',
    codes: ['body-missing'],
    stands: doubt,
    bring: async (b) => {
      const id = await b.on('2026-02-10').check(kd, 'DM', 'T4', '2026-02-10');
      b.remove(`bodies/${b.header(id).body}.json`);
    },
  },
  {
    name: 'chain-of-another-register',
    why: 'the same witness’s chain, out of a register that began differently',
    codes: ['foreign-file', 'foreign-file'],
    stands: well,
    bring: async (b) => {
      const other = await Book.begun('Europe/Berlin', null, signerOf(8, 'elsewhere'));
      await other.on('2026-02-04').check(kd, 'DM', 'T1', '2026-02-04', { outcome: 'not-yet' });
      const strays = Object.entries(other.files).filter(([path]) => path !== 'register.json');
      for (const [path, text] of strays) b.files = { ...b.files, [path]: `${b.files[path] ?? ''}${text}` };
    },
  },
  {
    name: 'beginning-not-in-the-past',
    why: 'an entry that cites nothing knows of no appointment, and of no register',
    codes: ['foreign-file'],
    stands: nobody,
    start: async () => {
      const book = await Book.staffed();
      return [book, await book.on('2026-02-02').raw(kd, { about: 'DM' }, checkBody('T1', '2026-02-02'))];
    },
    bring: () => {},
  },
];

for (const { name, why, codes, stands, bring, start: own = start } of faults) {
  const file = new URL(`./refused/${name}.json`, import.meta.url);
  if (existsSync(file)) continue;
  const [book, shown] = await own();
  await bring(book, shown);
  const now = new Date(at('2026-02-20')).toISOString();
  const [standing, code = null] = stands;
  const vector = { why, codes, now, stands: { person: 'DM', task: 'T1', on: '2026-02-20', standing, code }, files: book.files };
  writeFileSync(file, `${JSON.stringify(vector, null, 1)}\n`);
  console.log(name);
}
