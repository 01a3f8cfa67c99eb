/**
 * The rack of remnants: the lengths left over from earlier work that are kept on this device, and how many of each. A
 * database apart from the register's and the runs': a remnant is nobody's evidence.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Rack } from '../sticks/rack.ts';

interface Store extends DBSchema {
  /** One rack to a device, written whole: it is short, and a half-written one would lie. */
  rack: { key: 'own'; value: Rack };
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

export async function keptRack(): Promise<Rack> {
  return (await (await openRack()).get('rack', 'own')) ?? [];
}

/**
 * Changes the rack as it is kept now, whichever page changed it last.
 *
 * @returns the rack as it is kept then
 */
export async function changeRack(change: (rack: Rack) => Rack): Promise<Rack> {
  const work = (await openRack()).transaction('rack', 'readwrite');
  const rack = change((await work.store.get('own')) ?? []);
  await work.store.put(rack, 'own');
  await work.done;
  return rack;
}
