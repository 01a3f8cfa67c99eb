/** What lies in a channel drawn across: diameters by the scale that its inside width gives, and as its legend lists them. */
import { allOf, type DrawnFigure, isAcross, letteredOn } from './shapes.ts';
import { lengthsIn } from './texts.ts';

export interface CablesListed {
  readonly count: number;
  readonly odIn: number;
}

export interface DrawnSection {
  /** Inside, as lettered. */
  readonly widthIn: number;
  /** Of each cable, inches, thickest first. */
  readonly diameters: readonly number[];
  /** `A: 3 of 0.71 in`, in the order of the legend, and as it is said. */
  readonly legend: readonly CablesListed[];
  readonly told: readonly CablesListed[];
}

/** Null where no width is lettered. */
export function sectionIn(figure: DrawnFigure): DrawnSection | null {
  const span = allOf(figure, 'span').find(isAcross);
  if (span === undefined) return null;
  const [widthIn] = lengthsIn(letteredOn(figure, span));
  if (widthIn === undefined) return null;
  const px = (span.x2 - span.x1) / widthIn;
  return {
    widthIn,
    diameters: allOf(figure, 'circle')
      .map(({ r }) => (2 * r) / px)
      .sort((a, b) => b - a),
    legend: allOf(figure, 'letters').flatMap(({ text }) => listedIn(text)),
    told: listedIn(figure.words),
  };
}

const listedIn = (text: string): readonly CablesListed[] =>
  [...text.matchAll(/(\d+) [^\d.]+ (\d+\.\d+)/g)].map(([, count, od]) => ({
    count: Number(count),
    odIn: Number(od),
  }));
