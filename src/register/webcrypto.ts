import { fromHex, isHex } from './bytes.ts';
import { isGoodPoint, type Verify, verifyPlain } from './keys.ts';

/**
 * Verifies with the device's own engine where it knows Ed25519, and without it otherwise (an http page has no engine).
 * Keys are tested once and kept, so that a long register costs one import a signer.
 *
 * @param subtle  `crypto.subtle`, or `undefined` where there is none
 */
export function verifierOf(subtle: SubtleCrypto | undefined): Verify {
  const keys = new Map<string, Promise<CryptoKey | 'bad' | 'plain'>>();

  const open = async (publicKey: string): Promise<CryptoKey | 'bad' | 'plain'> => {
    if (!isGoodPoint(publicKey)) return 'bad';
    if (subtle === undefined) return 'plain';
    try {
      return await subtle.importKey('raw', fromHex(publicKey), 'Ed25519', false, ['verify']);
    } catch {
      return 'plain';
    }
  };

  return async (publicKey, message, signature) => {
    if (!isHex(signature, 64)) return false;
    const known = keys.get(publicKey) ?? open(publicKey);
    keys.set(publicKey, known);
    const key = await known;
    if (key === 'bad') return false;
    if (key === 'plain' || subtle === undefined) return verifyPlain(publicKey, message, signature);
    // Prime order of the key and the engine's plain equation leave R no choice but prime order too.
    return subtle.verify('Ed25519', key, fromHex(signature), message);
  };
}
