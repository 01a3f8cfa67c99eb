/** Joining a register's file with the one on this device. Apart from register.ts: only the register's page does it. */
import { bodiesToDrop } from '../../register/acts/erase.ts';
import { filesHolding } from '../../register/bodyFiles.ts';
import { readBundle } from '../../register/bundle.ts';
import { holdFiles } from '../../register/held.ts';
import { mergeRegisters } from '../../register/merge.ts';
import { openRegister } from '../../register/register.ts';
import { type Joined, joinedOf } from '../drills/joined.ts';
import { now } from './edge.ts';
import { keepFiles } from './register.ts';
import { openStore } from './store.ts';
import { dayIn, verify } from './verify.ts';

export interface BroughtIn extends Joined {
  /** Entries in all, as it stands here now. */
  readonly entries: number;
  /** Bodies about people who were erased: not kept. */
  readonly dropped: number;
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
  const begin = there.judged.view.begin.id;
  const here = await (await openStore()).get('register', 'files');
  if (here === undefined) {
    // Kept as it came, what does not hold too: that is listed with what to do. Only texts of people erased are dropped.
    const { judged, held } = there;
    const hashes = [...judged.view.erased].flatMap((person) => bodiesToDrop(judged, person));
    const gone = new Set(filesHolding(files, hashes));
    await keepFiles(undefined, Object.fromEntries(Object.entries(files).filter(([path]) => !gone.has(path))));
    const came = joinedOf(undefined, held, begin);
    return { ...came, left: [], foreign: 0, entries: judged.entries, dropped: gone.size };
  }
  const held = await holdFiles(here, verify);
  const { entries, dropped, files: merged } = mergeRegisters(held, there.held, asked);
  await keepFiles(here, merged);
  return { ...joinedOf(held, there.held, begin), entries, dropped };
}
