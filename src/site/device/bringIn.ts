/** Joining a register's file with the one on this device. Apart from register.ts: only the register's page does it. */
import { readBundle } from '../../register/bundle.ts';
import { holdFiles } from '../../register/held.ts';
import { mergeRegisters } from '../../register/merge.ts';
import { openRegister } from '../../register/register.ts';
import { now } from './edge.ts';
import { keepFiles } from './register.ts';
import { openStore } from './store.ts';
import { dayIn, verify } from './verify.ts';

export interface BroughtIn {
  readonly added: number;
  readonly entries: number;
  /** Lines and bodies of the file that are altered or cannot be read: they were left behind. */
  readonly notTaken: number;
}

/**
 * Brings a register's file in: joined with the one here, or kept as it is when there is none.
 * @throws {GivenError} not a register's file, or a register that began differently
 * @throws {NoRegister} no beginning is in it
 */
export async function bringIn(text: string): Promise<BroughtIn> {
  const files = readBundle(text);
  const asked = { now: now(), dayIn };
  const there = await openRegister(files, { ...asked, verify });
  const here = await (await openStore()).get('register', 'files');
  if (here === undefined) {
    await keepFiles(undefined, files);
    return { added: there.judged.entries, entries: there.judged.entries, notTaken: 0 };
  }
  const merged = mergeRegisters(await holdFiles(here, verify), there.held, asked);
  await keepFiles(here, merged.files);
  return { added: merged.added, entries: merged.entries, notTaken: there.held.problems.length };
}
