/** What the pure rooms are handed in a browser: the clock, chance, the zone. Signatures are in verify.ts: they weigh. */
import type { Chance } from '../../register/keyFile.ts';
export const now = (): number => Date.now();
export const chance: Chance = (bytes) => crypto.getRandomValues(new Uint8Array(bytes));
export const subtle = (): SubtleCrypto | undefined => globalThis.crypto?.subtle;
/** The zone that this device lives in. */
export const ownZone = (): string => new Intl.DateTimeFormat().resolvedOptions().timeZone;
/** A number for a draw or a bench that hardly anyone had before: four figures, so that it can be called across a bench. */
export function fourFigures(): number {
  const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
  return 1000 + (drawn % 9000);
}
/** Asks the browser not to clear this site's storage when space runs short; `undefined` where it cannot be asked. */
export const askToKeep = async (): Promise<boolean | undefined> => navigator.storage?.persist?.();
export const isKept = async (): Promise<boolean | undefined> => navigator.storage?.persisted?.();
/**
 * A day and a time of this device's clock and zone, `2026-03-09 06:00`, as an RFC 3339 instant with its offset. A text
 * of another shape comes back as it is: whoever reads instants says what is wrong with it.
 */
export function instantHere(text: string): string {
  const found = /^(\d{4}-\d{2}-\d{2})[ T](\d{1,2}):(\d{2})$/.exec(text);
  if (found === null) return text;
  const [, day = '', hour = '', minute = ''] = found;
  const local = `${day}T${hour.padStart(2, '0')}:${minute}:00`;
  const east = -new Date(local).getTimezoneOffset();
  if (Number.isNaN(east)) return text;
  const two = (n: number): string => String(n).padStart(2, '0');
  const size = Math.abs(east);
  return `${local}${east < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
