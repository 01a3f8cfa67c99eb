/**
 * The register's own database on this device: keys, one register, sheets being answered, and a few single texts.
 * Only the files beside this one open it.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { SetFile } from '../../practice/sheet.ts';
import type { RegisterFiles } from '../../register/held.ts';
import type { KeyFile } from '../../register/keyFile.ts';
import type { Given } from '../practice.ts';

/** A sheet that was set for the person of this device, and what is written on it. */
export interface KeptSheet {
  readonly set: SetFile;
  /** Name of this device, as it goes into the answers file. */
  readonly device: string;
  /** Answers by place on the sheet, from 1. */
  readonly answers: Readonly<Record<number, Given>>;
  /** The draw that stands open, from 1; one past the last is the look over all. */
  readonly place?: number;
  /** ISO text. */
  readonly begun: string;
  /** When the answers were last saved as a file; `null` while it is being answered. */
  readonly handed: string | null;
}

interface Store extends DBSchema {
  /** The one key of this device, wrapped. */
  key: { key: 'own'; value: KeyFile };
  /** The one register of this device. */
  register: { key: 'files'; value: RegisterFiles };
  /** The sheet that was set for the person of this device. */
  sheet: { key: 'set'; value: KeptSheet };
  /**
   * As JSON: `waiting`, sheets that came while another one lay here; `chains`, every chain that was ever written here;
   * `carriedNumbers`, the last number of every chain in the file that was carried off last; `carriedIds`, its entries that
   * were signed here.
   */
  texts: {
    key: 'device' | 'people' | 'chains' | 'carried' | 'carriedNumbers' | 'carriedIds' | 'waiting';
    value: string;
  };
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
