/**
 * Mends a register's folder: cuts what stands after the last whole line of a file of chains and keeps it beside, and takes
 * away what writing that was broken off has left. Nothing else is touched.
 */
import { closeSync, constants, fstatSync, fsyncSync, ftruncateSync, openSync, renameSync } from 'node:fs';
import { basename, join } from 'node:path';
import { sha256 } from '@noble/hashes/sha2.js';
import { toHex } from '../../register/bytes.ts';
import { MARKER } from '../../register/paths.ts';
import { BEGINNING, walk } from './folder.ts';
import { bytesOf, keepFolder, makeFolder, putFile, removeFile, standsAt } from './folderDisk.ts';
import { writingTo } from './folderFaults.ts';
import { KEPT, unfinished } from './folderLeft.ts';
import { forgottenLocks, type Lock, sweepLocks, withLock } from './folderLock.ts';

/** What was cut: the file, the number of the line that was not whole, and where it is kept. */
export interface Mended {
  readonly file: string;
  readonly line: number;
  readonly kept: string;
}

/**
 * Cuts torn ends and sweeps leftovers. Where there is nothing to do, nothing is written at all.
 * @throws {GivenError} nothing can be written there
 */
export function mendFolder(folder: string): readonly Mended[] {
  const toDo = tornFiles(folder).length + unfinished(folder).length + forgottenLocks(folder).length;
  if (toDo === 0 && standsAt(join(folder, BEGINNING)) === undefined) return [];
  return writingTo(folder, () =>
    withLock(folder, (lock) => {
      const mended = tornFiles(folder).map((torn) => cut(folder, torn, lock));
      for (const path of unfinished(folder)) removeFile(join(folder, path));
      finishBeginning(folder);
      sweepLocks(folder);
      return mended;
    }),
  );
}

interface Torn {
  readonly file: string;
  readonly bytes: Buffer;
  /** Where the last whole line ends. */
  readonly whole: number;
}

const LINE_FEED = 10;

function tornFiles(folder: string): readonly Torn[] {
  return walk(folder, 'headers').files.flatMap((file) => {
    const bytes = bytesOf(join(folder, file));
    if ('why' in bytes) return [];
    const whole = bytes.lastIndexOf(LINE_FEED) + 1;
    return whole < bytes.length ? [{ file, bytes, whole }] : [];
  });
}

/** Keeps what stands after the last whole line, then cuts it. Broken off between the two, it is kept under the same name again. */
function cut(folder: string, { file, bytes, whole }: Torn, lock: Lock): Mended {
  const rest = bytes.subarray(whole);
  const kept = `${KEPT}/${basename(file).slice(0, 150)}.${toHex(sha256(rest)).slice(0, 16)}`;
  makeFolder(join(folder, KEPT));
  lock.still();
  putFile(join(folder, kept), rest);
  const at = openSync(join(folder, file), constants.O_RDWR | (constants.O_NOFOLLOW ?? 0));
  try {
    // Only what was looked at is cut.
    if (fstatSync(at).size !== bytes.length) throw new Error(`${file} changed while it was mended`);
    ftruncateSync(at, whole);
    fsyncSync(at);
  } finally {
    closeSync(at);
  }
  const line = bytes.subarray(0, whole).reduce((n, byte) => (byte === LINE_FEED ? n + 1 : n), 1);
  return { file, line, kept };
}

/** The pointer of a register whose first line stands gets its name; one that is there already makes the other needless. */
function finishBeginning(folder: string): void {
  const begun = join(folder, BEGINNING);
  if (standsAt(begun)?.isFile() !== true) return;
  if (standsAt(join(folder, MARKER)) === undefined) renameSync(begun, join(folder, MARKER));
  else removeFile(begun);
  keepFolder(folder);
}
