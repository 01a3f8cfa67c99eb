/** The gap that an expansion splice is set to. */
import { gapAt } from '../trade/gapAt.ts';
import { nearest, type Ticks, ticks } from '../trade/length.ts';
import type { Temperatures } from './types.ts';

/**
 * What of its movement an expansion splice must still be open for, at the metal's temperature now, to the nearest tick.
 *
 * @param temps     metal temperatures, °F
 * @param movement  that the splice takes up in all
 * @returns         null where the temperature now lies outside the range, or the range is none
 */
export function wantedGap({ lowF, highF, nowF }: Temperatures, movement: Ticks): Ticks | null {
  const gap = gapAt(lowF, highF, nowF, movement);
  return gap === null ? null : ticks(nearest(gap));
}
