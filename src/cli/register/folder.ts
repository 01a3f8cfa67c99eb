/** Reads a register's folder on disk: whole, while others may be writing, and whatever else lies in it. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { RegisterFiles } from '../../register/held.ts';
import { isChainPath, MARKER } from '../../register/paths.ts';
import { GivenError } from '../../trade/given.ts';
import { readBundleFile } from './bundleFile.ts';
import { bytesOf, standsAt, textOf } from './folderDisk.ts';
import { codeOf } from './folderFaults.ts';

/** Folders of a register's files below its own; chains first, for a body is written before what names it. */
export const FOLDERS = ['headers', 'bodies'];

/** The pointer of a register that is being begun, until its beginning stands. */
export const BEGINNING = '.beginning';

/** Folders in folders are read down to here. */
const DEEPEST = 16;
/** Reading begins anew so often when others write meanwhile. */
const AGAIN = 50;

/** Something below `headers` or `bodies` that is not read, and why. */
export interface Left {
  readonly file: string;
  readonly why: string;
}

export interface ReadFolder {
  readonly files: RegisterFiles;
  readonly left: readonly Left[];
}

export function isRegister(folder: string): boolean {
  if (standsAt(join(folder, MARKER)) !== undefined) return true;
  if (!FOLDERS.some((name) => standsAt(join(folder, name)) !== undefined)) return false;
  // What a beginning left that did not get as far as its first line is no register yet.
  const begun = standsAt(join(folder, BEGINNING))?.isFile() === true;
  return !begun || walk(folder, 'headers').files.length > 0;
}

/** @throws {GivenError} a register in one file: that is only read */
export function onlyFolder(path: string): void {
  if (standsAt(path)?.isFile() !== true) return;
  const todo = 'merge it into the folder of a register, and name that';
  const message = 'a register in one file is only read';
  throw new GivenError([{ field: 'DIR', value: path, message, todo }]);
}

/** Every file of a register by path. @throws {GivenError} the folder holds none, or others write there all the time */
export const readFolder = (folder: string): RegisterFiles => readWhole(folder).files;

/**
 * Every file of a register, and what was left unread; a register in one file is read too.
 * @throws {GivenError} the folder holds no register, or others write there all the time
 */
export function readWhole(folder: string): ReadFolder {
  if (standsAt(folder)?.isFile() === true) {
    return { files: readBundleFile(folder, 'DIR', folder), left: [] };
  }
  if (!isRegister(folder)) {
    const todo = 'name the folder of a register, or begin one there';
    throw new GivenError([{ field: 'DIR', value: folder, message: 'no register is here', todo }]);
  }
  // A line may have come with its body, or bodies gone with an erase, since the chains were read.
  const read = inPeace(
    () => tracesOf(folder),
    () => readOnce(folder),
  );
  if (read !== undefined) return read;
  const message = 'others write here all the time, and it was not read whole';
  throw new GivenError([{ field: 'DIR', value: folder, message, todo: 'do it again in a while' }]);
}

/** Reads, again until nothing has changed in between. @returns `undefined`: something does all the time */
export function inPeace<T>(traces: () => string, read: () => T): T | undefined {
  for (let round = 0; round < AGAIN; round += 1) {
    const before = traces();
    const found = read();
    if (before === traces()) return found;
  }
  return undefined;
}

function readOnce(folder: string): ReadFolder {
  const files: Record<string, string> = {};
  const left: Left[] = [];
  const take = (path: string): void => {
    const bytes = bytesOf(join(folder, path));
    if (!('why' in bytes)) files[path] = textOf(bytes);
    else if (standsAt(join(folder, path)) !== undefined) left.push({ file: path, why: bytes.why });
  };
  for (const name of FOLDERS) {
    const found = walk(folder, name);
    left.push(...found.left);
    for (const path of found.files) take(path);
  }
  if (standsAt(join(folder, MARKER)) !== undefined) {
    if (standsAt(join(folder, MARKER))?.isDirectory() !== true) take(MARKER);
  } else {
    const begun = bytesOf(join(folder, BEGINNING));
    if (!('why' in begun)) files[MARKER] = textOf(begun);
  }
  return { files, left };
}

/** The files of chains, each with all that changes when it does. */
function tracesOf(folder: string): string {
  const paths = walk(folder, 'headers').files;
  return paths.map((path) => `${path} ${traceOf(join(folder, path))}`).join('\n');
}

export function traceOf(path: string): string {
  const found = standsAt(path);
  return found === undefined ? '' : `${found.ino} ${found.size} ${found.mtimeMs}`;
}

/** Whether the chains on the disk are those that were read. */
export function sameChains(folder: string, before: RegisterFiles): boolean {
  const paths = walk(folder, 'headers').files;
  const known = Object.keys(before).filter(isChainPath);
  const same = (path: string): boolean => {
    const bytes = bytesOf(join(folder, path));
    return 'why' in bytes ? before[path] === undefined : textOf(bytes) === before[path];
  };
  return paths.every(same) && known.every((path) => standsAt(join(folder, path)) !== undefined);
}

/** The files below a folder of a register, by path. Links are not followed; names that begin with a dot are passed over. */
export function walk(folder: string, top: string): { readonly files: string[]; readonly left: Left[] } {
  const files: string[] = [];
  const left: Left[] = [];
  const found = standsAt(join(folder, top));
  if (found?.isSymbolicLink()) left.push({ file: top, why: 'it is a link, and links are not followed' });
  else if (found?.isFile()) left.push({ file: top, why: 'it is a file where a folder belongs' });
  const open: { readonly path: string; readonly depth: number }[] =
    found?.isDirectory() === true ? [{ path: top, depth: 1 }] : [];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { path, depth } = next;
    for (const entry of namesIn(join(folder, path), path, left)) {
      const file = `${path}/${entry.name}`;
      if (entry.name.startsWith('.')) continue;
      if (entry.isFile()) files.push(file);
      else if (!entry.isDirectory()) {
        const what = entry.isSymbolicLink() ? 'a link, and links are not followed' : 'no file';
        left.push({ file, why: `it is ${what}` });
      } else if (depth < DEEPEST) open.push({ path: file, depth: depth + 1 });
      else left.push({ file, why: `it lies more than ${DEEPEST} folders deep` });
    }
  }
  return { files: files.sort(), left };
}

function namesIn(path: string, told: string, left: Left[]) {
  try {
    return readdirSync(path, { withFileTypes: true });
  } catch (cause) {
    left.push({ file: told, why: `it cannot be read (${codeOf(cause)})` });
    return [];
  }
}
