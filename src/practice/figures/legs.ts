/** A run drawn unfolded: where its supports and joints stand along its legs, by px, and what is lettered at them. */
import {
  allOf,
  type DrawnFigure,
  type DrawnShape,
  type DrawnSpan,
  isAcross,
  isCentre,
  isUpright,
  letteredOn,
} from './shapes.ts';
import { lengthsOn } from './texts.ts';

export interface DrawnLeg {
  /** Px from its first working point: to its last, to each support, to the middle of each joint. */
  readonly length: number;
  /** Its length as lettered, inches; null where that found no room on its dimension. */
  readonly lettered: number | null;
  readonly supports: readonly number[];
  readonly joints: readonly number[];
}

/** Px: no wider or higher is a support drawn. */
const SUPPORT = 12;

/** Legs that stand whole in one row, in order: one that is broken over several has no dimension of its own. */
export function legsIn(figure: DrawnFigure): readonly DrawnLeg[] {
  const { shapes } = figure;
  const spans = shapes.flatMap((shape, i) =>
    shape.kind === 'span' && isAcross(shape) ? [{ ...shape, i }] : [],
  );
  return spans.map((span, n) => {
    // A leg's joints are drawn before its dimension, its supports behind it.
    const before = shapes.slice(spans[n - 1]?.i ?? 0, span.i);
    const behind = shapes.slice(span.i, spans[n + 1]?.i);
    return {
      length: span.x2 - span.x1,
      lettered: lengthsOn(letteredOn(figure, span))[0] ?? null,
      supports: behind.flatMap((shape) => supportAt(shape, span)),
      joints: before.flatMap((shape) => jointAt(shape, span)).sort((a, b) => a - b),
    };
  });
}

function supportAt(shape: DrawnShape, { x1, x2, y1 }: DrawnSpan): readonly number[] {
  if (shape.kind !== 'box' || !shape.outlined || shape.w > SUPPORT || shape.h > SUPPORT) return [];
  const x = shape.x + shape.w / 2;
  return x >= x1 && x <= x2 && shape.y > y1 ? [x - x1] : [];
}

/** A centre line across the channel; at the leg's two ends it is a fitting's. */
function jointAt(shape: DrawnShape, { x1, x2, y1 }: DrawnSpan): readonly number[] {
  if (shape.kind !== 'line' || !isUpright(shape) || !isCentre(shape)) return [];
  return shape.x1 > x1 + 1 && shape.x1 < x2 - 1 && shape.y1 > y1 - 1 ? [shape.x1 - x1] : [];
}

/** Names that have their place beside them, `B 8'-2"`: inches. */
export const placesIn = (figure: DrawnFigure): ReadonlyMap<string, number> =>
  new Map(
    allOf(figure, 'letters').flatMap(({ text }): [string, number][] => {
      const [, name = '', place = ''] = /^([A-Z]+\d*) +(\d.*)$/.exec(text) ?? [];
      const [at] = lengthsOn(place);
      return at === undefined ? [] : [[name, at]];
    }),
  );
