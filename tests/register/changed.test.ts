/**
 * Every change of one byte of any header or body of a small register is found: at every place, whatever stands there
 * afterwards. A file's bytes become a text by the folder's own reader.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { textOf } from '../../src/cli/register/folderDisk.ts';
import { holdFiles, type RegisterFiles } from '../../src/register/held.ts';
import { NoRegister } from '../../src/register/judged.ts';
import { openRegister } from '../../src/register/register.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { at, verify } from './book.ts';
import { everyKind } from './everyKind.ts';

const now = at('2026-06-01');
/** One line or body, in a file of its own: whatever is found in it is found in its file. */
interface Piece {
  readonly path: string;
  readonly bytes: Buffer;
  readonly kind: string;
}
let files: RegisterFiles;
let headers: readonly Piece[];
let bodies: readonly Piece[];
beforeAll(async () => {
  files = (await everyKind({ erased: false })).book.files;
  const entries = Object.entries(files);
  headers = entries
    .filter(([path]) => path.startsWith('headers/'))
    .flatMap(([path, text]) =>
      text
        .split('\n')
        .slice(0, -1)
        .map((line) => ({
          path,
          bytes: Buffer.from(`${line}\n`),
          kind: JSON.parse(line).header.kind as string,
        })),
    );
  bodies = entries
    .filter(([path]) => path.startsWith('bodies/'))
    .map(([path, text]) => ({ path, bytes: Buffer.from(text), kind: 'body' }));
});

/** Reads a piece with one byte changed: what is wrong with its file. */
async function changed({ path, bytes }: Piece, place: number, value: number): Promise<boolean> {
  const copy = Buffer.from(bytes);
  copy[place] = value;
  const { problems } = await holdFiles({ [path]: textOf(copy) }, verify);
  return problems.length > 0 && problems.every((p) => p.file === path && p.settled !== true);
}
/** Changes that nobody noticed, of every place of these pieces. */
async function unnoticed(
  pieces: readonly Piece[],
  values: (byte: number, place: number) => readonly number[],
) {
  const missed: string[] = [];
  let tried = 0;
  for (const piece of pieces) {
    const all: Promise<void>[] = [];
    for (const [place, byte] of piece.bytes.entries()) {
      for (const value of values(byte, place)) {
        if (value === byte) continue;
        tried += 1;
        all.push(
          changed(piece, place, value).then((found) => {
            if (!found) missed.push(`${piece.kind} ${piece.path} byte ${place}: ${byte} to ${value}`);
          }),
        );
      }
    }
    await Promise.all(all);
  }
  return { missed, tried };
}
/** Its neighbour, the other case of a letter, and a byte that is no text. */
const several = (byte: number): readonly number[] => [...new Set([byte ^ 1, byte ^ 0x20, 0xff])];
const every = Array.from({ length: 256 }, (_, value) => value);

describe('one byte changed', () => {
  test('of any header or signature', async () => {
    const { missed, tried } = await unnoticed(headers, several);
    expect(missed).toEqual([]);
    expect(tried).toBeGreaterThan(50_000);
  }, 300_000);
  test('of any body', async () => {
    const { missed, tried } = await unnoticed(bodies, several);
    expect(missed).toEqual([]);
    expect(tried).toBeGreaterThan(5_000);
  }, 300_000);
  test('of a check’s body, to each of the other 255 values', async () => {
    const header = headers.find((h) => h.kind === 'check') as Piece;
    const hash = JSON.parse(header.bytes.toString('utf8')).header.body as string;
    const body = bodies.find(({ path }) => path.includes(hash)) as Piece;
    const { missed, tried } = await unnoticed([body], () => every);
    expect(missed).toEqual([]);
    expect(tried).toBe(255 * body.bytes.length);
  }, 300_000);
  test('of the folder’s pointer', async () => {
    const path = 'register.json';
    const bytes = Buffer.from(files[path] ?? '');
    const missed: string[] = [];
    for (const place of bytes.keys()) {
      const copy = Buffer.from(bytes);
      copy[place] = (copy[place] as number) ^ 1;
      const { problems } = await openRegister(
        { ...files, [path]: textOf(copy) },
        { verify, now, dayIn },
      ).then(
        ({ judged }) => judged,
        (cause) => ({ problems: [(cause as NoRegister).problem] }),
      );
      if (!problems.some((p) => p.file === path)) missed.push(`byte ${place}`);
    }
    expect(missed).toEqual([]);
  });
});

test('one byte taken out, or put in twice, at every place of a line of each kind and of every body', async () => {
  const missed: string[] = [];
  const kinds = [...new Map(headers.map((h) => [h.kind, h])).values()];
  for (const { path, bytes, kind } of [...kinds, ...bodies]) {
    for (const place of bytes.keys()) {
      const before = bytes.subarray(0, place);
      for (const [name, more] of [
        ['out', bytes.subarray(place + 1)],
        ['twice', Buffer.concat([bytes.subarray(place, place + 1), bytes.subarray(place)])],
      ] as const) {
        const text = textOf(Buffer.concat([before, more]));
        const { problems } = await holdFiles({ [path]: text }, verify);
        if (problems.length === 0) missed.push(`${kind} ${path} byte ${place} ${name}`);
      }
    }
  }
  // an empty line after a line is a line that says nothing: it is found like any other
  expect(missed).toEqual([]);
}, 300_000);

test('what is found in a piece is found in the register: it never verifies as if nothing had happened', async () => {
  const missed: string[] = [];
  for (const { path, bytes, kind } of [...headers, ...bodies]) {
    for (let place = 0; place < bytes.length; place += 97) {
      const copy = Buffer.from(bytes);
      copy[place] = (copy[place] as number) ^ 1;
      const text = (files[path] as string).replace(textOf(bytes), () => textOf(copy));
      const { problems } = await openRegister({ ...files, [path]: text }, { verify, now, dayIn }).then(
        ({ judged }) => judged,
        (cause) => {
          expect(cause).toBeInstanceOf(NoRegister);
          return { problems: (cause as NoRegister).held.problems };
        },
      );
      if (!problems.some((p) => p.file === path && p.settled !== true))
        missed.push(`${kind} ${path} ${place}`);
    }
  }
  expect(missed).toEqual([]);
}, 300_000);
