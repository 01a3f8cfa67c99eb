/** What is written into the storage of this device and may be the last thing that its page does. */

interface Change {
  readonly done: Promise<void>;
  commit(): void;
}

/** Committed at once, without waiting for the put to come back: a page that is left in that moment would drop it. */
export async function atOnce(change: Change, put: Promise<unknown>): Promise<void> {
  change.commit();
  await Promise.all([put, change.done]);
}
