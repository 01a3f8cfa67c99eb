/** Which files of a folder hold a body: a copy of one counts whatever somebody, or a sync that met itself, has called it. */
import { hashOf } from './bytes.ts';
import type { Held, RegisterFiles } from './held.ts';
import { isBodyPath } from './paths.ts';

/** Hashes that a file's name speaks of anywhere in it, as in `bodies/HASH (copy of phone).json`. */
export const hashesIn = (path: string): readonly string[] =>
  path
    .slice(path.lastIndexOf('/') + 1)
    .toLowerCase()
    .match(/[0-9a-f]{64}/g) ?? [];

/** Files below `bodies` that hold one of these bodies, or say in their name that they do. */
export function filesHolding(files: RegisterFiles, hashes: Iterable<string>): readonly string[] {
  const wanted = new Set(hashes);
  if (wanted.size === 0) return [];
  const holds = ([path, text]: [string, string]): boolean =>
    isBodyPath(path) && [...hashesIn(path), hashOf(text)].some((hash) => wanted.has(hash));
  return Object.entries(files)
    .filter(holds)
    .map(([path]) => path);
}

/**
 * Files below `bodies` that no entry of this register names: what names one may still be on its way from another device, or
 * was never written. Nobody can say whom such a text is about, so no erase reaches it.
 * @param begin  id of the entry that the register began with
 */
export function unnamedFiles(files: RegisterFiles, { entries }: Held, begin: string): readonly string[] {
  const own = [...entries.values()].filter((e) => (e.header.register ?? e.id) === begin);
  const named = new Set(own.map(({ header }) => header.body));
  return Object.entries(files)
    .filter(
      ([path, text]) => isBodyPath(path) && ![...hashesIn(path), hashOf(text)].some((h) => named.has(h)),
    )
    .map(([path]) => path)
    .sort();
}
