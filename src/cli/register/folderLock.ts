/**
 * One process at a time writes into a register's folder. The lock is a file that only one can make; it names the process
 * and the time. A lock whose process is gone is taken away, and that too by one process at a time: each who wants to
 * makes a file of a name of its own, looks again, and stands back when it sees another's. Such a name is never used twice,
 * so the file of a process that is gone can be taken away by anybody at any time.
 */
import {
  closeSync,
  constants,
  fstatSync,
  openSync,
  readdirSync,
  readFileSync,
  utimesSync,
  writeSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { GivenError } from '../../trade/given.ts';
import { removeFile, someHex } from './folderDisk.ts';
import { codeOf } from './folderFaults.ts';
import { holderOf, lifeOf } from './lockHolder.ts';

const LOCK = '.lock';
const isTaker = (name: string): boolean => /^\.lock-[0-9a-f]{16}$/.test(name);

/** How long a verb waits for another, ms. */
const PATIENCE = 20_000;
/** A lock of another machine, or of a process whose life cannot be told, is left over when untouched for this long, ms. */
const FORGOTTEN = 600_000;
/** A holder touches its lock at least this often while it writes, ms. */
const TOUCH = 10_000;
/** What is made and not yet written after this long will never be, ms. */
const UNWRITTEN = 1_000;

/** A lock that is held. */
export interface Lock {
  /** To be called before every step that changes anything. @throws {GivenError} the lock was taken away meanwhile */
  still(): void;
}

/**
 * Runs what writes while no other process does.
 * @throws {GivenError} another process keeps the folder for too long
 */
export function withLock<T>(folder: string, work: (lock: Lock) => T, patience = PATIENCE): T {
  const path = join(folder, LOCK);
  const own = takeLock(folder, path, patience);
  let touched = Date.now();
  const still = (): void => {
    if (textAt(path)?.text !== own) throw lost(folder);
    if (Date.now() - touched < TOUCH) return;
    touched = Date.now();
    utimesSync(path, touched / 1000, touched / 1000);
  };
  try {
    return work({ still });
  } finally {
    if (textAt(path)?.text === own) removeFile(path);
  }
}

/** Files of locks in a folder that nobody holds any more. */
export function forgottenLocks(folder: string): readonly string[] {
  const names = readdirSync(folder).filter((name) => name === LOCK || isTaker(name));
  return names.filter((name) => {
    const seen = textAt(join(folder, name));
    return seen !== undefined && isForgotten(seen);
  });
}

/** Takes the files of locks away that nobody holds any more. @returns how many */
export function sweepLocks(folder: string): number {
  let swept = 0;
  for (const name of forgottenLocks(folder)) {
    const gone = name === LOCK ? takeAway(folder, join(folder, LOCK)) : removeFile(join(folder, name));
    if (gone) swept += 1;
  }
  return swept;
}

function takeLock(folder: string, path: string, patience: number): string {
  const began = performance.now();
  for (;;) {
    const own = make(path);
    if (own !== undefined) return own;
    const seen = textAt(path);
    if (seen !== undefined && isForgotten(seen)) {
      if (takeAway(folder, path)) continue;
    } else if (performance.now() - began > patience) throw busy(folder, path, seen);
    wait(2 + Math.random() * 25);
  }
}

/** Takes a forgotten lock away, unless another process is about to. @returns whether it is gone */
function takeAway(folder: string, path: string): boolean {
  const name = `.lock-${someHex(8)}`;
  if (make(join(folder, name)) === undefined) return false;
  try {
    for (const other of readdirSync(folder).filter((n) => isTaker(n) && n !== name)) {
      const seen = textAt(join(folder, other));
      if (seen === undefined) continue;
      if (!isForgotten(seen)) return false;
      removeFile(join(folder, other));
    }
    // Alone now: nobody else takes a lock away, so the one that is looked at here is the one that goes.
    const seen = textAt(path);
    if (seen !== undefined && isForgotten(seen)) removeFile(path);
    return true;
  } finally {
    removeFile(join(folder, name));
  }
}

/** Makes a lock's file. @returns what it says, or `undefined` when there is one */
function make(path: string): string | undefined {
  let file: number;
  try {
    file = openSync(path, 'wx');
  } catch (cause) {
    if (codeOf(cause) === 'EEXIST') return undefined;
    throw cause;
  }
  const at = new Date().toISOString();
  const life = lifeOf(process.pid) ?? null;
  const text = JSON.stringify({ at, host: hostname(), life, once: someHex(8), process: process.pid });
  try {
    if (writeSync(file, text) < text.length)
      throw Object.assign(new Error('half written'), { code: 'ENOSPC' });
  } catch (cause) {
    removeFile(path);
    throw cause;
  } finally {
    closeSync(file);
  }
  mine.add(text);
  return text;
}

/** Locks that this process made. */
const mine = new Set<string>();

interface Seen {
  readonly text: string;
  /** When it was last touched, ms since 1970 UTC. */
  readonly touched: number;
}

function textAt(path: string): Seen | undefined {
  let file: number;
  try {
    file = openSync(path, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0));
  } catch (cause) {
    if (codeOf(cause) === 'ENOENT') return undefined;
    return { text: '', touched: Number.POSITIVE_INFINITY }; // a link, or not ours to read: nobody's to take away
  }
  try {
    const found = fstatSync(file);
    if (!found.isFile() || found.size > 1000) return { text: '', touched: Number.POSITIVE_INFINITY };
    return { text: readFileSync(file, 'utf8'), touched: found.mtimeMs };
  } finally {
    closeSync(file);
  }
}

function isForgotten({ text, touched }: Seen): boolean {
  const age = Date.now() - touched;
  const holder = holderOf(text);
  if (holder === undefined) return age > UNWRITTEN;
  if (holder.host !== hostname()) return age > FORGOTTEN;
  if (holder.process === process.pid) return !mine.has(text);
  const life = lifeOf(holder.process);
  if (life === undefined) return true;
  // Where the system tells when a process began, one that took a dead one's number is told from it.
  return life !== '' && holder.life !== null && holder.life !== '' ? life !== holder.life : age > FORGOTTEN;
}

function wait(ms: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}

function busy(folder: string, path: string, seen: Seen | undefined): GivenError {
  const holder = seen === undefined ? undefined : holderOf(seen.text);
  const who =
    holder === undefined
      ? 'something that is no lock of ours'
      : `process ${holder.process} on ${holder.host} since ${holder.at}`;
  return new GivenError([
    {
      field: 'DIR',
      value: folder,
      message: `another process is writing here: ${path} is held by ${who}`,
      todo: 'wait until it has ended; should none be at work, take that file away',
    },
  ]);
}

function lost(folder: string): GivenError {
  const message = 'the lock on this folder was taken away while it was being written';
  return new GivenError([
    { field: 'DIR', value: folder, message, todo: 'run register verify, then do it again' },
  ]);
}
