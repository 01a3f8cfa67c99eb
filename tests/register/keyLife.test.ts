/** How long a key stands open, and the same key under another passphrase. */
import { expect, test } from 'vitest';
import { toHex } from '../../src/register/bytes.ts';
import {
  type Chance,
  ITERATIONS,
  makeKey,
  openKey,
  sealAnew,
  unwrapKey,
  wrapKey,
} from '../../src/register/keyFile.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';

const chance: Chance = (n) => crypto.getRandomValues(new Uint8Array(n));
const { subtle } = crypto;
const verify = verifierOf(subtle);
const message = new TextEncoder().encode('a line to be signed');

test('a closed key signs nothing more; what it signed before stays good', async () => {
  const key = await wrapKey(makeKey('desk', chance), 'five rods and a strut', subtle, chance);
  const opened = await openKey(key, 'five rods and a strut', subtle);
  const signature = toHex(await opened.signer.sign(message));
  expect(await verify(key.publicKey, message, signature)).toBe(true);
  opened.close();
  await expect(opened.signer.sign(message)).rejects.toThrow('the key was closed meanwhile');
});

test('sealed anew it is the same key under the next passphrase alone, with a salt and an iv of its own', async () => {
  const key = await wrapKey(makeKey('desk', chance), 'five rods and a strut', subtle, chance);
  const sealed = await sealAnew(key, 'five rods and a strut', 'kept in the safe', subtle, chance);
  expect(sealed.publicKey).toBe(key.publicKey);
  if (sealed.secret.form === 'open' || key.secret.form === 'open') throw new Error('both are wrapped');
  expect(sealed.secret.iterations).toBe(ITERATIONS);
  expect(sealed.secret.salt).not.toBe(key.secret.salt);
  expect(sealed.secret.iv).not.toBe(key.secret.iv);
  const signer = await unwrapKey(sealed, 'kept in the safe', subtle);
  expect(await verify(key.publicKey, message, toHex(await signer.sign(message)))).toBe(true);
  await expect(unwrapKey(sealed, 'five rods and a strut', subtle)).rejects.toThrow('does not open this key');
  // The file that was sealed before keeps the passphrase it had.
  await expect(unwrapKey(key, 'five rods and a strut', subtle)).resolves.toBeDefined();
});

test('it is not sealed with a wrong passphrase, nor under an empty one', async () => {
  const key = await wrapKey(makeKey('desk', chance), 'five rods and a strut', subtle, chance);
  await expect(sealAnew(key, 'six rods', 'kept in the safe', subtle, chance)).rejects.toThrow(
    'does not open',
  );
  await expect(sealAnew(key, 'five rods and a strut', '', subtle, chance)).rejects.toThrow('is empty');
});
