/** Answers to a practice draw as they are being given, one draw a family: a reload, or a phone put away, loses none. */
import { atOnce } from './atOnce.ts';
import { type BegunDraw, openPractice } from './practiceStore.ts';

export type { BegunDraw } from './practiceStore.ts';

export const begunAt = async (family: string): Promise<BegunDraw | undefined> =>
  (await openPractice()).get('begun', family);

export async function keepBegun(begun: BegunDraw): Promise<void> {
  const kept = (await openPractice()).transaction('begun', 'readwrite');
  await atOnce(kept, kept.store.put(begun));
}

export async function dropBegun(family: string): Promise<void> {
  await (await openPractice()).delete('begun', family);
}
