/** Signing on this device: open the register, open the key, write one entry, keep it, let the key go. */
import type { Judged } from '../../register/judged.ts';
import type { KeyFile } from '../../register/keyFile.ts';
import type { Writing, Written } from '../../register/write.ts';
import { GivenError } from '../../trade/given.ts';
import { chance } from './edge.ts';
import { withKey } from './keys.ts';
import { keepWritten, ownRegister } from './register.ts';
import { nobodyAnswers } from './sheets.ts';

/**
 * Signs one entry into this device's register. The key is open for the length of this call.
 * @returns the id of the entry
 * @throws {GivenError} what `act` refuses, a wrong passphrase, a register that changed meanwhile
 */
export async function signHere(
  key: KeyFile,
  passphrase: string,
  act: (judged: Judged, writing: Writing) => Promise<Written>,
): Promise<string> {
  await nobodyAnswers();
  const opened = await ownRegister();
  if (opened === undefined) {
    const todo = 'bring in the file that the owner handed you';
    throw new GivenError([{ field: 'register', message: 'no register is on this device', todo }]);
  }
  const written = await withKey(key, passphrase, (signer) =>
    act(opened.judged, { signer, now: opened.at, chance }),
  );
  await keepWritten(opened.files, written);
  return written.entry;
}
