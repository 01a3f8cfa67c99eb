/** A register's folder on disk. Everything is worked out first; only then is anything written. */
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import type { RegisterFiles } from '../../register/held.ts';
import { MARKER } from '../../register/paths.ts';
import type { Written } from '../../register/write.ts';
import { GivenError } from '../../trade/given.ts';

/** Folders of a register's files below its own. */
const FOLDERS = ['headers', 'bodies'];

export const isRegister = (folder: string): boolean =>
  existsSync(join(folder, MARKER)) || FOLDERS.some((name) => existsSync(join(folder, name)));

/** Every file of a register by path. @throws {GivenError} the folder holds none */
export function readFolder(folder: string): RegisterFiles {
  if (!isRegister(folder)) {
    const todo = 'name the folder of a register, or begin one there';
    throw new GivenError([{ field: 'DIR', value: folder, message: 'no register is here', todo }]);
  }
  const files: Record<string, string> = {};
  if (is('file', join(folder, MARKER))) files[MARKER] = textOf(join(folder, MARKER));
  for (const name of FOLDERS) {
    if (!is('folder', join(folder, name))) continue;
    for (const entry of readdirSync(join(folder, name), { recursive: true, withFileTypes: true })) {
      if (!entry.isFile() || entry.name.startsWith('.')) continue;
      const path = join(entry.parentPath, entry.name);
      files[path.slice(join(folder, '/').length).replaceAll('\\', '/')] = textOf(path);
    }
  }
  return files;
}

function is(what: 'file' | 'folder', path: string): boolean {
  const found = statSync(path, { throwIfNoEntry: false });
  return (what === 'file' ? found?.isFile() : found?.isDirectory()) === true;
}

/**
 * A file's text. Bytes that are no UTF-8 are read one a sign: no two files have one text, so none passes for what was
 * hashed or signed.
 */
function textOf(path: string): string {
  const bytes = readFileSync(path);
  const text = bytes.toString('utf8');
  return Buffer.from(text, 'utf8').equals(bytes) ? text : bytes.toString('latin1');
}

/**
 * Writes an entry: its body and marker first, so that no header ever names a body that was not written.
 *
 * @param before  the files it was worked out from
 * @returns false, with no line written, when its chain has grown since: another process signed with the same key on the
 *   same device, and a second entry of one number would be a fork
 * @throws {GivenError} nothing can be written there
 */
export function writeFolder(folder: string, { put, append }: Written, before: RegisterFiles): boolean {
  const at = join(folder, append.path);
  const stands = (): boolean => (is('file', at) ? textOf(at) : undefined) === before[append.path];
  if (!stands()) return false;
  for (const [path, text] of Object.entries(put)) {
    const to = join(folder, path);
    makeFolder(folder, dirname(to));
    // Bodies are named by their hash: one that is there already is the same.
    if (!existsSync(to)) write(to, text, 'wx');
  }
  makeFolder(folder, dirname(at));
  if (!stands()) return false;
  write(at, append.text, 'a');
  return true;
}

/** @throws {GivenError} nothing can be written there */
function makeFolder(folder: string, path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch (cause) {
    const todo = 'name a folder that can be written to';
    const message = `cannot be written (${(cause as Error).message})`;
    throw new GivenError([{ field: 'DIR', value: folder, message, todo }]);
  }
}

function write(path: string, text: string, flag: 'wx' | 'a', mode = 0o666): void {
  const file = openSync(path, flag, mode);
  try {
    writeSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Writes a file that only its owner reads. @throws {GivenError} there is one of that name, or no such folder */
export function writeSecret(path: string, text: string): void {
  try {
    write(path, text, 'wx', 0o600);
  } catch (cause) {
    const there = (cause as NodeJS.ErrnoException).code === 'EEXIST';
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
