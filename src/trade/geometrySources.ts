/** Where the geometry comes from; the entries of the same ids in content/sources say more. */
import type { Source } from './answer.ts';

export const TRIANGLES: Source = {
  id: 'plane-geometry',
  document: 'Plane geometry, any textbook',
  edition: 'no edition',
  where: 'right triangles and arcs',
  seen: 'memory',
};
export const OFFSET_FIGURES: Source = {
  id: 'common-practice',
  document: 'Common practice of the trade; no document states it',
  edition: 'no edition',
  where: 'multipliers and shrink of offsets',
  seen: 'common practice',
};
