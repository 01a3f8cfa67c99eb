/** Single files of a register's folder: read without following links, written whole or not at all. */
import { isUtf8 } from 'node:buffer';
import {
  closeSync,
  constants,
  fchmodSync,
  fstatSync,
  fsyncSync,
  ftruncateSync,
  lstatSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmdirSync,
  rmSync,
  type Stats,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { toHex } from '../../register/bytes.ts';
import { codeOf, NotAFile, NotAFolder } from './folderFaults.ts';

/** Larger files are not read: no chain of a lifetime comes near it, and one text cannot hold much more. */
export const LARGEST = 256 * 1024 * 1024;

/** A file that is being written, under the name it has until it is whole. */
export const isUnfinished = (name: string): boolean => /^\.writing-[0-9a-f]{16}$/.test(name);

export const someHex = (bytes: number): string => toHex(crypto.getRandomValues(new Uint8Array(bytes)));

/** What stands at a path, links not followed; `undefined` when nothing does. */
export function standsAt(path: string): Stats | undefined {
  try {
    return lstatSync(path, { throwIfNoEntry: false });
  } catch (cause) {
    // A path that runs through a file, or is too long, leads to nothing; nor does one that may not be looked into.
    if (['ENOTDIR', 'ENAMETOOLONG', 'ELOOP', 'EACCES'].includes(codeOf(cause))) return undefined;
    throw cause;
  }
}

/** A file's bytes, or why they are not read. A pipe is never waited for, a link never followed. */
export function bytesOf(path: string): Buffer | { readonly why: string } {
  let file: number;
  try {
    file = openSync(path, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0));
  } catch (cause) {
    const link = codeOf(cause) === 'ELOOP';
    return {
      why: link ? 'it is a link, and links are not followed' : `it cannot be opened (${codeOf(cause)})`,
    };
  }
  try {
    const found = fstatSync(file);
    if (!found.isFile()) return { why: 'it is no file' };
    if (found.size > LARGEST) return { why: `it is larger than ${LARGEST / 1024 / 1024} MB` };
    return readFileSync(file);
  } catch (cause) {
    return { why: `it cannot be read (${codeOf(cause)})` };
  } finally {
    closeSync(file);
  }
}

/** Begins a line that is no UTF-8: half of a pair, which no UTF-8 text has and no JSON of ours takes. */
const NO_UTF8 = '\uD800';
const LINE_FEED = 10;

/**
 * Bytes as a text. A line that is no UTF-8 is read one byte a sign, after half of a pair: no two files have one text, and
 * none passes for what was hashed or signed. `bytesIn` goes the other way.
 */
export function textOf(bytes: Buffer): string {
  if (isUtf8(bytes)) return bytes.toString('utf8');
  const middle = bytes.length >> 1;
  const before = bytes.lastIndexOf(LINE_FEED, middle);
  const at = before >= 0 ? before : bytes.indexOf(LINE_FEED, middle);
  if (at < 0) return NO_UTF8 + bytes.toString('latin1');
  return `${textOf(bytes.subarray(0, at))}\n${textOf(bytes.subarray(at + 1))}`;
}

/** The bytes that a text was read from. */
export function bytesIn(text: string): Buffer {
  if (text.isWellFormed()) return Buffer.from(text, 'utf8');
  const lines = text.split('\n');
  const read = (line: string): Buffer =>
    line.startsWith(NO_UTF8) ? Buffer.from(line.slice(1), 'latin1') : Buffer.from(line, 'utf8');
  return Buffer.concat(
    lines.flatMap((line, i) => (i === 0 ? [read(line)] : [Buffer.from('\n'), read(line)])),
  );
}

/**
 * Writes a file whole: under another name, kept on the disk, and only then under its own. What stood there before stands
 * until then; its permissions are kept.
 */
export function putFile(path: string, content: string | Uint8Array): void {
  readyFile(path, content)();
  keepFolder(dirname(path));
}

/**
 * Has a file ready under another name, kept on the disk; everything that may fail for want of room is done.
 * @returns what gives it its own name
 */
export function readyFile(path: string, content: string | Uint8Array): Ready {
  const before = standsAt(path);
  if (before !== undefined && !before.isFile()) throw new NotAFile(path);
  const unfinished = join(dirname(path), `.writing-${someHex(8)}`);
  const forget = (): void => rmSync(unfinished, { force: true });
  try {
    const file = openSync(unfinished, 'wx');
    try {
      if (before !== undefined) fchmodSync(file, before.mode & 0o777);
      writeAll(file, content);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  } catch (cause) {
    forget();
    throw cause;
  }
  const name = (): void => {
    try {
      renameSync(unfinished, path);
    } catch (cause) {
      forget();
      throw cause;
    }
  };
  return Object.assign(name, { forget });
}

/** Gives a file that is ready its name; or `forget` takes it away. */
export type Ready = (() => void) & { readonly forget: () => void };

/** Adds to the end of a file. When the disk gives out on the way, part of it may stand: `cutFile` takes that back. */
export function appendFile(path: string, text: string): void {
  const file = openSync(path, constants.O_RDWR | constants.O_APPEND | (constants.O_NOFOLLOW ?? 0));
  try {
    writeAll(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Cuts a file to a size that it had; one that is no longer is left. */
export function cutFile(path: string, size: number): void {
  const file = openSync(path, constants.O_RDWR | (constants.O_NOFOLLOW ?? 0));
  try {
    if (fstatSync(file).size <= size) return;
    ftruncateSync(file, size);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** One call may write less than it was given. */
function writeAll(file: number, content: string | Uint8Array): void {
  const bytes = typeof content === 'string' ? bytesIn(content) : content;
  for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
}

/** Has the disk keep the names in a folder; where a system has no such call, names are kept when it sees fit. */
export function keepFolder(path: string): void {
  try {
    const folder = openSync(path, 'r');
    try {
      fsyncSync(folder);
    } finally {
      closeSync(folder);
    }
  } catch (cause) {
    if (['EIO', 'ENOSPC'].includes(codeOf(cause))) throw cause;
  }
}

/** Takes a file away. @returns whether it was there */
export function removeFile(path: string): boolean {
  try {
    rmSync(path);
    return true;
  } catch (cause) {
    if (codeOf(cause) === 'ENOENT') return false;
    throw cause;
  }
}

/**
 * Makes a folder and those it lies in.
 * @param links  whether a link may stand for it; for those it lies in one always may
 * @returns those that were not there, the outermost first
 */
export function makeFolder(path: string, links: 'taken' | 'refused' = 'refused'): readonly string[] {
  const found = links === 'taken' ? statSync(path, { throwIfNoEntry: false }) : standsAt(path);
  if (found?.isDirectory() === true) return [];
  if (found !== undefined) throw new NotAFolder(path);
  const above = dirname(path);
  const made = above === path ? [] : makeFolder(above, 'taken');
  try {
    mkdirSync(path);
  } catch (cause) {
    if (codeOf(cause) !== 'EEXIST') throw cause;
    return made;
  }
  keepFolder(above);
  return [...made, path];
}

/** Takes folders away that nothing came to lie in. */
export function unmakeFolders(made: readonly string[]): void {
  for (const path of [...made].reverse()) {
    try {
      rmdirSync(path);
    } catch {
      return; // something lies in it, and it stays with what it lies in
    }
  }
}
