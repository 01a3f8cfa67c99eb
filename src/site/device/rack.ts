/**
 * The rack of remnants: the lengths left over from earlier work that are kept on this device, and how many of each. A
 * database apart from the register's and the runs': a remnant is nobody's evidence.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Remnant } from '../sticks/rack.ts';

interface Store extends DBSchema {
  /** One rack to a device, written whole: it is short, and a half-written one would lie. */
  rack: { key: 'own'; value: readonly Remnant[] };
}

let opened: Promise<IDBPDatabase<Store>> | undefined;

function openRack(): Promise<IDBPDatabase<Store>> {
  opened ??= openDB<Store>('trayhand-rack', 1, {
    upgrade(database) {
      database.createObjectStore('rack');
    },
  });
  return opened;
}

export async function keptRack(): Promise<readonly Remnant[]> {
  return (await (await openRack()).get('rack', 'own')) ?? [];
}

/** Committed at once: a page that is left in that moment would drop a put that still waits. */
export async function keepRack(rack: readonly Remnant[]): Promise<void> {
  const change = (await openRack()).transaction('rack', 'readwrite');
  const put = change.store.put(rack, 'own');
  change.commit();
  await Promise.all([put, change.done]);
}
