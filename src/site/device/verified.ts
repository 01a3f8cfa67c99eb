/**
 * Lines of this device's register whose signatures were found good, so that they are not checked at every opening. A
 * database apart: it holds nothing that the register does not, and where it is lost the next opening takes longer.
 */
import { type IDBPDatabase, openDB } from 'idb';

type Lines = ReadonlySet<string>;

let opened: Promise<IDBPDatabase> | undefined;

function openLines(): Promise<IDBPDatabase> {
  opened ??= openDB('trayhand-verified', 1, {
    upgrade(database) {
      database.createObjectStore('lines');
    },
  });
  return opened;
}

/** What was kept, or `undefined` where nothing is or it cannot be had. */
export async function knownLines(): Promise<Lines | undefined> {
  try {
    const kept: unknown = await (await openLines()).get('lines', 'own');
    return kept instanceof Set ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps the lines of the register as it is now, unless they are those known. Nobody waits for it. */
export function keepLines(lines: Lines, known: Lines | undefined): void {
  if (known?.size === lines.size && [...lines].every((line) => known.has(line))) return;
  openLines()
    .then((store) => store.put('lines', lines, 'own'))
    .catch(() => undefined);
}
