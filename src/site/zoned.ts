/** Hours and days of a zone that is not the device's own: an instant from what a clock there shows, and back. Pure: no clock. */
import { dayText } from './dates.ts';
import type { Tell } from './speak.ts';

const formats = new Map<string, Intl.DateTimeFormat>();

/** What a clock in a zone shows: `2026-03-10T07:00`. @throws {RangeError} a zone that the engine does not know */
export function wallIn(zone: string, instant: number): string {
  const format =
    formats.get(zone) ??
    new Intl.DateTimeFormat('en-CA', {
      timeZone: zone,
      calendar: 'gregory',
      numberingSystem: 'latn',
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
    });
  formats.set(zone, format);
  const parts = new Map(format.formatToParts(instant).map(({ type, value }) => [type, value]));
  const part = (type: Intl.DateTimeFormatPartTypes): string => parts.get(type) ?? '';
  return `${part('year').padStart(4, '0')}-${part('month')}-${part('day')}T${part('hour')}:${part('minute')}`;
}

/**
 * The instant at which a clock in the zone shows `2026-03-10T07:00`; of an hour that comes twice its first, of one that
 * never comes (clocks put forward) as many minutes past the change.
 * @returns ms since 1970 UTC; `undefined` for a text that is no such time
 */
export function instantIn(zone: string, wall: string): number | undefined {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/.test(wall)) return undefined;
  const asUtc = Date.parse(`${wall}:00Z`);
  if (Number.isNaN(asUtc)) return undefined;
  const offsetAt = (instant: number): number => Date.parse(`${wallIn(zone, instant)}:00Z`) - instant;
  const day = 86_400_000;
  // Offsets before and after: between them lies every change near the hour asked for.
  const tried = [...new Set([offsetAt(asUtc - day), offsetAt(asUtc + day)])].map((offset) => asUtc - offset);
  const shown = tried.filter((instant) => wallIn(zone, instant) === wall);
  return shown.length > 0 ? Math.min(...shown) : asUtc - offsetAt(asUtc - day);
}

/** The same as an RFC 3339 instant; a text that is no such time comes back as it is: whoever reads instants says what is wrong. */
export function instantText(zone: string, wall: string): string {
  const instant = instantIn(zone, wall);
  return instant === undefined ? wall : new Date(instant).toISOString();
}

/** "10 March 2026 07:00" as a clock in the zone shows it. */
export function momentText(tell: Tell, zone: string, instant: number): string {
  const wall = wallIn(zone, instant);
  return tell('person.moment', { day: dayText(tell, wall.slice(0, 10)), time: wall.slice(11) });
}
