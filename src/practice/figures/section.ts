/** What lies in a channel drawn across: diameters by the scale that its inside width gives, and as its legend lists them. */
import { allOf, type DrawnFigure } from './shapes.ts';
import { lengthsIn } from './texts.ts';

export interface DrawnSection {
  /** Inside, as lettered. */
  readonly widthIn: number;
  /** Of each cable, inches, thickest first. */
  readonly diameters: readonly number[];
  /** `A: 3 of 0.71 in`, in the order of the legend. */
  readonly legend: readonly { readonly count: number; readonly odIn: number }[];
}

/** Null where no width is lettered. */
export function sectionIn(figure: DrawnFigure): DrawnSection | null {
  const [span] = allOf(figure, 'span');
  const letters = allOf(figure, 'letters');
  if (span === undefined) return null;
  const middle = (span.x1 + span.x2) / 2;
  const lettered = letters.find(({ x, y }) => Math.abs(x - middle) < 1 && Math.abs(y - span.y) < 10);
  const [widthIn] = lengthsIn(lettered?.text ?? '');
  if (widthIn === undefined) return null;
  const px = (span.x2 - span.x1) / widthIn;
  return {
    widthIn,
    diameters: allOf(figure, 'circle')
      .map(({ r }) => (2 * r) / px)
      .sort((a, b) => b - a),
    legend: letters.flatMap(({ text }) =>
      [...text.matchAll(/(\d+) [^\d.]+ (\d+\.\d+)/g)].map(([, count, od]) => ({
        count: Number(count),
        odIn: Number(od),
      })),
    ),
  };
}
