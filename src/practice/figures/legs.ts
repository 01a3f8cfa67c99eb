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
  /** Px from its first working point to its last; null where its end is not marked. */
  readonly length: number | null;
  /** Its length as lettered, inches; null where that found no room on its dimension. */
  readonly lettered: number | null;
  /** Px from its first working point. */
  readonly supports: readonly number[];
  readonly joints: readonly number[];
}

/** A leg, or what of it stands in one row: from the first to the last of its channel, and marks along the sheet. */
interface Bar {
  x1: number;
  x2: number;
  /** Of fittings outside the channel, of joints within it. */
  readonly centres: number[];
  readonly breaks: number[];
  readonly supports: number[];
  span?: DrawnSpan;
}

/** Px: no wider or higher is a support drawn. */
const SUPPORT = 12;
/** Channel is drawn with the thicker of two pens. */
const THICK = 2;

/** Legs in their order. */
export function legsIn(figure: DrawnFigure): readonly DrawnLeg[] {
  const bars = barsIn(figure);
  return bars
    .map((_, i) => i)
    .filter((i) => !goesOn(bars[i - 1]))
    .map((i) => legFrom(bars.slice(i), figure));
}

/** Each bar's channel is drawn first; what marks it stands behind that. */
function barsIn({ shapes }: DrawnFigure): readonly Bar[] {
  const bars: Bar[] = [];
  let channel = false;
  for (const shape of shapes) {
    const last = bars.at(-1);
    if (isChannel(shape)) {
      if (channel && last !== undefined) last.x2 = Math.max(last.x2, shape.x2);
      else bars.push({ x1: shape.x1, x2: shape.x2, centres: [], breaks: [], supports: [] });
      channel = true;
    } else if (last !== undefined && marks(last, shape)) channel = false;
  }
  return bars;
}

const isChannel = (shape: DrawnShape): shape is Extract<DrawnShape, { readonly kind: 'line' }> =>
  shape.kind === 'line' && shape.dash === '' && shape.pen > THICK && isAcross(shape);

/** Whether the shape is a mark of this bar. */
function marks(bar: Bar, shape: DrawnShape): boolean {
  if (shape.kind === 'break') bar.breaks.push(shape.x);
  else if (shape.kind === 'line' && isUpright(shape) && isCentre(shape)) bar.centres.push(shape.x1);
  else if (shape.kind === 'span' && isAcross(shape)) bar.span = shape;
  else if (shape.kind === 'box' && shape.outlined && shape.w <= SUPPORT && shape.h <= SUPPORT)
    bar.supports.push(shape.x + shape.w / 2);
  else return false;
  return true;
}

const goesOn = (bar: Bar | undefined) => bar?.breaks.some((x) => x > bar.x2 - 1) === true;

/** The leg that begins with the first of these bars. */
function legFrom(bars: readonly Bar[], figure: DrawnFigure): DrawnLeg {
  const own = bars.slice(0, bars.findIndex((bar) => !goesOn(bar)) + 1);
  const supports: number[] = [];
  const joints: number[] = [];
  let along = 0;
  let ends = true;
  for (const bar of own) {
    const { x1, x2, centres, span } = bar;
    const from = span?.x1 ?? centres.find((x) => x < x1) ?? x1;
    const end = span?.x2 ?? centres.find((x) => x > x2) ?? (goesOn(bar) ? x2 : undefined);
    supports.push(...bar.supports.map((x) => along + x - from));
    joints.push(...centres.filter((x) => x >= x1 && x <= x2).map((x) => along + x - from));
    along += (end ?? x2) - from;
    ends = end !== undefined;
  }
  const span = own[0]?.span;
  return {
    length: ends ? along : null,
    lettered: span === undefined ? null : (lengthsOn(letteredOn(figure, span))[0] ?? null),
    supports,
    joints: joints.sort((a, b) => a - b),
  };
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
