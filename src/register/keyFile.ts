import { GivenError } from '../trade/given.ts';
import { fromHex, toHex, utf8 } from './bytes.ts';
import type { Json, JsonObject } from './canonical.ts';
import { isGoodPoint, publicKeyOf, type Signer, signPlain } from './keys.ts';
import * as shape from './shapes.ts';
import { readJson } from './strictJson.ts';

/** A signer's key as it is kept; FORMAT.md "Keys". */
export interface KeyFile {
  readonly v: 1;
  readonly kind: 'key';
  readonly publicKey: string;
  readonly device: string;
  readonly secret:
    | { readonly form: 'open'; readonly seed: string }
    | {
        readonly form: 'wrapped';
        readonly kdf: 'PBKDF2-SHA-256';
        readonly iterations: number;
        readonly salt: string;
        readonly cipher: 'AES-256-GCM';
        readonly iv: string;
        readonly data: string;
      };
}

/** Fills with bytes of chance: `(n) => crypto.getRandomValues(new Uint8Array(n))`. */
export type Chance = (bytes: number) => Uint8Array<ArrayBuffer>;

/** Rounds over the passphrase that a new key takes; fewer than the least are not opened. */
export const ITERATIONS = 600_000;
const MOST_ITERATIONS = 10_000_000;

const secret = shape.either(
  shape.record({
    form: shape.oneOf('wrapped'),
    kdf: shape.oneOf('PBKDF2-SHA-256'),
    iterations: (v) =>
      typeof v === 'number' && Number.isInteger(v) && v >= ITERATIONS && v <= MOST_ITERATIONS
        ? undefined
        : `wants ${ITERATIONS} to ${MOST_ITERATIONS}`,
    salt: shape.hex(16),
    cipher: shape.oneOf('AES-256-GCM'),
    iv: shape.hex(12),
    data: shape.hex(48),
  }),
  shape.record({ form: shape.oneOf('open'), seed: shape.hex(32) }),
);
const keyShape = shape.record({
  v: shape.oneOf(1),
  kind: shape.oneOf('key'),
  publicKey: shape.hex(32),
  device: shape.deviceName,
  secret,
});
const publicShape = shape.record({
  v: shape.oneOf(1),
  kind: shape.oneOf('public-key'),
  publicKey: shape.hex(32),
});

const fault = (field: string, message: string, todo: string, value?: unknown): GivenError =>
  new GivenError([{ field, ...(value === undefined ? {} : { value }), message, todo }]);

/** Makes a key that is kept open: for a device whose disk is guarded otherwise. `wrapKey` closes it. */
export function makeKey(device: string, chance: Chance): KeyFile {
  if (shape.deviceName(device) !== undefined) {
    throw fault('device', 'no name of a device', 'write 1 to 32 letters, digits, or -', device);
  }
  const seed = chance(32);
  return {
    v: 1,
    kind: 'key',
    publicKey: toHex(publicKeyOf(seed)),
    device,
    secret: { form: 'open', seed: toHex(seed) },
  };
}

const wrappingKey = async (
  subtle: SubtleCrypto,
  passphrase: string,
  salt: string,
  iterations: number,
  use: 'encrypt' | 'decrypt',
): Promise<CryptoKey> => {
  const phrase = await subtle.importKey('raw', utf8(passphrase.normalize('NFC')), 'PBKDF2', false, [
    'deriveKey',
  ]);
  return subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt: fromHex(salt), iterations },
    phrase,
    { name: 'AES-GCM', length: 256 },
    false,
    [use],
  );
};

/**
 * Closes an open key with a passphrase.
 * @throws {GivenError} the key is closed already, or the passphrase is empty
 */
export async function wrapKey(
  key: KeyFile,
  passphrase: string,
  subtle: SubtleCrypto,
  chance: Chance,
): Promise<KeyFile> {
  if (key.secret.form === 'wrapped') throw fault('key', 'is wrapped already', 'unwrap it first');
  if (passphrase === '') throw fault('passphrase', 'is empty', 'think of one that nobody guesses');
  const [salt, iv] = [toHex(chance(16)), toHex(chance(12))];
  const wrapping = await wrappingKey(subtle, passphrase, salt, ITERATIONS, 'encrypt');
  const data = await subtle.encrypt(
    { name: 'AES-GCM', iv: fromHex(iv), additionalData: fromHex(key.publicKey) },
    wrapping,
    fromHex(key.secret.seed),
  );
  return {
    ...key,
    secret: {
      form: 'wrapped',
      kdf: 'PBKDF2-SHA-256',
      iterations: ITERATIONS,
      salt,
      cipher: 'AES-256-GCM',
      iv,
      data: toHex(new Uint8Array(data)),
    },
  };
}

/** A key that stands open: `close` wipes the seed, and what is signed after it throws. */
export interface OpenKey {
  readonly signer: Signer;
  close(): void;
}

/**
 * Opens a key. Close it after one signature.
 * @throws {GivenError} no passphrase for a wrapped key, a wrong one, or a seed that is not the public key's
 */
export async function openKey(
  key: KeyFile,
  passphrase: string | undefined,
  subtle: SubtleCrypto | undefined,
): Promise<OpenKey> {
  const seed = await seedOf(key, passphrase, subtle);
  let closed = false;
  const signer: Signer = {
    publicKey: key.publicKey,
    device: key.device,
    sign: async (message) => {
      if (closed) throw fault('key', 'the key was closed meanwhile', 'open it again with its passphrase');
      return signPlain(seed, message);
    },
  };
  const close = () => {
    closed = true;
    seed.fill(0);
  };
  return { signer, close };
}

/** The same for who keeps the key open as long as the process lives: the command. */
export async function unwrapKey(
  key: KeyFile,
  passphrase: string | undefined,
  subtle: SubtleCrypto | undefined,
): Promise<Signer> {
  return (await openKey(key, passphrase, subtle)).signer;
}

/**
 * The same key under another passphrase: to change it, or to seal a copy for carrying off. Salt and iv are new.
 * @throws {GivenError} the passphrase that is now does not open it, or the next one is empty
 */
export async function sealAnew(
  key: KeyFile,
  passphrase: string | undefined,
  next: string,
  subtle: SubtleCrypto,
  chance: Chance,
): Promise<KeyFile> {
  const seed = await seedOf(key, passphrase, subtle);
  try {
    return await wrapKey({ ...key, secret: { form: 'open', seed: toHex(seed) } }, next, subtle, chance);
  } finally {
    seed.fill(0);
  }
}

async function seedOf(
  key: KeyFile,
  passphrase: string | undefined,
  subtle: SubtleCrypto | undefined,
): Promise<Uint8Array> {
  const seed = await secretOf(key, passphrase, subtle);
  if (toHex(publicKeyOf(seed)) === key.publicKey) return seed;
  throw fault('key', 'its secret half belongs to another public key', 'take the key file from your copy');
}

async function secretOf(
  key: KeyFile,
  passphrase: string | undefined,
  subtle: SubtleCrypto | undefined,
): Promise<Uint8Array> {
  const { secret } = key;
  if (secret.form === 'open') return fromHex(secret.seed);
  if (passphrase === undefined) throw fault('passphrase', 'the key is wrapped', 'give its passphrase');
  if (subtle === undefined) {
    throw fault(
      'key',
      'this page has no means to open a wrapped key',
      'open the page over https or on localhost',
    );
  }
  const wrapping = await wrappingKey(subtle, passphrase, secret.salt, secret.iterations, 'decrypt');
  try {
    const seed = await subtle.decrypt(
      { name: 'AES-GCM', iv: fromHex(secret.iv), additionalData: fromHex(key.publicKey) },
      wrapping,
      fromHex(secret.data),
    );
    return new Uint8Array(seed);
  } catch {
    throw fault('passphrase', 'does not open this key', 'type it again');
  }
}

export const keyFileText = (key: KeyFile): string => `${JSON.stringify(key, null, 2)}\n`;

/** What others need of a key: hand this file over to be appointed. */
export const publicKeyText = (publicKey: string): string =>
  `${JSON.stringify({ v: 1, kind: 'public-key', publicKey }, null, 2)}\n`;

/** @throws {GivenError} not a key file, or a key that no register takes */
export function readKeyFile(text: string): KeyFile {
  const value = jsonOf(text);
  const wrong = keyShape(value);
  if (wrong !== undefined) throw fault('key', `not a key file (${wrong})`, 'give the file that "key" made');
  const key = value as unknown as KeyFile;
  if (!isGoodPoint(key.publicKey)) throw badKey('key', key.publicKey);
  return key;
}

/**
 * Reads a public key: 64 hexadecimal digits, the text of a public-key file, or of a key file.
 * @throws {GivenError}
 */
export function readPublicKey(text: string): string {
  const plain = text.trim();
  const key = /^[0-9a-fA-F]{64}$/.test(plain) ? plain.toLowerCase() : publicHalf(jsonOf(text));
  if (!isGoodPoint(key)) throw badKey('publicKey', key);
  return key;
}

/**
 * Reads the file that one person hands another: a public key, never a key file, whose secret half should have stayed.
 * @throws {GivenError}
 */
export function readPublicFile(text: string): string {
  const isText = /^\s*[0-9a-fA-F]{64}\s*$/.test(text);
  if (!isText && keyShape(jsonOf(text)) === undefined) {
    const message = 'this is the secret key file; never hand it out';
    throw fault(
      'publicKey',
      message,
      'ask for the public file, and have a new key made if this one went around',
    );
  }
  return readPublicKey(text);
}

function publicHalf(value: Json): string {
  if (publicShape(value) !== undefined && keyShape(value) !== undefined) {
    throw fault('publicKey', 'no public key', 'give 64 hexadecimal digits or a public-key file');
  }
  return (value as JsonObject)['publicKey'] as string;
}

function jsonOf(text: string): Json {
  try {
    return readJson(text);
  } catch (error) {
    throw fault('', `not JSON (${(error as Error).message})`, 'give the file as it was made');
  }
}

const badKey = (field: string, value: string): GivenError =>
  fault(
    field,
    'not a key that can be trusted (not canonical, or of small order)',
    'make a key with "key"',
    value,
  );
