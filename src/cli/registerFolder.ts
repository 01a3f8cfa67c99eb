/** A register's folder on disk. Everything is worked out first; only then is anything written. */
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import type { RegisterFiles } from '../register/held.ts';
import { MARKER } from '../register/paths.ts';
import type { Written } from '../register/write.ts';
import { GivenError } from '../trade/given.ts';

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
  if (existsSync(join(folder, MARKER))) files[MARKER] = readFileSync(join(folder, MARKER), 'utf8');
  for (const name of FOLDERS) {
    if (!existsSync(join(folder, name))) continue;
    for (const entry of readdirSync(join(folder, name), { recursive: true, withFileTypes: true })) {
      if (!entry.isFile() || entry.name.startsWith('.')) continue;
      const path = join(entry.parentPath, entry.name);
      files[path.slice(join(folder, '/').length).replaceAll('\\', '/')] = readFileSync(path, 'utf8');
    }
  }
  return files;
}

/** Writes an entry: its body and marker first, so that no header ever names a body that was not written. */
export function writeFolder(folder: string, { put, append }: Written): void {
  for (const [path, text] of Object.entries(put)) {
    const at = join(folder, path);
    mkdirSync(dirname(at), { recursive: true });
    // Bodies are named by their hash: one that is there already is the same.
    if (!existsSync(at)) write(at, text, 'wx');
  }
  const at = join(folder, append.path);
  mkdirSync(dirname(at), { recursive: true });
  write(at, append.text, 'a');
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
