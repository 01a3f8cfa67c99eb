/** Answers to a practice draw as they are being given, one draw a family: a reload, or a phone put away, loses none. */
import { type BegunDraw, openPractice } from './practiceStore.ts';

export type { BegunDraw } from './practiceStore.ts';

export const begunAt = async (family: string): Promise<BegunDraw | undefined> =>
  (await openPractice()).get('begun', family);

/** Committed at once, without waiting for the put to come back: a page that is left in that moment would drop it. */
export async function keepBegun(begun: BegunDraw): Promise<void> {
  const kept = (await openPractice()).transaction('begun', 'readwrite');
  const put = kept.store.put(begun);
  kept.commit();
  await Promise.all([put, kept.done]);
}

export async function dropBegun(family: string): Promise<void> {
  await (await openPractice()).delete('begun', family);
}
