/** The copies of a register that are to be joined with another: folders, or registers in one file. */
import { realpathSync, type Stats, statSync } from 'node:fs';
import { byText } from '../../register/bytes.ts';
import { type Held, holdFiles, type RegisterFiles } from '../../register/held.ts';
import type { Verify } from '../../register/keys.ts';
import { type Fault, GivenError } from '../../trade/given.ts';
import { pathHere } from '../input.ts';
import { readBundleFile } from './bundleFile.ts';
import { registerSpeak } from './content.ts';
import { isRegister, readWhole } from './folder.ts';

const FIELD = 'OTHER';

export interface OtherCopy {
  /** As it was named. */
  readonly name: string;
  readonly held: Held;
}

/** What stands in a copy. @throws {GivenError} it is no register */
export function filesOfCopy(name: string): RegisterFiles {
  const path = pathHere(name);
  const found = followed(path);
  if (found?.isDirectory() === true) {
    if (!isRegister(path)) throw refused(name, 'no register is here', 'name a copy of the register');
    const { files, left } = readWhole(path);
    for (const { file, why } of left) tell(name, file, `not read: ${why}`);
    return files;
  }
  if (found === undefined) throw refused(name, 'nothing is there', 'name a copy of the register');
  // A link that somebody names is one that he wants followed; it leads to a file here.
  if (!found.isFile()) throw refused(name, 'it is neither file nor folder', 'name a copy of the register');
  return readBundleFile(realpathSync(path), FIELD, name);
}

/** What stands at a path that somebody named, links followed; a link in a circle leads to nothing. */
function followed(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}

/** Reads copies, checks every signature, and tells what of them is not taken. @throws {GivenError} with all faults */
export async function readCopies(names: readonly string[], verify: Verify): Promise<readonly OtherCopy[]> {
  const copies: OtherCopy[] = [];
  const faults: Fault[] = [];
  for (const name of names) {
    try {
      copies.push({ name, held: await holdFiles(filesOfCopy(name), verify) });
    } catch (cause) {
      if (!(cause instanceof GivenError)) throw cause;
      faults.push(...cause.faults);
    }
  }
  if (faults.length > 0) throw new GivenError(faults);
  return copies;
}

/** So much of one copy is told of line by line. */
const TOLD = 100;

/** Tells, beside the result, what of a copy is altered or cannot be read: it is not taken. */
export function tellNotTaken({ name, held }: OtherCopy): void {
  const problems = held.problems.toSorted((a, b) => byText(a.file, b.file) || (a.line ?? 0) - (b.line ?? 0));
  for (const { file, line, say } of problems.slice(0, TOLD)) {
    tell(name, line === undefined ? file : `${file} line ${line}`, `not taken: ${registerSpeak(say)}`);
  }
  const more = problems.length - TOLD;
  if (more > 0) tell(name, `${more} more`, 'not taken: see what register verify says of it');
}

export function refused(name: string, message: string, todo: string): GivenError {
  return new GivenError([{ field: FIELD, value: name, message, todo }]);
}

function tell(name: string, where: string, what: string): void {
  process.stderr.write(`${name}: ${where}: ${what}\n`);
}
