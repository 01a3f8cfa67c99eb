/**
 * Spares a register that is opened again the hashing of every line and body one by one: one digest over the very bytes
 * that were read before says that they are those bytes, and so that their ids, hashes and signatures are what was found
 * then. Only a whole digest vouches, over what is here now; nothing rests on names of files, sizes or times.
 *
 * What is kept for it is as good as the place where it is kept: whoever can write there can put a key and a register
 * there too. So it is kept beside the register on one device, never in a file that is handed over.
 */
import type { Held, RegisterFiles, Vouched } from './held.ts';
import { claimedHash, isBodyPath, isChainPath } from './paths.ts';

/** SHA-256 of a text's UTF-8 in hexadecimal, by the engine: it answers later, and reads a megabyte in no time. */
export type Digest = (text: string) => Promise<string>;

/** What an opening found good, to be kept until the next. */
export interface Kept {
  /** By path: so many signs from the beginning, and the ids of the lines that they are. */
  readonly chains: Readonly<
    Record<string, { readonly length: number; readonly digest: string; readonly ids: readonly string[] }>
  >;
  /** Files that are the bodies which their names say. */
  readonly bodies: { readonly paths: readonly string[]; readonly digest: string };
}

/** Every body with its name and size before it, so that no two sets of bodies are one text. */
const inOne = (files: RegisterFiles, paths: readonly string[]): string =>
  paths.map((path) => `${path} ${files[path]?.length ?? -1}\n${files[path] ?? ''}`).join('');

/** What of these files an earlier opening vouches for: nothing, where they are not what they were. */
export async function vouchedFor(files: RegisterFiles, kept: Kept, digest: Digest): Promise<Vouched> {
  const chains = Object.entries(kept.chains).map(async ([path, { length, digest: before, ids }]) => {
    const text = files[path] ?? '';
    const same = text.length >= length && (await digest(text.slice(0, length))) === before;
    return same ? ([[path, ids]] as const) : [];
  });
  const { paths, digest: before } = kept.bodies;
  const bodies = digest(inOne(files, paths));
  const ids = new Map((await Promise.all(chains)).flat());
  return { ids, bodies: new Set((await bodies) === before ? paths : []) };
}

/** What to keep of an opening. A file with a line that is not good, or stands in another file too, is left out. */
export async function keepFor(files: RegisterFiles, held: Held, digest: Digest): Promise<Kept> {
  const found = new Map<string, string[]>();
  for (const { id, file, line } of held.entries.values()) {
    const ids = found.get(file) ?? [];
    found.set(file, ids);
    ids[line - 1] = id;
  }
  const chains: Record<string, Kept['chains'][string]> = {};
  for (const [path, text] of Object.entries(files)) {
    if (!isChainPath(path)) continue;
    const whole = text.slice(0, text.lastIndexOf('\n') + 1);
    const ids = Array.from(found.get(path) ?? []);
    if (ids.length === 0 || ids.length !== whole.split('\n').length - 1 || ids.includes(undefined as never))
      continue;
    chains[path] = { length: whole.length, digest: await digest(whole), ids };
  }
  const paths = Object.keys(files).filter((path) => isBodyPath(path) && isNamedRight(path, files, held));
  return { chains, bodies: { paths, digest: await digest(inOne(files, paths)) } };
}

function isNamedRight(path: string, files: RegisterFiles, { bodies }: Held): boolean {
  const claimed = claimedHash(path);
  return claimed !== undefined && bodies.get(claimed) === files[path];
}
