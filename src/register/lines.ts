import type { Say } from '../trade/answer.ts';
import { type Hash, hashOf, utf8 } from './bytes.ts';
import { type Header, headerFault, lineOf, SIGNED_PREFIX } from './header.ts';
import { readQuick } from './quickLine.ts';
import * as shape from './shapes.ts';
import { readJson } from './strictJson.ts';

/** A line whose form is right; whether its signature is, the key says. */
export interface SignedLine {
  readonly id: string;
  readonly header: Header;
  readonly signature: string;
  /** The header's own text, as it was signed. */
  readonly text: string;
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

/** The bytes that the signature of a line covers. */
export const coveredBytes = ({ text }: Pick<SignedLine, 'text'>): Uint8Array<ArrayBuffer> =>
  utf8(SIGNED_PREFIX + text);

/**
 * Reads one line of a chain's file.
 * @param one   hands back the same text for equal texts, so that a key that stands in every line is kept once
 * @param hash  SHA-256 of a text's UTF-8, in hexadecimal
 */
export function readLine(
  text: string,
  one: (text: string) => string,
  hash: Hash = hashOf,
): SignedLine | BadLine {
  const quick = readQuick(text, one);
  if (quick !== undefined)
    return { id: hash(quick.text), header: quick.header, signature: quick.signature, text: quick.text };
  const value = readPlain(text);
  if (value instanceof Error) return unreadable(value.message);
  const wrong = lineShape(value);
  if (wrong !== undefined) return unreadable(wrong);
  const { header, signature } = value as unknown as { header: Header; signature: string };
  const fault = headerFault(header as never);
  if (fault !== undefined) return unreadable(fault);
  if (lineOf(header, signature) !== text) return altered('form');
  // The header's own text stands in the line as it was signed.
  const own = text.slice(BEFORE.length, text.length - AFTER);
  return { id: hash(own), header, signature, text: own };
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
