/** Makes registers for tests: signers of fixed seeds, entries of any kind, honest or with one fault. */

import { type Board, type BoardAsked, boardOf } from '../../src/register/board.ts';
import type { BodyKind } from '../../src/register/bodies.ts';
import { hashOf, toHex } from '../../src/register/bytes.ts';
import { canonical, type JsonObject } from '../../src/register/canonical.ts';
import { writeInstant } from '../../src/register/days.ts';
import { type Header, idOf, lineOf, signedBytes } from '../../src/register/header.ts';
import { markerText, type RegisterFiles } from '../../src/register/held.ts';
import type { Judged } from '../../src/register/judged.ts';
import { publicKeyOf, type Signer, signPlain } from '../../src/register/keys.ts';
import { bodyPath, chainPath, MARKER } from '../../src/register/paths.ts';
import { openRegister } from '../../src/register/register.ts';
import type { TaskMap } from '../../src/register/taskMap.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import { type Draft, type Writing, type Written, withWritten, writeEntry } from '../../src/register/write.ts';
import { dayIn } from '../../src/schema/dayIn.ts';

export const verify = verifierOf(globalThis.crypto.subtle);

/** A signer whose seed is one byte over and over: for tests alone. */
export function signerOf(byte: number, device: string): Signer {
  const seed = new Uint8Array(32).fill(byte);
  return { publicKey: toHex(publicKeyOf(seed)), device, sign: async (m) => signPlain(seed, m) };
}

export const owner = signerOf(1, 'office');
export const kd = signerOf(2, 'kd-phone');
export const lz = signerOf(3, 'lz-phone');
export const stranger = signerOf(4, 'phone');
export const next = signerOf(5, 'safe');

/** T1 plain; T2 with two pairs; T3 wants a second; T4 good one month; T9 a heading over T1 and T4. */
export const map: TaskMap = {
  tasks: [
    task('T1', {
      revisions: [
        { n: 1, on: '2026-01-10', showAgain: false },
        { n: 2, on: '2026-03-01', showAgain: true },
        { n: 3, on: '2026-04-01', showAgain: false },
      ],
    }),
    task('T2', { variants: { width: ['4', '2', '6'], joint: ['socketed', 'butt'] } }),
    task('T3', { second: true }),
    task('T4', { months: 1 }),
    task('T9', { parts: ['T1', 'T4'] }),
    task('W1', {}),
  ],
};

function task(id: string, more: Partial<TaskMap['tasks'][number]>): TaskMap['tasks'][number] {
  const plain = { months: 12, second: false, tickets: [], variants: {}, parts: [], trainHours: 1 };
  return { id, ...plain, revisions: [{ n: 1, on: '2025-01-01', showAgain: false }], ...more };
}

export const at = (text: string): number => {
  const instant = Date.parse(text.length === 10 ? `${text}T12:00:00Z` : text);
  if (Number.isNaN(instant)) throw new Error(text);
  return instant;
};

const plainCheck = {
  revision: 1,
  variant: {},
  outcome: 'shown',
  manner: 'performed',
  help: 'alone',
  inSight: true,
  stopped: false,
  points: [],
  measured: [],
  evidence: null,
};

export const checkBody = (taskId: string, on: string, more: JsonObject = {}): JsonObject => ({
  ...plainCheck,
  task: taskId,
  on,
  ...more,
});

/** A register in the making. Time goes on by itself, a minute an entry, unless it is set. */
export class Book {
  files: RegisterFiles = {};
  begin = '';
  private salt = 0;
  private now = at('2026-01-01');

  static async begun(zone = 'UTC', person: string | null = 'OW', by: Signer = owner): Promise<Book> {
    const book = new Book();
    const written = await writeEntry(
      undefined,
      { kind: 'begin', about: person, body: { zone } },
      book.writing(by),
    );
    book.files = withWritten({ [MARKER]: markerText(written.entry) }, written);
    book.begin = written.entry;
    return book;
  }

  /** With KD and LZ appointed for everything from 2026-01-01. */
  static async staffed(zone = 'UTC'): Promise<Book> {
    const book = await Book.begun(zone);
    await book.appoint(kd, 'KD');
    await book.appoint(lz, 'LZ');
    return book;
  }

  copy(): Book {
    const book = new Book();
    Object.assign(book, { files: this.files, begin: this.begin, salt: this.salt + 1000, now: this.now });
    return book;
  }

  private readonly chance = (n: number): Uint8Array<ArrayBuffer> => {
    this.salt += 1;
    return new Uint8Array(n).fill(this.salt & 255).fill(this.salt >>> 8, 0, 1);
  };

  private writing(signer: Signer) {
    return { signer, now: this.now, chance: this.chance };
  }

  /** Sets the time of the next entry. */
  on(text: string): this {
    this.now = at(text);
    return this;
  }

  async judged(more: { now?: number; knownOn?: string; owner?: string } = {}): Promise<Judged> {
    const opened = await openRegister(this.files, { verify, dayIn, now: this.now, ...more });
    return opened.judged;
  }

  async board(asked: Omit<BoardAsked, 'map'> & { map?: TaskMap; now?: number }): Promise<Board> {
    const judged = await this.judged({
      now: asked.now ?? at('2030-01-01'),
      ...(asked.knownOn ? { knownOn: asked.knownOn } : {}),
    });
    return boardOf(judged, { map, ...asked });
  }

  async codes(more: { now?: number; owner?: string } = {}): Promise<string[]> {
    const { problems } = await this.judged({ now: at('2030-01-01'), ...more });
    return problems.map((p) => (p.settled ? `${p.code} settled` : p.code));
  }

  /** Writes an entry in its honest place, whether or not its signer may sign it. */
  async add(signer: Signer, draft: Draft): Promise<string> {
    this.now += 60_000;
    const written = await writeEntry(await this.judged(), draft, this.writing(signer));
    this.files = withWritten(this.files, written);
    return written.entry;
  }

  /** Signs by an act, which may refuse; a minute later than what was written last. */
  async sign(
    signer: Signer,
    act: (judged: Judged, writing: Writing) => Promise<Written>,
    device?: string,
  ): Promise<string> {
    this.now += 60_000;
    const written = await act(await this.judged(), { ...this.writing(signer), device });
    this.files = withWritten(this.files, written);
    return written.entry;
  }

  appoint(
    key: Signer,
    person: string,
    tasks: 'all' | readonly string[] = 'all',
    on = '2026-01-01',
    by = owner,
  ) {
    return this.add(by, { kind: 'appoint', about: person, key: key.publicKey, body: { tasks, on } });
  }

  check(signer: Signer, person: string, taskId: string, on: string, more: JsonObject = {}): Promise<string> {
    return this.add(signer, { kind: 'check', about: person, body: checkBody(taskId, on, more) });
  }

  act(
    signer: Signer,
    kind: BodyKind,
    about: string | null,
    target: readonly string[],
    more: JsonObject = {},
  ) {
    return this.add(signer, { kind, about, target, body: { why: 'because', ...more } });
  }

  second(signer: Signer, person: string, check: string): Promise<string> {
    return this.add(signer, { kind: 'second', about: person, target: [check], body: { saw: true } });
  }

  retire(key: Signer, person: string, after: readonly string[], by = owner): Promise<string> {
    return this.add(by, {
      kind: 'retire',
      about: person,
      key: key.publicKey,
      target: after,
      body: { why: 'left' },
    });
  }

  succeed(key: Signer, by = owner): Promise<string> {
    return this.add(by, { kind: 'succeed', key: key.publicKey, body: null });
  }

  /** Signs a header as it stands, with nothing seen to. */
  async raw(signer: Signer, header: Partial<Header>, body: JsonObject | null): Promise<string> {
    const salted = body === null ? null : canonical({ salt: toHex(this.chance(16)), ...body });
    this.now += 60_000;
    const full: Header = {
      v: 1,
      kind: 'check',
      register: this.begin,
      signer: signer.publicKey,
      device: signer.device,
      seq: 0,
      prev: null,
      seen: [],
      time: writeInstant(this.now),
      about: null,
      target: [],
      key: null,
      body: salted === null ? null : hashOf(salted),
      ...header,
    };
    const line = lineOf(full, toHex(await signer.sign(signedBytes(full))));
    const path = chainPath(full.signer, full.device);
    this.files = {
      ...this.files,
      [path]: `${this.files[path] ?? ''}${line}\n`,
      ...(salted === null || full.body === null ? {} : { [bodyPath(full.body)]: salted }),
    };
    return idOf(full);
  }

  /** Header of the entry with an id. */
  header(id: string): Header {
    for (const [path, text] of Object.entries(this.files)) {
      if (!path.startsWith('headers/')) continue;
      for (const line of text.split('\n').slice(0, -1)) {
        const { header } = JSON.parse(line) as { header: Header };
        if (idOf(header) === id) return header;
      }
    }
    throw new Error(`no entry ${id}`);
  }

  cite(id: string): Header['seen'][number] {
    const { signer, device, seq } = this.header(id);
    return { id, signer, device, seq };
  }

  file(signer: Signer): string {
    return chainPath(signer.publicKey, signer.device);
  }

  /** Changes the text of a file. */
  edit(path: string, change: (text: string) => string): void {
    const before = this.files[path];
    if (before === undefined) throw new Error(`no file ${path}`);
    const after = change(before);
    if (after === before) throw new Error(`nothing changed in ${path}`);
    this.files = { ...this.files, [path]: after };
  }

  remove(path: string): void {
    const { [path]: gone, ...rest } = this.files;
    if (gone === undefined) throw new Error(`no file ${path}`);
    this.files = rest;
  }
}
