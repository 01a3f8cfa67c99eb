/** What practice keeps on this device alone: tries, and what is being answered. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Attempt } from '../../practice/attempts.ts';
import { askToKeep } from './edge.ts';

/** Answers to a draw that were not taped yet. */
export interface BegunDraw {
  readonly family: string;
  readonly seed: string;
  readonly generator: string;
  readonly answers: Readonly<Record<string, unknown>>;
}

interface Store extends DBSchema {
  attempts: { key: number; value: Attempt; indexes: { draw: [string, string]; family: string } };
  asked: { key: string; value: true };
  /** Since the second edition: the name that this device's file goes by. */
  texts: { key: 'device'; value: string };
  /** Since the third edition: by family, the draw that is being answered. */
  begun: { key: string; value: BegunDraw };
}
type Database = IDBPDatabase<Store>;

/** Another window of an earlier edition holds the tries open; nothing can be kept until it is closed. */
export class HeldOpen extends Error {
  override readonly name = 'HeldOpen';
}

let opened: Promise<Database> | undefined;

export function openPractice(): Promise<Database> {
  opened ??= openNow();
  // What could not be opened is tried again the next time.
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}

const openNow = (): Promise<Database> =>
  new Promise((found, refuse) => {
    openDB<Store>('trayhand-practice', 3, {
      upgrade(database, before) {
        if (before < 1) {
          const attempts = database.createObjectStore('attempts', { autoIncrement: true });
          attempts.createIndex('draw', ['family', 'seed']);
          attempts.createIndex('family', 'family');
          database.createObjectStore('asked');
        }
        if (before < 2) database.createObjectStore('texts');
        if (before < 3) database.createObjectStore('begun', { keyPath: 'family' });
      },
      blocked: () => refuse(new HeldOpen('another window holds the tries of this device open')),
      // A later edition wants in: this window gives way, and opens anew when it needs to.
      blocking(_, __, event) {
        opened = undefined;
        (event.target as IDBDatabase).close();
      },
      terminated() {
        opened = undefined;
      },
    }).then(found, refuse);
  });

/**
 * Asks the browser, once ever, not to clear this site's storage when space runs short. Nobody waits for it: a browser may
 * put the question to the person, who may leave it, and what was kept is kept whatever comes of it.
 */
export function askOnce(database: Database): void {
  const ask = async () => {
    if ((await database.get('asked', 'persist')) !== undefined) return;
    await database.put('asked', true, 'persist');
    await askToKeep();
  };
  ask().catch(() => undefined);
}
