/**
 * The key of this device. It is kept wrapped; opened for one signature inside `withKey`, and nothing opened outlives
 * that call, the page's being left, or two minutes.
 */
import {
  type KeyFile,
  keyFileText,
  makeKey,
  openKey,
  readKeyFile,
  sealAnew,
  wrapKey,
} from '../../register/keyFile.ts';
import type { Signer } from '../../register/keys.ts';
import { chainPath } from '../../register/paths.ts';
import { deviceName } from '../../register/shapes.ts';
import { type Fault, GivenError } from '../../trade/given.ts';
import { withChains } from './chains.ts';
import { chance, subtle } from './edge.ts';
import { onLeaving } from './leaving.ts';
import { nobodyAnswers } from './sheets.ts';
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

/** The key of this device as a page read it: what it writes is written in the place of that one, and of no other. */
type Seen = KeyFile | undefined;

/**
 * Makes this device's key, wrapped by a passphrase, and keeps it in the place of the one that the page saw.
 * @throws {GivenError} no name of a device, an empty passphrase, a page without means, another key is here meanwhile
 */
export async function makeOwnKey(seen: Seen, device: string, passphrase: string): Promise<KeyFile> {
  const key = await wrapKey(makeKey(device, chance), passphrase, engine(), chance);
  await keep(seen, key);
  return key;
}

/**
 * Takes in a key that was carried off elsewhere, under this device's own name: one name, one chain of entries.
 * @throws {GivenError} not a wrapped key file, no name of a device, another key is here meanwhile
 */
export async function takeInKey(seen: Seen, text: string, device: string): Promise<KeyFile> {
  const key = readKeyFile(text);
  if (key.secret.form === 'open') {
    throw new GivenError([
      { field: 'key', message: 'this key is not wrapped', todo: 'take one that has a passphrase' },
    ]);
  }
  const wrong = [...deviceFaults(device), ...(await usedFaults(key, device))];
  if (wrong.length > 0) throw new GivenError(wrong);
  const own = { ...key, device };
  await keep(seen, own);
  return own;
}

/**
 * A name under which the key has signed already is refused, unless it is this very device's own: two devices of one
 * name number their entries alike, and both are in doubt. So is the name in the key's file: the device of that name has it
 * still, or it was lost with entries that nobody here may know.
 */
async function usedFaults(
  { publicKey, device: earlier }: KeyFile,
  device: string,
): Promise<readonly Fault[]> {
  const own = await ownKey();
  if (own?.publicKey === publicKey && own.device === device) return [];
  if (device === earlier) {
    const message = 'the device that this key comes from has that name';
    return [{ field: 'device', value: device, message, todo: 'name this device anew' }];
  }
  const files = await (await openStore()).get('register', 'files');
  if (files === undefined || !Object.hasOwn(files, chainPath(publicKey, device))) return [];
  const message = 'this key has signed under that name already';
  return [{ field: 'device', value: device, message, todo: 'write a name that it was never used under' }];
}

/**
 * One key is put in the place of another in one transaction, which no other window gets into: else the later of two
 * would rub the earlier one out unseen, and what that one signed could never be signed on.
 */
async function keep(seen: Seen, key: KeyFile): Promise<void> {
  const change = (await openStore()).transaction(['key', 'texts'], 'readwrite');
  const kept = await change.objectStore('key').get('own');
  const same =
    kept === undefined || seen === undefined ? kept === seen : keyFileText(kept) === keyFileText(seen);
  if (!same) {
    change.abort();
    await change.done.catch(() => undefined);
    throw new GivenError([
      {
        field: 'key',
        message: 'another window has written meanwhile',
        todo: 'look at the key that is here now, then do it once more',
      },
    ]);
  }
  const texts = change.objectStore('texts');
  const chains = withChains(await texts.get('chains'), seen, key);
  await Promise.all([
    change.objectStore('key').put(key, 'own'),
    texts.put(key.device, 'device'),
    texts.put(chains, 'chains'),
    change.done,
  ]);
}

/**
 * Seals this device's key under another passphrase. `here`: it is kept so from now on; else only the copy that comes
 * back is, for carrying off.
 * @throws {GivenError} the passphrase that is now does not open it; the next one is empty; a sheet is being answered here;
 *   another key is here meanwhile
 */
export async function sealOwnKey(
  key: KeyFile,
  passphrase: string,
  next: string,
  here: boolean,
): Promise<KeyFile> {
  await nobodyAnswers();
  const sealed = await sealAnew(key, passphrase, next, engine(), chance);
  if (here) await keep(key, sealed);
  return sealed;
}

/**
 * Opens a wrapped key, does one thing with it, closes it: at the end of the call, when the page is left or hidden, or
 * after two minutes, whichever comes first. What would be signed after that is refused.
 * @throws {GivenError} the passphrase does not open it, it was closed meanwhile, and all that `act` throws
 */
export async function withKey<T>(
  key: KeyFile,
  passphrase: string,
  act: (signer: Signer) => Promise<T>,
): Promise<T> {
  // Listened for before the key is opened: that takes a while, and the page may be left in it.
  let left = false;
  let close = () => {};
  const done = onLeaving(() => {
    left = true;
    close();
  });
  try {
    const opened = await openKey(key, passphrase, engine());
    close = opened.close;
    if (left) close();
    return await act(opened.signer);
  } finally {
    close();
    done();
  }
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
