/** Node's own engine and the plain one take the same signatures, the hostile ones too. */
import { ed25519 } from '@noble/curves/ed25519.js';
import { describe, expect, test } from 'vitest';
import { fromHex } from '../../src/register/bytes.ts';
import { isGoodPoint } from '../../src/register/keys.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import { keyCases, signatureCases } from './signatureCases.ts';

const engine = verifierOf(globalThis.crypto.subtle);
const plain = verifierOf(undefined);

describe('signatures at the edges', () => {
  test.each(signatureCases)('$id: $takes', async ({ publicKey, message, signature, takes }) => {
    expect(await engine(publicKey, fromHex(message), signature)).toBe(takes);
    expect(await plain(publicKey, fromHex(message), signature)).toBe(takes);
  });
  test('the engine is one that knows Ed25519: it is not the plain one twice', async () => {
    const [good] = signatureCases.filter(({ id }) => id === 'good');
    const raw = fromHex(good?.publicKey ?? '');
    const key = await crypto.subtle.importKey('raw', raw, 'Ed25519', false, ['verify']);
    expect(key.algorithm.name).toBe('Ed25519');
  });
  test('the one with a point of order 8 holds with the cofactor: only the plain equation refuses it', () => {
    const [made] = signatureCases.filter(({ id }) => id.startsWith('R with a point'));
    const { publicKey = '', message = '', signature = '' } = made ?? {};
    // ZIP 215, as this package has it by default, multiplies by the cofactor
    expect(ed25519.verify(fromHex(signature), fromHex(message), fromHex(publicKey))).toBe(true);
  });
  test.each(keyCases)('key $publicKey: $source', async ({ publicKey, good }) => {
    expect(isGoodPoint(publicKey)).toBe(good);
    if (good) return;
    for (const { message, signature } of signatureCases) {
      expect(await engine(publicKey, fromHex(message), signature)).toBe(false);
    }
  });
});
