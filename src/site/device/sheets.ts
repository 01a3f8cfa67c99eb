/**
 * The sheet that was set for the person of this device, and what is written on it. Kept at every stroke, so a reload
 * loses nothing. One at a time: while it is being answered, nothing is signed on this device.
 */
import type { SetFile } from '../../practice/sheet.ts';
import { GivenError } from '../../trade/given.ts';
import { now } from './edge.ts';
import { type KeptSheet, openStore } from './store.ts';

export type { KeptSheet } from './store.ts';

export async function ownSheet(): Promise<KeptSheet | undefined> {
  return (await openStore()).get('sheet', 'set');
}

/** The sheet that is being answered here now, if any: then no signing page opens. */
export async function sheetBeingAnswered(): Promise<KeptSheet | undefined> {
  const sheet = await ownSheet();
  return sheet === undefined || sheet.handed !== null ? undefined : sheet;
}

/** @throws {GivenError} a sheet is being answered on this device: then no key is opened on it */
export async function nobodyAnswers(): Promise<void> {
  if ((await sheetBeingAnswered()) === undefined) return;
  const todo = 'save its answers as a file, or end it';
  throw new GivenError([{ field: 'device', message: 'a sheet is being answered on this device', todo }]);
}

export async function beginSheet(set: SetFile, device: string): Promise<KeptSheet> {
  const sheet: KeptSheet = { set, device, answers: {}, begun: new Date(now()).toISOString(), handed: null };
  const database = await openStore();
  await database.put('sheet', sheet, 'set');
  await database.put('texts', device, 'device');
  return sheet;
}

/** Committed at once, without waiting for the put to come back: a page that is left in that moment would drop it. */
export async function keepAnswers(sheet: KeptSheet): Promise<void> {
  const kept = (await openStore()).transaction('sheet', 'readwrite');
  const put = kept.store.put(sheet, 'set');
  kept.commit();
  await Promise.all([put, kept.done]);
}

/** The sheet as it is once its answers were saved as a file. */
export const asSaved = (sheet: KeptSheet): KeptSheet => ({ ...sheet, handed: new Date(now()).toISOString() });

/** Takes it up again after it was saved: from now on it is being answered, and nothing is signed here meanwhile. */
export const asTakenUp = (sheet: KeptSheet): KeptSheet => ({ ...sheet, handed: null });

/** Whether two files set a sheet of one name at one bench for the same person and task. */
const isNamedAlike = (a: SetFile, b: SetFile): boolean =>
  a.sheet === b.sheet && a.bench === b.bench && a.person === b.person && a.task === b.task;
const isOneSheet = (a: SetFile, b: SetFile): boolean => JSON.stringify(a.of) === JSON.stringify(b.of);

/** Whether two files set the same thing for the same person: also a sheet made on a page, as it was made. */
export const isSameSet = (a: SetFile, b: SetFile): boolean => isNamedAlike(a, b) && isOneSheet(a, b);

/** Whether the second sets what the first does, with another sheet in it: the trainer changed it. */
export const isChangedSet = (a: SetFile, b: SetFile): boolean => isNamedAlike(a, b) && !isOneSheet(a, b);

/** Sheets that came while another one lay here, in the order in which they came. */
export async function waitingSheets(): Promise<readonly SetFile[]> {
  const text = await (await openStore()).get('texts', 'waiting');
  return text === undefined ? [] : (JSON.parse(text) as readonly SetFile[]);
}
export async function keepWaiting(sheets: readonly SetFile[]): Promise<void> {
  await (await openStore()).put('texts', JSON.stringify(sheets), 'waiting');
}

/** Ends the sheet: what is written on it is gone from this device. */
export async function putSheetAway(): Promise<void> {
  await (await openStore()).delete('sheet', 'set');
}
