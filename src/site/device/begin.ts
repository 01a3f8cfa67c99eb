/** Beginning a register on this device. Apart from sign.ts: only the register's page does it. */
import { type BeginGiven, begin, beginFaults } from '../../register/acts/begin.ts';
import type { KeyFile } from '../../register/keyFile.ts';
import type { Fault } from '../../trade/given.ts';
import { chance, now } from './edge.ts';
import { withKey, withoutSecret } from './keys.ts';
import { keepWritten } from './register.ts';
import { nobodyAnswers } from './sheets.ts';
import { dayIn } from './verify.ts';

/** What keeps a register from being begun with this key, before its passphrase is asked for. */
export const beginHereFaults = (key: KeyFile, given: BeginGiven): readonly Fault[] =>
  beginFaults(given, { signer: withoutSecret(key), now: now(), chance }, dayIn);

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
