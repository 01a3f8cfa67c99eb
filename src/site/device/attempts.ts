/**
 * Tries at practice draws, kept on this device alone. What was answered is kept, and a note of what came of it: a draw and
 * its answers fix the verdict, so that is worked out again whenever it is shown. A try outlives what it was made with: one
 * whose family or generator is no more is kept, and goes out with the file.
 */
import { type Attempt, attemptKey, mergeAttempts } from '../../practice/attempts.ts';
import { GENERATOR } from '../../practice/generator.ts';
import { fourFigures, now } from './edge.ts';
import { askOnce, openPractice } from './practiceStore.ts';

export type { Attempt } from '../../practice/attempts.ts';

/** Keeps a try; nothing is begun at its family any more. */
export async function keepAttempt(attempt: Omit<Attempt, 'at'>): Promise<Attempt> {
  const database = await openPractice();
  const kept = { ...attempt, at: new Date(now()).toISOString() };
  const change = database.transaction(['attempts', 'begun'], 'readwrite');
  await Promise.all([
    change.objectStore('attempts').add(kept),
    change.objectStore('begun').delete(kept.family),
    change.done,
  ]);
  askOnce(database);
  return kept;
}

/** All tries of this device, first to last. */
export async function allAttempts(): Promise<readonly Attempt[]> {
  return mergeAttempts(await (await openPractice()).getAll('attempts'), []);
}

/** Tries at the draws of a family that can be drawn today, first to last. */
export async function attemptsOf(family: string): Promise<readonly Attempt[]> {
  const all = await (await openPractice()).getAllFromIndex('attempts', 'family', family);
  return mergeAttempts(all, []).filter(({ generator }) => generator === GENERATOR);
}

/**
 * Joins tries with those of this device.
 * @returns how many were not here before
 */
export async function takeAttempts(came: readonly Attempt[]): Promise<number> {
  const database = await openPractice();
  const change = database.transaction('attempts', 'readwrite');
  const here = await change.store.getAll();
  const merged = mergeAttempts(here, came);
  await change.store.clear();
  for (const attempt of merged) void change.store.add(attempt);
  await change.done;
  if (merged.length > 0) askOnce(database);
  return merged.length - new Set(here.map(attemptKey)).size;
}

/** Takes every try off this device, what was begun, and the name that their file went by. Nothing else is touched. */
export async function dropAttempts(): Promise<void> {
  const stores = ['attempts', 'begun', 'texts'] as const;
  const change = (await openPractice()).transaction(stores, 'readwrite');
  await Promise.all([...stores.map((store) => change.objectStore(store).clear()), change.done]);
}

/** The name that this device's file goes by: made by chance the first time, so that it says nothing of the person. */
export async function attemptsDevice(): Promise<string> {
  const change = (await openPractice()).transaction('texts', 'readwrite');
  const known = await change.store.get('device');
  const name = known ?? `device-${fourFigures()}`;
  if (known === undefined) await change.store.put(name, 'device');
  await change.done;
  return name;
}
