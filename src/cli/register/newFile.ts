/** A file that a verb makes: never over one that is there, and whole or not at all. */
import { closeSync, fsyncSync, lstatSync, openSync, rmSync, writeFileSync } from 'node:fs';
import { GivenError } from '../../trade/given.ts';
import { pathHere } from '../input.ts';
import type { Options } from './options.ts';

const THERE = { message: 'there is a file of this name, and none is overwritten', todo: 'name another file' };

/** The path in `--out`; that something stands there is said with all other faults. */
export function outOf(options: Options): string {
  const out = options.need('out', 'name the file to make');
  if (out === '') return '';
  const path = pathHere(out);
  if (standsAt(path)) options.faults.push({ field: 'out', value: out, ...THERE });
  return path;
}

/** Whether anything has that name, a link that leads nowhere too. Where that cannot be known, writing will tell. */
function standsAt(path: string): boolean {
  try {
    return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
  } catch {
    return false;
  }
}

/** @throws {GivenError} there is a file of that name by now, no such folder, no room */
export function writeNew(path: string, json: object): void {
  let made = false;
  try {
    const file = openSync(path, 'wx');
    made = true;
    try {
      writeFileSync(file, `${JSON.stringify(json, null, 2)}\n`);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  } catch (cause) {
    // Half a file would stand in the way of the whole one.
    if (made) rmSync(path, { force: true });
    const there = (cause as NodeJS.ErrnoException).code === 'EEXIST';
    const message = `cannot be written (${(cause as Error).message})`;
    const wrong = there ? THERE : { message, todo: 'name a file that can be written' };
    throw new GivenError([{ field: 'out', value: path, ...wrong }]);
  }
}
