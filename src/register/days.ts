/** A day of the calendar, `2026-03-09`: days compare as texts. */
export type Day = string;

/** The day it is at an instant (ms since 1970 UTC) in an IANA zone. Passed in: zones change by law, not by us. */
export type DayIn = (zone: string, instant: number) => Day;

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;
const INSTANT =
  /^(\d{4})-(\d{2})-(\d{2})[Tt](\d{2}):(\d{2}):(\d{2})(?:\.(\d+))?(?:[Zz]|([+-])(\d{2}):(\d{2}))$/;

const leap = (y: number): boolean => (y % 4 === 0 && y % 100 !== 0) || y % 400 === 0;
function lastOf(year: number, month: number): number {
  return [31, leap(year) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}
const two = (n: number): string => String(n).padStart(2, '0');
const dayText = (y: number, m: number, d: number): Day => `${String(y).padStart(4, '0')}-${two(m)}-${two(d)}`;

function parts(day: Day): [number, number, number] {
  const [, y, m, d] = DAY.exec(day) ?? [];
  return [Number(y), Number(m), Number(d)];
}

/** Whether a text is a day of the calendar (30 February is not). */
export function isDay(value: unknown): value is Day {
  if (typeof value !== 'string' || !DAY.test(value)) return false;
  const [y, m, d] = parts(value);
  return d >= 1 && d <= lastOf(y, m);
}

/** The last day that a text of ten signs can be: days compare as texts, so that none comes after it. */
export const LAST_DAY: Day = '9999-12-31';

/** `months` later, held back to the month's last day: 31 January + 1 month = the last of February. */
export function addMonths(day: Day, months: number): Day {
  const [y, m, d] = parts(day);
  const count = y * 12 + (m - 1) + months;
  const [year, month] = [Math.floor(count / 12), (count % 12) + 1];
  if (year > 9999) return LAST_DAY;
  return dayText(year, month, Math.min(d, lastOf(year, month)));
}

export function nextDay(day: Day): Day {
  const [y, m, d] = parts(day);
  if (d < lastOf(y, m)) return dayText(y, m, d + 1);
  return m < 12 ? dayText(y, m + 1, 1) : dayText(y + 1, 1, 1);
}

/**
 * Reads an RFC 3339 instant; a leap second (23:59:60 UTC) is the first instant of the next day.
 * @returns ms since 1970 UTC, what is finer cut off; `undefined` when it is none (no offset, 30 February, 24:00 …)
 * Source: RFC 3339 §5.6, §5.7.
 */
export function readInstant(text: string): number | undefined {
  const found = INSTANT.exec(text);
  if (found === null) return undefined;
  const [, y, mo, d, h, mi, s, fraction = '', sign, oh = '0', om = '0'] = found;
  const [hour, minute, second] = [Number(h), Number(mi), Number(s)];
  if (!isDay(`${y}-${mo}-${d}`) || hour > 23 || minute > 59 || second > 60) return undefined;
  if (Number(oh) > 23 || Number(om) > 59) return undefined;
  const offset = (sign === '-' ? -1 : 1) * (Number(oh) * 60 + Number(om));
  const whole = new Date(0);
  whole.setUTCFullYear(Number(y), Number(mo) - 1, Number(d));
  whole.setUTCHours(hour, minute - offset, second);
  const beginsDay = whole.getUTCHours() === 0 && whole.getUTCMinutes() === 0 && whole.getUTCSeconds() === 0;
  if (second === 60 && !beginsDay) return undefined;
  const at = whole.getTime() + Number(fraction.slice(0, 3).padEnd(3, '0'));
  return at < -62_167_219_200_000 || at > 253_402_300_799_999 ? undefined : at;
}

/** `2026-03-09T12:00:00.000Z`: the one way an instant is written in a header. */
export const writeInstant = (instant: number): string => new Date(instant).toISOString();
