/** Whether a saw cut falls on a hole of the floor. */
import type { Ticks } from '../trade/length.ts';
import type { HoleRow } from './catalogue.ts';

/**
 * A piece lies on its stock from the first end; the cut at its second end is on a hole when it falls nearer than
 * half the hole's width to the hole's centre. The stock's own end is never cut.
 *
 * @param cut    length of the piece
 * @param holes  centres at `first + k·pitch`
 * @param stock  one length as it comes
 */
export function cutOnHole(cut: Ticks, holes: HoleRow, stock: Ticks): boolean {
  if (cut >= stock) return false;
  const k = Math.max(0, Math.round((cut - holes.first) / holes.pitch));
  const centre = holes.first + k * holes.pitch;
  return centre < stock && 2 * Math.abs(cut - centre) < holes.width;
}
