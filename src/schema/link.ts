/**
 * What people hand to each other in the address of a page, behind `#`, where no server ever sees it: what it is,
 * a version, a full stop, deflated JSON. A code holds the same address.
 */

/** What a link can carry: a run, a set sheet, the answers to one, a public key. */
export const marks = ['run', 'set', 'answers', 'key'] as const;
export type Mark = (typeof marks)[number];

/** How each version is deflated. Version 2 carries a check sum, so that a sign copied wrong is found. */
const FORMATS: Readonly<Record<string, CompressionFormat>> = { 1: 'deflate-raw', 2: 'deflate' };
const VERSION = '2';
/** Longer addresses are cut short by mail and messages. */
export const LONGEST_LINK = 6000;
/** What a link may hold, and may grow to when it is read: far more than anything that is handed over. */
const MOST_SIGNS = 1_000_000;
const MOST_BYTES = 2_000_000;

/** The part of an address that carries a thing, from `#` on. */
export async function packed(mark: Mark, json: unknown): Promise<string> {
  const text = new Blob([JSON.stringify(json)]).stream();
  const bytes = await new Response(text.pipeThrough(new CompressionStream(formatOf(VERSION)))).arrayBuffer();
  return `#${mark}=${VERSION}.${base64url(new Uint8Array(bytes))}`;
}

/** `version`: made by a later version of the site; `broken`: cut short, or with a sign that was not in it. */
export type Unpacked =
  | { readonly found: 'none' }
  | { readonly found: 'json'; readonly mark: Mark; readonly json: unknown }
  | { readonly found: 'version' | 'broken'; readonly mark: Mark };

/**
 * What a link carries.
 * @param link  the whole address, or the part of it from `#` on; broken into lines on its way, or with a space behind
 */
export async function unpacked(link: string): Promise<Unpacked> {
  if (link.length > MOST_SIGNS) return { found: 'none' };
  const [, name = '', rest = ''] = /#([a-z]+)=(.*)$/.exec(link.replace(/\s+/g, '')) ?? [];
  const mark = marks.find((one) => one === name);
  if (mark === undefined) return { found: 'none' };
  const [, version = '', body = ''] = /^(\d+)\.(.*)$/.exec(rest) ?? [];
  if (Number(version) > Number(VERSION)) return { found: 'version', mark };
  try {
    const stream = new Blob([bytesOf(body)]).stream().pipeThrough(new DecompressionStream(formatOf(version)));
    return { found: 'json', mark, json: JSON.parse(await limited(stream)) };
  } catch {
    return { found: 'broken', mark };
  }
}

/** @throws {RangeError} no version of ours */
function formatOf(version: string): CompressionFormat {
  const format = FORMATS[version];
  if (format === undefined) throw new RangeError(`no version ${version}`);
  return format;
}

async function limited(stream: ReadableStream<Uint8Array>): Promise<string> {
  const reader = stream.getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let bytes = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    bytes += value.length;
    if (bytes > MOST_BYTES) {
      await reader.cancel();
      throw new RangeError('too large');
    }
    text += decoder.decode(value, { stream: true });
  }
}

function base64url(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(plain, (sign) => sign.charCodeAt(0));
}
