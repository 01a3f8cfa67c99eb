/**
 * The register's own database on this device: keys, one register, sheets being answered, and a few single texts.
 * Only the files beside this one open it.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { RegisterFiles } from '../../register/held.ts';
import type { KeyFile } from '../../register/keyFile.ts';
import type { KeptSheet } from './sheets.ts';

interface Store extends DBSchema {
  /** The one key of this device, wrapped. */
  key: { key: 'own'; value: KeyFile };
  /** The one register of this device. */
  register: { key: 'files'; value: RegisterFiles };
  /** The sheet that was set for the person of this device. */
  sheet: { key: 'set'; value: KeptSheet };
  texts: { key: 'device' | 'people' | 'carried'; value: string };
}

let opened: Promise<IDBPDatabase<Store>> | undefined;

export function openStore(): Promise<IDBPDatabase<Store>> {
  opened ??= openDB<Store>('trayhand-register', 1, {
    upgrade(database) {
      for (const name of ['key', 'register', 'sheet', 'texts'] as const) database.createObjectStore(name);
    },
  });
  return opened;
}
