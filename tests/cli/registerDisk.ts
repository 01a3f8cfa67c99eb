/** Registers on the disk for tests: laid out from a book, asked without starting a process, looked at byte by byte. */
import { lstatSync, mkdirSync, readdirSync, readFileSync, readlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { group } from '../../src/cli/register.ts';
import type { RegisterFiles } from '../../src/register/held.ts';
import { keyFileText, makeKey } from '../../src/register/keyFile.ts';
import { map } from '../register/book.ts';
import { type Called, inProcess } from './inProcess.ts';

/** Lays files out below a folder. */
export function layOut(folder: string, files: RegisterFiles): string {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

/** Writes the key file of a signer of `signerOf(byte, device)`. */
export function keyFile(folder: string, byte: number, device: string): string {
  const path = join(folder, `${device}.json`);
  writeFileSync(path, keyFileText(makeKey(device, (n) => new Uint8Array(n).fill(byte))), { mode: 0o600 });
  return path;
}

export function mapFile(folder: string): string {
  const path = join(folder, 'map.json');
  writeFileSync(path, JSON.stringify(map));
  return path;
}

/** Everything in a folder: what it is and what it holds, by path. */
export function snapshot(folder: string): Readonly<Record<string, string>> {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
  return Object.fromEntries(
    paths.map((path) => {
      const found = lstatSync(join(folder, path));
      if (found.isSymbolicLink()) return [path, `link ${readlinkSync(join(folder, path))}`];
      if (found.isFile())
        return [path, `file ${found.mode & 0o777} ${readFileSync(join(folder, path), 'latin1')}`];
      return [path, found.isDirectory() ? 'folder' : 'other'];
    }),
  );
}

/** Calls a verb of `register` in this process. */
export const called = (...words: readonly string[]): Promise<Called> => inProcess(group, words);

export interface Asked {
  readonly exit: number;
  // biome-ignore lint/suspicious/noExplicitAny: each test knows what it asked for
  readonly result: any;
  readonly said: readonly string[];
}

/** The same in short: the result, or what is said against it. */
export async function ask(name: string, ...args: readonly string[]): Promise<Asked> {
  const { exit, one } = await called(name, ...args);
  if (one.ok) return { exit, result: one.result, said: [] };
  return { exit, result: undefined, said: one.errors.map((f) => `${f.field}: ${f.message}`) };
}

/** What `verify` finds: the code and file of every problem that is not settled. */
export async function found(folder: string, at = '2030-01-01T00:00:00Z'): Promise<readonly string[]> {
  const { exit, result, said } = await ask('verify', folder, '--at', at);
  if (exit === 2) return said;
  const problems = result.problems as { code: string; file: string; settled?: true }[];
  return problems.filter((p) => p.settled !== true).map((p) => `${p.code} ${p.file.split('/')[0]}`);
}
