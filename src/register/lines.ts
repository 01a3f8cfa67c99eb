import type { Say } from '../trade/answer.ts';
import { hashOfBytes, utf8 } from './bytes.ts';
import { type Header, headerFault, lineOf, SIGNED_PREFIX } from './header.ts';
import * as shape from './shapes.ts';
import { readCanonical, readJson } from './strictJson.ts';

/** A line whose form is right; whether its signature is, the key says. */
export interface SignedLine {
  readonly id: string;
  readonly header: Header;
  readonly signature: string;
  /** What the signature covers. */
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** A line that is none. */
export interface BadLine {
  readonly code: 'unreadable' | 'altered';
  readonly say: Say;
}

export const altered = (how: 'form' | 'signature'): BadLine => ({
  code: 'altered',
  say: { say: `registerProblem.altered-${how}` },
});

const lineShape = shape.record({ header: shape.anything, signature: shape.hex(64) });

/**
 * Reads one line of a chain's file.
 * @param one  hands back the same text for equal texts, so that a key that stands in every line is kept once
 */
export function readLine(text: string, one: (text: string) => string): SignedLine | BadLine {
  const quick = readCanonical(text);
  const value = quick ?? readPlain(text);
  if (value instanceof Error) return unreadable(value.message);
  const wrong = lineShape(value);
  if (wrong !== undefined) return unreadable(wrong);
  const { header, signature } = value as unknown as { header: Header; signature: string };
  const fault = headerFault(header as never);
  if (fault !== undefined) return unreadable(fault);
  if (quick === undefined && lineOf(header, signature) !== text) return altered('form');
  const register = header.register === null ? null : one(header.register);
  // The header's own text stands in the line as it was signed.
  const bytes = utf8(SIGNED_PREFIX + text.slice(BEFORE.length, text.length - AFTER));
  return {
    id: hashOfBytes(bytes.subarray(SIGNED_PREFIX.length)),
    header: { ...header, register, signer: one(header.signer) },
    signature,
    bytes,
  };
}

const BEFORE = '{"header":';
const AFTER = ',"signature":""}'.length + 128;

const unreadable = (why: string): BadLine => ({
  code: 'unreadable',
  say: { say: 'registerProblem.unreadable', values: { why } },
});

function readPlain(text: string) {
  try {
    return readJson(text);
  } catch (error) {
    return error as Error;
  }
}
