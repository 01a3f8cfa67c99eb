import { byText, hashOf, utf8 } from './bytes.ts';
import { canonical, type Json, type JsonObject } from './canonical.ts';
import * as shape from './shapes.ts';

/** A head of another chain, taken in: enough to say what it may have been where it is not held. */
export type Citation = {
  readonly id: string;
  readonly signer: string;
  readonly device: string;
  readonly seq: number;
};

/** The signed part of an entry; FORMAT.md "Header" has the fields. */
export type Header = {
  readonly v: 1;
  readonly kind: string;
  readonly register: string | null;
  readonly signer: string;
  readonly device: string;
  readonly seq: number;
  readonly prev: string | null;
  readonly seen: readonly Citation[];
  readonly time: string;
  readonly about: string | null;
  readonly target: readonly string[];
  readonly key: string | null;
  readonly body: string | null;
};

/** Most heads that one entry may cite; entries of kind `seen` carry the rest first. */
export const MOST_SEEN = 32;

/** Most entries that one entry may act on. */
export const MOST_TARGETS = 256;

/** What is signed begins with these bytes, so that no signature passes for one on another kind of text. */
export const SIGNED_PREFIX = 'trayhand-register-1\n';

const id = shape.hex(32);
const citation = shape.record({ id, signer: id, device: shape.deviceName, seq: shape.count(0) });
const fields = shape.record({
  v: shape.oneOf(1),
  kind: shape.kindName,
  register: shape.orNull(id),
  signer: id,
  device: shape.deviceName,
  seq: shape.count(0),
  prev: shape.orNull(id),
  seen: shape.sorted(citation, (c) => (c as JsonObject)['id'] as string, MOST_SEEN),
  time: shape.instant,
  about: shape.orNull(shape.personId),
  target: shape.sorted(id, String, MOST_TARGETS),
  key: shape.orNull(id),
  body: shape.orNull(id),
});

/** Says what keeps a value from being a header; `undefined` when nothing does. */
export function headerFault(value: Json): string | undefined {
  const found = fields(value);
  if (found !== undefined) return found;
  const header = value as unknown as Header;
  const begins = header.kind === 'begin';
  if (begins !== (header.register === null)) return 'register: null in begin and nowhere else';
  if (begins && (header.seq !== 0 || header.seen.length > 0)) return 'begin: stands first in its chain';
  if ((header.seq === 0) !== (header.prev === null)) return 'prev: null at seq 0 and nowhere else';
  return undefined;
}

export const headerText = (header: Header): string => canonical(header as unknown as Json);

/** An entry's id: the hash of its header's bytes. The signature is no part of it. */
export const idOf = (header: Header): string => hashOf(headerText(header));

/** The bytes that the signature covers. */
export const signedBytes = (header: Header): Uint8Array<ArrayBuffer> =>
  utf8(SIGNED_PREFIX + headerText(header));

/** One line of a chain's file, without its line feed. */
export const lineOf = (header: Header, signature: string): string =>
  canonical({ header: header as unknown as Json, signature });

export const citationOf = (entryId: string, { signer, device, seq }: Header): Citation => ({
  id: entryId,
  signer,
  device,
  seq,
});

export const sortCitations = (seen: readonly Citation[]): readonly Citation[] =>
  [...seen].sort((a, b) => byText(a.id, b.id));

/** Signer and device together name a chain. */
export const chainOf = (of: { readonly signer: string; readonly device: string }): string =>
  `${of.signer}.${of.device}`;
