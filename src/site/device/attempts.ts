/**
 * Tries at practice draws, kept on this device alone. What was answered is kept, and a note of what came of it: a draw and
 * its answers fix the verdict, so that is worked out again whenever it is shown. A try outlives what it was made with: one
 * whose family or generator is no more is kept, and goes out with the file.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type Attempt, attemptKey, mergeAttempts } from '../../practice/attempts.ts';
import { GENERATOR } from '../../practice/generator.ts';
import { askToKeep, fourFigures, now } from './edge.ts';

export type { Attempt } from '../../practice/attempts.ts';

interface Store extends DBSchema {
  attempts: { key: number; value: Attempt; indexes: { draw: [string, string]; family: string } };
  asked: { key: string; value: true };
  /** Since the second edition: the name that this device's file goes by. */
  texts: { key: 'device'; value: string };
}
type Database = IDBPDatabase<Store>;

/** Another window of an earlier edition holds the tries open; nothing can be kept until it is closed. */
export class HeldOpen extends Error {
  override readonly name = 'HeldOpen';
}

let opened: Promise<Database> | undefined;

function open(): Promise<Database> {
  opened ??= openNow();
  // What could not be opened is tried again the next time.
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}

const openNow = (): Promise<Database> =>
  new Promise((found, refuse) => {
    openDB<Store>('trayhand-practice', 2, {
      upgrade(database, before) {
        if (before < 1) {
          const attempts = database.createObjectStore('attempts', { autoIncrement: true });
          attempts.createIndex('draw', ['family', 'seed']);
          attempts.createIndex('family', 'family');
          database.createObjectStore('asked');
        }
        if (before < 2) database.createObjectStore('texts');
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
function askOnce(database: Database): void {
  const ask = async () => {
    if ((await database.get('asked', 'persist')) !== undefined) return;
    await database.put('asked', true, 'persist');
    await askToKeep();
  };
  ask().catch(() => undefined);
}

/** Keeps a try. */
export async function keepAttempt(attempt: Omit<Attempt, 'at'>): Promise<Attempt> {
  const database = await open();
  const kept = { ...attempt, at: new Date(now()).toISOString() };
  await database.add('attempts', kept);
  askOnce(database);
  return kept;
}

/** All tries of this device, first to last. */
export async function allAttempts(): Promise<readonly Attempt[]> {
  return mergeAttempts(await (await open()).getAll('attempts'), []);
}

/** Tries at the draws of a family that can be drawn today, first to last. */
export async function attemptsOf(family: string): Promise<readonly Attempt[]> {
  const all = await (await open()).getAllFromIndex('attempts', 'family', family);
  return mergeAttempts(all, []).filter(({ generator }) => generator === GENERATOR);
}

/**
 * Joins tries with those of this device.
 * @returns how many were not here before
 */
export async function takeAttempts(came: readonly Attempt[]): Promise<number> {
  const database = await open();
  const change = database.transaction('attempts', 'readwrite');
  const here = await change.store.getAll();
  const merged = mergeAttempts(here, came);
  await change.store.clear();
  for (const attempt of merged) void change.store.add(attempt);
  await change.done;
  if (merged.length > 0) askOnce(database);
  return merged.length - new Set(here.map(attemptKey)).size;
}

/** Takes every try off this device, and the name that their file went by. Nothing else is touched. */
export async function dropAttempts(): Promise<void> {
  const change = (await open()).transaction(['attempts', 'texts'], 'readwrite');
  await Promise.all([
    change.objectStore('attempts').clear(),
    change.objectStore('texts').clear(),
    change.done,
  ]);
}

/** The name that this device's file goes by: made by chance the first time, so that it says nothing of the person. */
export async function attemptsDevice(): Promise<string> {
  const change = (await open()).transaction('texts', 'readwrite');
  const known = await change.store.get('device');
  const name = known ?? `device-${fourFigures()}`;
  if (known === undefined) await change.store.put(name, 'device');
  await change.done;
  return name;
}
