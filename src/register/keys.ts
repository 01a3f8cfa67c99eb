import { ed25519 } from '@noble/curves/ed25519.js';
import { fromHex, isHex } from './bytes.ts';

/** One signature at a time: whoever holds the key opens it, signs, and drops it. */
export interface Signer {
  /** 64 hexadecimal digits. */
  readonly publicKey: string;
  readonly device: string;
  /** Signs the bytes handed over; 64 bytes come back. Called once an entry. */
  sign(message: Uint8Array<ArrayBuffer>): Promise<Uint8Array>;
}

/** Whether a signature (128 hexadecimal digits) is the key's on these bytes. Never throws. */
export type Verify = (
  publicKey: string,
  message: Uint8Array<ArrayBuffer>,
  signature: string,
) => Promise<boolean>;

/**
 * Whether a point's 32 bytes are canonical, of prime order and not the identity: what a key, and the first half of a
 * signature, must be, so that all engines agree on every signature.
 * Source: RFC 8032 §5.1.3 (decoding); the demand for prime order is this format's own rule.
 */
export function isGoodPoint(hex: string): boolean {
  if (!isHex(hex, 32)) return false;
  try {
    const point = ed25519.Point.fromBytes(fromHex(hex), false);
    return !point.is0() && point.isTorsionFree();
  } catch {
    return false;
  }
}

/** Verifies without the device's own engine: slow, but it needs nothing. */
export function verifyPlain(publicKey: string, message: Uint8Array, signature: string): boolean {
  if (!isHex(signature, 64) || !isGoodPoint(publicKey) || !isGoodPoint(signature.slice(0, 64))) return false;
  try {
    return ed25519.verify(fromHex(signature), message, fromHex(publicKey), { zip215: false });
  } catch {
    return false;
  }
}

export const signPlain = (seed: Uint8Array, message: Uint8Array): Uint8Array => ed25519.sign(message, seed);
export const publicKeyOf = (seed: Uint8Array): Uint8Array => ed25519.getPublicKey(seed);
