/**
 * The key of this device. It is kept wrapped; opened for one signature inside `withKey`, and nothing opened outlives
 * that call.
 */
import { type KeyFile, makeKey, readKeyFile, unwrapKey, wrapKey } from '../../register/keyFile.ts';
import type { Signer } from '../../register/keys.ts';
import { deviceName } from '../../register/shapes.ts';
import { type Fault, GivenError } from '../../trade/given.ts';
import { chance, subtle } from './edge.ts';
import { openStore } from './store.ts';

export async function ownKey(): Promise<KeyFile | undefined> {
  return (await openStore()).get('key', 'own');
}

function engine(): SubtleCrypto {
  const found = subtle();
  if (found !== undefined) return found;
  throw new GivenError([
    {
      field: 'passphrase',
      message: 'this page has no means to wrap a key',
      todo: 'open the page over https, or on localhost',
    },
  ]);
}

/** What is wrong with the name of a device. */
export function deviceFaults(device: string): readonly Fault[] {
  if (deviceName(device) === undefined) return [];
  const message = device === '' ? 'no name is written' : 'no name of a device';
  return [{ field: 'device', value: device, message, todo: 'write 1 to 32 letters, digits, or -' }];
}

/**
 * Makes this device's key, wrapped by a passphrase, and keeps it.
 * @throws {GivenError} no name of a device, an empty passphrase, a page without means
 */
export async function makeOwnKey(device: string, passphrase: string): Promise<KeyFile> {
  const key = await wrapKey(makeKey(device, chance), passphrase, engine(), chance);
  await keep(key);
  return key;
}

/**
 * Takes in a key that was carried off elsewhere, under this device's own name: one name, one chain of entries.
 * @throws {GivenError} not a wrapped key file, no name of a device
 */
export async function takeInKey(text: string, device: string): Promise<KeyFile> {
  const key = readKeyFile(text);
  if (key.secret.form === 'open') {
    throw new GivenError([
      { field: 'key', message: 'this key is not wrapped', todo: 'take one that has a passphrase' },
    ]);
  }
  const wrong = deviceFaults(device);
  if (wrong.length > 0) throw new GivenError(wrong);
  const own = { ...key, device };
  await keep(own);
  return own;
}

async function keep(key: KeyFile): Promise<void> {
  const database = await openStore();
  await database.put('key', key, 'own');
  await database.put('texts', key.device, 'device');
}

/**
 * Opens a wrapped key, does one thing with it, lets it go.
 * @throws {GivenError} the passphrase does not open it, and all that `act` throws
 */
export async function withKey<T>(
  key: KeyFile,
  passphrase: string,
  act: (signer: Signer) => Promise<T>,
): Promise<T> {
  return act(await unwrapKey(key, passphrase, engine()));
}

/** The public half, for finding faults before a passphrase is asked for. */
export const withoutSecret = ({ publicKey, device }: KeyFile): Signer => ({
  publicKey,
  device,
  sign: () => Promise.reject(new Error('this signer only looks')),
});

/** The name that this device goes by, if it has one. */
export async function deviceOfOwn(): Promise<string | undefined> {
  return (await openStore()).get('texts', 'device');
}
