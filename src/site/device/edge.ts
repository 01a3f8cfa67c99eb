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
/** The day, `YYYY-MM-DD`, on which a moment (ms since 1970) falls where this device is. */
export function dayHere(moment: number): string {
  const at = new Date(moment);
  const two = (number: number) => String(number).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
