/** The gap that an expansion splice is set to. */
import { nearest, type Ticks, ticks } from '../trade/length.ts';
import type { Temperatures } from './types.ts';

/**
 * What of its movement an expansion splice must still be open for, at the metal's temperature now:
 * `movement · (high − now) / (high − low)`, to the nearest tick.
 *
 * @param temps     metal temperatures, °F
 * @param movement  that the splice takes up in all
 * @returns         null where the temperature now lies outside the range, or the range is none
 * Source: NEMA VE 2, gap setting (from memory): the gap falls straight from cold to hot.
 */
export function wantedGap({ lowF, highF, nowF }: Temperatures, movement: Ticks): Ticks | null {
  if (highF <= lowF || nowF < lowF || nowF > highF) return null;
  return ticks(nearest((movement * (highF - nowF)) / (highF - lowF)));
}
