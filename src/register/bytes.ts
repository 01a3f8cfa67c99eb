import { sha256 } from '@noble/hashes/sha2.js';

const encoder = new TextEncoder();

export const utf8 = (text: string): Uint8Array<ArrayBuffer> =>
  encoder.encode(text) as Uint8Array<ArrayBuffer>;

const DIGITS = Array.from('0123456789abcdef', (digit) => digit.charCodeAt(0));

export function toHex(bytes: Uint8Array): string {
  let text = '';
  // As one piece and not as a chain of small ones, which is slow to compare.
  for (let from = 0; from < bytes.length; from += 64) {
    const codes: number[] = [];
    for (const b of bytes.subarray(from, from + 64))
      codes.push(DIGITS[b >> 4] as number, DIGITS[b & 15] as number);
    text += String.fromCharCode(...codes);
  }
  return text;
}

/** @param hex  small hexadecimal digits, an even number of them (see `isHex`) */
export function fromHex(hex: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(hex.length / 2);
  for (let i = 0; i < bytes.length; i++) bytes[i] = 16 * digitAt(hex, 2 * i) + digitAt(hex, 2 * i + 1);
  return bytes;
}

function digitAt(hex: string, i: number): number {
  const code = hex.charCodeAt(i);
  return code < 0x3a ? code - 0x30 : code - 0x57;
}

/** Whether a value is a text of exactly `bytes` bytes in small hexadecimal digits. */
export function isHex(value: unknown, bytes: number): value is string {
  return typeof value === 'string' && value.length === 2 * bytes && /^[0-9a-f]*$/.test(value);
}

/** SHA-256 of the UTF-8 of a text, in hexadecimal: `hashOf`, or what an engine has of its own. */
export type Hash = (text: string) => string;

/** SHA-256, in hexadecimal. */
export const hashOfBytes = (bytes: Uint8Array): string => toHex(sha256(bytes));

/** SHA-256 of the UTF-8 of a text, in hexadecimal. */
export const hashOf: Hash = (text) => hashOfBytes(utf8(text));

/** Texts are sorted by code units everywhere: the order is the same on every device and in every language. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
