/**
 * Tries at practice draws, kept on this device alone. Only what was answered is kept: a draw and its answers fix the
 * verdict, so it is worked out again whenever it is shown.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { askToKeep, now } from './edge.ts';

export interface Attempt {
  readonly family: string;
  readonly seed: string;
  /** Generator that made the draw; a later one makes other draws of the same seed. */
  readonly generator: string;
  /** When it was answered, as ISO text. */
  readonly at: string;
  readonly answers: Readonly<Record<string, unknown>>;
}

interface Store extends DBSchema {
  attempts: { key: number; value: Attempt; indexes: { draw: [string, string]; family: string } };
  asked: { key: string; value: true };
}

let opened: Promise<IDBPDatabase<Store>> | undefined;

function open(): Promise<IDBPDatabase<Store>> {
  opened ??= openDB<Store>('trayhand-practice', 1, {
    upgrade(database) {
      const attempts = database.createObjectStore('attempts', { autoIncrement: true });
      attempts.createIndex('draw', ['family', 'seed']);
      attempts.createIndex('family', 'family');
      database.createObjectStore('asked');
    },
  });
  return opened;
}

/** Keeps a try. The first one ever also asks the browser, once, not to clear this site's storage when space runs short. */
export async function keepAttempt(attempt: Omit<Attempt, 'at'>): Promise<void> {
  const database = await open();
  await database.add('attempts', { ...attempt, at: new Date(now()).toISOString() });
  if ((await database.get('asked', 'persist')) === undefined) {
    await database.put('asked', true, 'persist');
    await askToKeep();
  }
}

/** Tries at one draw, first to last. */
export async function attemptsAt(family: string, seed: string): Promise<readonly Attempt[]> {
  return (await open()).getAllFromIndex('attempts', 'draw', [family, seed]);
}

/** The last try at any draw of a family, or undefined. */
export async function lastAttempt(family: string): Promise<Attempt | undefined> {
  const cursor = await (await open())
    .transaction('attempts')
    .store.index('family')
    .openCursor(family, 'prev');
  return cursor?.value;
}
