/** What lies in a register's folder and is none of its files: left by writing that was broken off, or by a sync. */
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { filesHolding, hashesIn } from '../../register/bodyFiles.ts';
import { hashOfBytes } from '../../register/bytes.ts';
import type { RegisterFiles } from '../../register/held.ts';
import { FOLDERS, walk } from './folder.ts';
import { bytesOf, isUnfinished, standsAt } from './folderDisk.ts';

/** Where what was cut off torn ends is kept, beside `headers` and `bodies`. */
export const KEPT = 'torn';

/** Files that were being written when their process ended, by path. To be asked for while nobody else writes. */
export function unfinished(folder: string): readonly string[] {
  const folders = new Set(['', KEPT, ...FOLDERS, ...walk(folder, 'headers').files.map((f) => dirname(f))]);
  return [...folders].flatMap((name) => hiddenIn(folder, name).filter((path) => isUnfinished(nameOf(path))));
}

/**
 * Every file that may hold texts about people who are erased: those that hold one of these bodies, hidden ones too, and
 * what was being written when its process ended.
 */
export function erasedTexts(
  folder: string,
  files: RegisterFiles,
  hashes: readonly string[],
): readonly string[] {
  const wanted = new Set(hashes);
  const holds = (path: string): boolean => {
    const bytes = bytesOf(join(folder, path));
    const own = 'why' in bytes ? [] : [hashOfBytes(bytes)];
    return [...hashesIn(path), ...own].some((hash) => wanted.has(hash));
  };
  const hidden = hiddenIn(folder, 'bodies').filter(holds);
  return [...new Set([...filesHolding(files, hashes), ...hidden, ...unfinished(folder)])];
}

/** Files of a folder whose names begin with a dot: no reader looks at them. */
function hiddenIn(folder: string, name: string): readonly string[] {
  if (standsAt(join(folder, name))?.isDirectory() !== true) return [];
  const entries = readdirSync(join(folder, name), { withFileTypes: true });
  const hidden = entries.filter((entry) => entry.isFile() && entry.name.startsWith('.'));
  return hidden.map((entry) => (name === '' ? entry.name : `${name}/${entry.name}`));
}

const nameOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
