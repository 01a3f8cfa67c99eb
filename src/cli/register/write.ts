/** What the verbs that write have in common: the folder opened, an entry written, its id said. */
import { hash as engineHash } from 'node:crypto';
import type { Hash } from '../../register/bytes.ts';
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
import { onlyFolder, readWhole } from './folder.ts';
import { writeFolder } from './folderWrite.ts';
import type { Options } from './options.ts';

export const chance: Chance = (bytes) => crypto.getRandomValues(new Uint8Array(bytes));
export const verify = verifierOf(globalThis.crypto.subtle);
/** SHA-256 by the engine: many times as fast as what the register has of its own, and the same. */
export const hash: Hash = (text) => engineHash('sha256', text, 'hex');

/**
 * Opens the register in a folder.
 * @param time  now, or what tells it once the folder was read: nothing that was read is later than that
 * @throws {GivenError} there is none, or it has no beginning
 */
export async function open(
  folder: string,
  time: number | (() => number),
  more: { readonly knownOn?: string | undefined } = {},
): Promise<Register> {
  const { files, left } = readWhole(folder);
  for (const { file, why } of left) process.stderr.write(`${file} is not read: ${why}\n`);
  const now = typeof time === 'number' ? time : time();
  try {
    return await openRegister(files, { verify, hash, now, dayIn, ...more });
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
  const clock = options.call.text('at') === undefined ? Date.now : () => now;
  let entry: string | undefined;
  try {
    // Should another process sign with this key at the same moment, the entry is worked out anew on top of its.
    entry = await inTurn(folder, async () => {
      if (!options.isGood('at', 'map')) return '';
      let time = now;
      const register = await open(folder, () => {
        time = clock();
        return time;
      });
      if (signer === undefined) return '';
      const writing = { signer, now: time, chance, device: options.call.text('device') };
      const written = await act(register, writing);
      if (options.faults.length > 0) return '';
      return writeFolder(folder, written, register.files) ? written.entry : undefined;
    });
  } catch (cause) {
    options.takeNew(cause);
  }
  options.done();
  return { json: plain({ entry }), exit: 0 };
}

/** So often is something worked out anew because others wrote meanwhile. */
const ROUNDS = 50;

/**
 * Does what reads a folder, works something out and writes it, again until nobody else has written in between.
 * @param step  `undefined`: somebody has
 * @throws {GivenError} others write all the time
 */
export async function inTurn<T>(folder: string, step: () => Promise<T | undefined>): Promise<T> {
  onlyFolder(folder);
  for (let round = 0; round < ROUNDS; round += 1) {
    const done = await step();
    if (done !== undefined) return done;
  }
  const message = 'others write here all the time, and nothing was written';
  throw new GivenError([{ field: 'DIR', value: folder, message, todo: 'do it again in a while' }]);
}

export const folderOf = (call: Call): string => pathHere(call.words[0] ?? '');
