/**
 * The last number of every chain that this device has ever held, kept apart from the register itself: when the register
 * is cleared and an older file brought in, the device still says that it once held more.
 */
import type { LastNumbers } from '../drills/joined.ts';

const place = (begin: string): string => `trayhand-last-numbers.${begin}`;

/** Of the register with this beginning. A device that keeps nothing has held nothing. */
export function lastNumbers(begin: string): LastNumbers {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place(begin)) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(
      Object.entries(kept).filter((row): row is [string, number] => Number.isSafeInteger(row[1])),
    );
  } catch {
    return {};
  }
}

export function keepLastNumbers(begin: string, numbers: LastNumbers): void {
  try {
    localStorage.setItem(place(begin), JSON.stringify(numbers));
  } catch {
    // No room or no leave: the register itself is what counts, and it is kept elsewhere.
  }
}
