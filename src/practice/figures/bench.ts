/** What lies on the bench or is sketched: bars to one scale, a slope, a mark with its saw cut and its X, drilled holes. */
import { allOf, type DrawnFigure, type DrawnLine, isCentre, isUpright } from './shapes.ts';

/** Px of each uncut bar, from the top down. */
export const barsIn = (figure: DrawnFigure): readonly number[] =>
  allOf(figure, 'box').flatMap(({ outlined, dash, w }) => (outlined && dash !== '' ? [w] : []));

/** Degrees of the centre lines that climb. */
export const slopesIn = (figure: DrawnFigure): readonly number[] =>
  allOf(figure, 'line')
    .filter((line) => isCentre(line) && line.x1 !== line.x2 && line.y1 !== line.y2)
    .map(({ x1, y1, x2, y2 }) => (Math.atan2(y1 - y2, x2 - x1) * 180) / Math.PI);

export interface DrawnCut {
  /** Side of the mark on which the X stands. */
  readonly waste: 'left' | 'right';
  /** From the mark to the middle of the saw cut, in widths of the cut; to the right more than 0. */
  readonly off: number;
}

/** The mark is the longest line across, the cut's two edges those beside it. */
export function cutIn(figure: DrawnFigure): DrawnCut | null {
  const lines = allOf(figure, 'line');
  const long = ({ y1, y2 }: DrawnLine) => Math.abs(y2 - y1);
  const [mark, one, other] = lines.filter(isUpright).sort((a, b) => long(b) - long(a));
  const cross = lines.find((line) => lines.some((o) => crosses(line, o)));
  if (mark === undefined || one === undefined || other === undefined || cross === undefined) return null;
  const width = Math.abs(other.x1 - one.x1);
  return {
    waste: (cross.x1 + cross.x2) / 2 < mark.x1 ? 'left' : 'right',
    off: ((one.x1 + other.x1) / 2 - mark.x1) / width,
  };
}

const crosses = (a: DrawnLine, b: DrawnLine) =>
  a.x1 === b.x1 && a.x2 === b.x2 && a.y1 === b.y2 && a.y2 === b.y1 && a.y1 > a.y2;

/** Holes at each end of a piece that fills its sheet. */
export function holesIn(figure: DrawnFigure): { readonly left: number; readonly right: number } {
  const boxes = allOf(figure, 'box');
  const middle = Math.max(...boxes.map(({ w }) => w)) / 2;
  const holes = allOf(figure, 'circle');
  const left = holes.filter(({ x }) => x < middle).length;
  return { left, right: holes.length - left };
}
