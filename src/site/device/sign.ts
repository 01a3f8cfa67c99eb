/** Signing on this device: open the register, open the key, write one entry, keep it, let the key go. */
import { type BeginGiven, begin } from '../../register/begin.ts';
import type { Judged } from '../../register/judged.ts';
import type { KeyFile } from '../../register/keyFile.ts';
import type { Writing, Written } from '../../register/write.ts';
import { GivenError } from '../../trade/given.ts';
import { chance, dayIn, now } from './edge.ts';
import { withKey } from './keys.ts';
import { keepWritten, ownRegister } from './register.ts';
import { sheetBeingAnswered } from './sheets.ts';

/** @throws {GivenError} a sheet is being answered on this device: then nothing is signed on it */
async function nobodyAnswers(): Promise<void> {
  if ((await sheetBeingAnswered()) === undefined) return;
  const todo = 'hand its answers over, or end it';
  throw new GivenError([{ field: 'device', message: 'a sheet is being answered on this device', todo }]);
}

/**
 * Begins this device's register with its key.
 * @returns the id of the entry
 * @throws {GivenError} what `begin` refuses, a wrong passphrase, a register that is here already
 */
export async function beginHere(key: KeyFile, passphrase: string, given: BeginGiven): Promise<string> {
  await nobodyAnswers();
  const written = await withKey(key, passphrase, (signer) =>
    begin(given, { signer, now: now(), chance }, dayIn),
  );
  await keepWritten(undefined, written);
  return written.entry;
}

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
