/**
 * What the last opening of this device's register found good, so that it is not worked out again at every opening: one
 * digest a file (vouched.ts), and lines one by one for what was joined meanwhile. A database apart: it holds nothing that
 * the register does not, and where it is lost the next opening takes longer. It is as good as the key and the register
 * beside it: whoever can write it can write those.
 */
import { type IDBPDatabase, openDB } from 'idb';
import { toHex } from '../../register/bytes.ts';
import type { RegisterFiles, Vouched } from '../../register/held.ts';
import type { Register } from '../../register/register.ts';
import { type Digest, type Kept, keepFor, vouchedFor } from '../../register/vouched.ts';
import { subtle } from './edge.ts';

let opened: Promise<IDBPDatabase> | undefined;

function openLines(): Promise<IDBPDatabase> {
  opened ??= openDB('trayhand-verified', 1, {
    upgrade(database) {
      database.createObjectStore('lines');
    },
  });
  return opened;
}

export interface Known {
  readonly vouched?: Vouched;
  readonly known?: ReadonlySet<string>;
  /** Whether all of the register is vouched for, so that nothing new is to be kept. */
  readonly all: boolean;
}
const NOTHING: Known = { all: false };

/** An engine that digests is had on safe pages alone; without one lines are gone through one by one. */
function digester(): Digest | undefined {
  const engine = subtle();
  const encoder = new TextEncoder();
  if (engine === undefined) return undefined;
  return async (text) => toHex(new Uint8Array(await engine.digest('SHA-256', encoder.encode(text))));
}

/** What was kept, as far as it holds for these files; nothing where it cannot be had. */
export async function knownOf(files: RegisterFiles): Promise<Known> {
  try {
    const store = await openLines();
    const digest = digester();
    const kept: Kept | undefined = digest && (await store.get('lines', 'kept'));
    const vouched = digest && kept && (await vouchedFor(files, kept, digest));
    if (kept !== undefined && vouched !== undefined && isAll(files, kept, vouched))
      return { vouched, all: true };
    const known: unknown = await store.get('lines', 'own');
    return {
      ...(vouched === undefined ? {} : { vouched }),
      ...(known instanceof Set ? { known: known as ReadonlySet<string> } : {}),
      all: false,
    };
  } catch {
    return NOTHING;
  }
}

function isAll(files: RegisterFiles, { chains }: Kept, { ids, bodies }: Vouched): boolean {
  return Object.entries(files).every(([path, text]) => {
    if (path.startsWith('bodies/')) return bodies.has(path);
    return !path.startsWith('headers/') || (ids.has(path) && chains[path]?.length === text.length);
  });
}

/** Keeps what an opening found good, unless all of it was known. Nobody waits for it. */
export function keepKnown({ files, held, verified }: Register, { all }: Known): void {
  if (all) return;
  const keep = async (): Promise<void> => {
    const store = await openLines();
    await store.put('lines', verified, 'own');
    const digest = digester();
    if (digest !== undefined) await store.put('lines', await keepFor(files, held, digest), 'kept');
  };
  keep().catch(() => undefined);
}
