/**
 * The runs that are kept on this device, each under a number of its own. A database
 * apart from the register's: a run is nobody's evidence, and clearing one leaves the other alone.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { RunFile } from '../../run/edit/file.ts';

export interface KeptRun {
  readonly id: number;
  /** A run that is being built may not hang together, or have no leg yet. */
  readonly file: RunFile;
  /** Counts up with every change on this device; the newest is opened first. */
  readonly turn: number;
}

interface Store extends DBSchema {
  runs: { key: number; value: KeptRun };
}

let opened: Promise<IDBPDatabase<Store>> | undefined;

function openRuns(): Promise<IDBPDatabase<Store>> {
  opened ??= openDB<Store>('trayhand-runs', 1, {
    upgrade(database) {
      database.createObjectStore('runs', { keyPath: 'id' });
    },
  });
  return opened;
}

/** Newest change first. */
export async function keptRuns(): Promise<readonly KeptRun[]> {
  return (await (await openRuns()).getAll('runs')).sort((a, b) => b.turn - a.turn);
}

/** Committed at once: a page that is left in that moment would drop a put that still waits. */
export async function keepRun(run: KeptRun): Promise<void> {
  const change = (await openRuns()).transaction('runs', 'readwrite');
  const put = change.store.put(run);
  change.commit();
  await Promise.all([put, change.done]);
}

export async function dropRun(id: number): Promise<void> {
  await (await openRuns()).delete('runs', id);
}
