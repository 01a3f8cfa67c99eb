/** A lay-out of one line with the fewest supports. */
import { fewestSupports } from './fewest.ts';
import type { LineLayout, LineProblem } from './line.ts';
import { wholeLine } from './whole.ts';

/** @returns null when there is none */
export function layLine(problem: LineProblem): LineLayout | null {
  const { channel, stock, must } = problem;
  const onePiece = channel[1] - channel[0] <= stock;
  return onePiece && must === undefined ? wholeLine(problem) : fewestSupports(problem);
}
