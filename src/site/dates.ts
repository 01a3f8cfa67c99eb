/** Dates as a title block writes them. Given as `YYYY-MM-DD`; no clock, no locale. */
import type { Tell } from './speak.ts';

const months = ['m1', 'm2', 'm3', 'm4', 'm5', 'm6', 'm7', 'm8', 'm9', 'm10', 'm11', 'm12'] as const;

/** `2026-03-09` → "9 March 2026" in the words of `tell`. @throws Error on a text of another shape. */
export function dayText(tell: Tell, iso: string): string {
  const { day, month, year } = partsOf(iso);
  return tell('date.day', { day, month: tell(`date.${month}`), year });
}

/** The same as "9 Mar 2026", where columns are narrow. @throws Error on a text of another shape. */
export function shortDay(tell: Tell, iso: string): string {
  const { day, month, year } = partsOf(iso);
  return tell('shortDate.day', { day, month: tell(`shortDate.${month}`), year });
}

function partsOf(iso: string) {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
  const month = months[Number(found?.[2]) - 1];
  if (found === null || month === undefined) throw new Error(`a date is written YYYY-MM-DD, got "${iso}"`);
  return { day: Number(found[3]), month, year: String(found[1]) };
}
