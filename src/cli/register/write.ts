/** What the verbs that write have in common: the folder opened, an entry written, its id said. */
import { NoRegister } from '../../register/judged.ts';
import type { Chance } from '../../register/keyFile.ts';
import type { Signer } from '../../register/keys.ts';
import { openRegister, type Register } from '../../register/register.ts';
import { verifierOf } from '../../register/webcrypto.ts';
import type { Writing, Written } from '../../register/write.ts';
import { dayIn } from '../../schema/dayIn.ts';
import { GivenError } from '../../trade/given.ts';
import { plain } from '../envelope.ts';
import { pathHere } from '../input.ts';
import type { Call, Outcome } from '../verb.ts';
import { readFolder, writeFolder } from './folder.ts';
import type { Options } from './options.ts';

export const chance: Chance = (bytes) => crypto.getRandomValues(new Uint8Array(bytes));
export const verify = verifierOf(globalThis.crypto.subtle);

/** Opens the register in a folder. @throws {GivenError} there is none, or it has no beginning */
export async function open(
  folder: string,
  now: number,
  more: { readonly knownOn?: string | undefined } = {},
): Promise<Register> {
  try {
    return await openRegister(readFolder(folder), { verify, now, dayIn, ...more });
  } catch (cause) {
    if (!(cause instanceof NoRegister)) throw cause;
    const todo = 'run register verify, and put back what it names';
    throw new GivenError([{ field: 'DIR', value: folder, message: 'its beginning cannot be read', todo }]);
  }
}

/**
 * Opens, writes, and says what was written. What the register has against an entry is said together with what is wrong
 * with the options, as far as it can be judged without them.
 */
export async function write(
  folder: string,
  options: Options,
  signer: Signer | undefined,
  now: number,
  act: (register: Register, writing: Writing) => Promise<Written>,
): Promise<Outcome> {
  let entry: string | undefined;
  try {
    // Should another process sign with this key at the same moment, the entry is worked out anew on top of its.
    while (entry === undefined && options.isGood('at', 'map')) {
      const register = await open(folder, now);
      if (signer === undefined) break;
      const written = await act(register, { signer, now, chance, device: options.call.text('device') });
      if (options.faults.length > 0) break;
      if (writeFolder(folder, written, register.files)) entry = written.entry;
    }
  } catch (cause) {
    options.takeNew(cause);
  }
  options.done();
  return { json: plain({ entry }), exit: 0 };
}

export const folderOf = (call: Call): string => pathHere(call.words[0] ?? '');
