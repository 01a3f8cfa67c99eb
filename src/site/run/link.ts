/** A run in the address of the page, behind `#`, where no server ever sees it: version, a full stop, deflated JSON. */

const MARK = '#run=';
const VERSION = '1';
/** Longer addresses are cut short by mail and messages. */
export const LONGEST_LINK = 6000;
/** What a link may grow to when it is read: far more than any run. */
const MOST_BYTES = 2_000_000;

/** The part of an address that carries a run, from `#` on. */
export async function packed(json: unknown): Promise<string> {
  const text = new Blob([JSON.stringify(json)]).stream();
  const bytes = await new Response(text.pipeThrough(new CompressionStream('deflate-raw'))).arrayBuffer();
  return `${MARK}${VERSION}.${base64url(new Uint8Array(bytes))}`;
}

export type Unpacked =
  | { readonly found: 'none' }
  | { readonly found: 'json'; readonly json: unknown }
  | { readonly found: 'version' | 'broken' };

/** What a link carries. */
export async function unpacked(hash: string): Promise<Unpacked> {
  if (!hash.startsWith(MARK)) return { found: 'none' };
  const [version, body = ''] = hash.slice(MARK.length).split('.');
  if (version !== VERSION) return { found: 'version' };
  try {
    const bytes = bytesOf(body);
    const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
    return { found: 'json', json: JSON.parse(await limited(stream)) };
  } catch {
    return { found: 'broken' };
  }
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

/** What a saved file is called: the run alone apart from its whole file, and never `run` twice. */
export function fileName(
  { number, name }: { readonly number: string; readonly name: string },
  which: 'file' | 'run',
): string {
  const own = (number || name).replace(/[^\w-]+/g, '-').toLowerCase();
  if (which === 'file') return own === '' ? 'run-whole.json' : `${own}.json`;
  return own === '' ? 'run.json' : `${own}.run.json`;
}
