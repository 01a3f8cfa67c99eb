/** Writes an entry into a register's folder. Everything was worked out before; it is written whole, or not at all. */
import { closeSync, fsyncSync, openSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { RegisterFiles } from '../../register/held.ts';
import { MARKER } from '../../register/paths.ts';
import type { Written } from '../../register/write.ts';
import { GivenError } from '../../trade/given.ts';
import { BEGINNING, FOLDERS, isRegister, sameChains } from './folder.ts';
import {
  appendFile,
  bytesOf,
  cutFile,
  keepFolder,
  makeFolder,
  putFile,
  removeFile,
  standsAt,
  textOf,
  unmakeFolders,
} from './folderDisk.ts';
import { codeOf, NotAFile, NotAFolder, writingTo } from './folderFaults.ts';
import { erasedTexts } from './folderLeft.ts';
import { type Lock, withLock } from './folderLock.ts';

/**
 * Writes an entry: its body first, so that no header ever names a body that was not written. What it drops goes once its
 * line stands.
 *
 * @param before  the files it was worked out from
 * @returns false, with no line written, when its chain has grown since: another process signed with the same key on the
 *   same device, and a second entry of one number would be a fork
 * @throws {GivenError} nothing can be written there, and nothing was
 */
export function writeFolder(folder: string, written: Written, before: RegisterFiles): boolean {
  return writingTo(folder, () =>
    withLock(folder, (lock) => {
      const { put, append, drop } = written;
      soundFolders(folder);
      const stands = drop !== undefined ? sameChains(folder, before) : sameChain(folder, append.path, before);
      if (!stands) return false;
      undoing((undo) => {
        for (const [path, text] of Object.entries(put)) putNew(folder, path, text, lock, undo);
        addLines(folder, append, lock, undo);
      });
      if (drop !== undefined) dropBodies(folder, before, drop);
      return true;
    }),
  );
}

/**
 * Begins a register. Its pointer is written first, under a name that becomes its own once the first line stands: until
 * then there is no register here, and a beginning that was broken off can be made anew.
 *
 * @throws {GivenError} a register is there, or nothing can be written
 */
export function beginFolder(folder: string, { put, append }: Written): void {
  writingTo(folder, () =>
    undoing((undo) => {
      const made = makeFolder(folder, 'taken');
      undo(() => unmakeFolders(made));
      withLock(folder, (lock) => {
        if (isRegister(folder)) throw registerIsHere(folder);
        soundFolders(folder);
        const { [MARKER]: marker = '', ...bodies } = put;
        undoing((undoFiles) => {
          undoFiles(() => removeFile(join(folder, BEGINNING)));
          putFile(join(folder, BEGINNING), marker);
          for (const [path, text] of Object.entries(bodies)) putNew(folder, path, text, lock, undoFiles);
          addLines(folder, append, lock, undoFiles);
          renameSync(join(folder, BEGINNING), join(folder, MARKER));
        });
        keepFolder(folder);
      });
    }),
  );
}

/**
 * Takes away, under the lock, what may hold texts about people who are erased. A file that cannot be taken away is told of:
 * readers pass it over, and the next merge or mend tries again.
 */
export function dropBodies(folder: string, files: RegisterFiles, hashes: readonly string[]): void {
  const paths = erasedTexts(folder, files, hashes);
  for (const path of paths) {
    try {
      removeFile(join(folder, path));
    } catch (cause) {
      process.stderr.write(
        `${path} may hold texts about a person who was erased, and is still there (${(cause as Error).message})\n`,
      );
    }
  }
  for (const name of new Set(paths.map((path) => dirname(path)))) keepFolder(join(folder, name));
}

/** Nothing is written through a link, or where a file stands for a folder. */
export function soundFolders(folder: string): void {
  for (const name of FOLDERS) {
    const found = standsAt(join(folder, name));
    if (found !== undefined && !found.isDirectory()) throw new NotAFolder(join(folder, name));
  }
}

export function registerIsHere(folder: string): GivenError {
  const message = 'a register is here, and is never overwritten';
  return new GivenError([{ field: 'DIR', value: folder, message, todo: 'name another folder' }]);
}

export type Undo = (how: () => unknown) => void;

/**
 * Runs steps that can be taken back; when one fails, those before it are, the last first. Where one cannot be, those before
 * it stay as well: a line that may still stand keeps its body.
 */
export function undoing(steps: (undo: Undo) => void): void {
  const done: (() => unknown)[] = [];
  try {
    steps((how) => done.push(how));
  } catch (cause) {
    for (const how of done.reverse()) {
      try {
        how();
      } catch {
        break;
      }
    }
    throw cause;
  }
}

/** Puts a file where there is none; one that holds the same is left. */
export function putNew(folder: string, path: string, text: string, lock: Lock, undo: Undo): void {
  const to = join(folder, path);
  if (standsAt(to) !== undefined) {
    const bytes = bytesOf(to);
    if (!('why' in bytes) && textOf(bytes) === text) return;
    throw new NotAFile(to);
  }
  const made = makeFolder(dirname(to));
  undo(() => unmakeFolders(made));
  lock.still();
  undo(() => removeFile(to));
  putFile(to, text);
}

function addLines(folder: string, { path, text }: Written['append'], lock: Lock, undo: Undo): void {
  const to = join(folder, path);
  const found = standsAt(to);
  if (found !== undefined && !found.isFile()) throw new NotAFile(to);
  if (found === undefined) {
    putNew(folder, path, text, lock, undo);
    return;
  }
  lock.still();
  undo(() => cutFile(to, found.size));
  appendFile(to, text);
}

function sameChain(folder: string, path: string, before: RegisterFiles): boolean {
  const to = join(folder, path);
  if (standsAt(to) === undefined) return before[path] === undefined;
  const bytes = bytesOf(to);
  // Of a chain that cannot be read nobody knows where it ends.
  if ('why' in bytes) throw new NotAFile(to);
  return textOf(bytes) === before[path];
}

/** Writes a file that only its owner reads. @throws {GivenError} there is one of that name, or no such folder */
export function writeSecret(path: string, text: string): void {
  let made = false;
  try {
    const file = openSync(path, 'wx', 0o600);
    made = true;
    try {
      writeFileSync(file, text);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    keepFolder(dirname(path));
  } catch (cause) {
    // Half a key is no key, and would stand in the way of the whole one.
    if (made) removeFile(path);
    const there = codeOf(cause) === 'EEXIST';
    throw new GivenError([
      {
        field: 'out',
        value: path,
        message: there
          ? 'there is a file of this name, and a key is never overwritten'
          : `cannot be written (${(cause as Error).message})`,
        todo: 'name another file',
      },
    ]);
  }
}
