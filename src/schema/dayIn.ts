import type { DayIn } from '../register/days.ts';

const formats = new Map<string, Intl.DateTimeFormat>();

/**
 * The day it is at an instant (ms since 1970 UTC) in an IANA zone, as `2026-03-09`. The digits of "en-CA" in the
 * Gregorian calendar are asked for by name, so the device's own language has no say.
 * @throws {RangeError} a zone that the engine does not know
 */
export const dayIn: DayIn = (zone, instant) => {
  const format =
    formats.get(zone) ??
    new Intl.DateTimeFormat('en-CA', {
      timeZone: zone,
      calendar: 'gregory',
      numberingSystem: 'latn',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
    });
  formats.set(zone, format);
  // Engines of today write it so at once; taking a date apart takes several times as long.
  const whole = format.format(instant);
  if (/^\d{4}-\d\d-\d\d$/.test(whole)) return whole;
  const parts = format.formatToParts(instant);
  const part = (type: string): string => parts.find((p) => p.type === type)?.value ?? '';
  return `${part('year').padStart(4, '0')}-${part('month')}-${part('day')}`;
};
