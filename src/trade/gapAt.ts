/** How wide an expansion splice stands open at a temperature of the metal. */
import { atMost } from './hair.ts';

/**
 * What of its movement a splice must still be open for: `movement · (high − now) / (high − low)`, in the unit of the
 * movement. Temperatures of the metal, in one unit.
 *
 * @returns null where the temperature now lies outside the range, or the range is none
 * Source: NEMA VE 2, gap setting (from memory): the gap falls straight from cold to hot.
 */
export function gapAt(low: number, high: number, now: number, movement: number): number | null {
  if (high <= low || !atMost(low, now) || !atMost(now, high)) return null;
  return (movement * (high - now)) / (high - low);
}
