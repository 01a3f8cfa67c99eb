/**
 * One span between its supports. Between two point loads shear is a line, moment a parabola, slope a cubic and
 * deflection a quartic; the greatest values stand at the ends of such a stretch or where the next lower one is 0.
 * Slope and deflection are kept times E × I.
 */
import type { Span } from './frame.ts';
import { endShears, loadTerm } from './supports.ts';

/** Values at the beginning of a stretch without point loads. */
interface Stretch {
  readonly fromIn: number;
  readonly lengthIn: number;
  readonly lbPerIn: number;
  readonly shear: number;
  readonly moment: number;
  readonly slope: number;
  readonly sag: number;
}

export interface Greatest {
  readonly atIn: number;
  readonly value: number;
}

export interface AlongSpan {
  readonly moment: Greatest;
  /** Greatest downward deflection times E × I, not below 0. */
  readonly sag: Greatest;
  /** Slope over each support times E × I, downwards to the right positive. */
  readonly slopes: { readonly left: number; readonly right: number };
}

export function alongSpan(span: Span, leftLbIn: number, rightLbIn: number): AlongSpan {
  const slopes = {
    left: (loadTerm(span, 'left') + span.lengthIn * (2 * leftLbIn + rightLbIn)) / 6,
    right: -(loadTerm(span, 'right') + span.lengthIn * (leftLbIn + 2 * rightLbIn)) / 6,
  };
  const all = stretches(span, endShears(span, leftLbIn, rightLbIn).left, leftLbIn, slopes.left);
  const ends = [
    { atIn: 0, value: leftLbIn },
    { atIn: span.lengthIn, value: rightLbIn },
  ];
  return {
    moment: greatest([...ends, ...all.flatMap(momentsOf)]),
    sag: greatest([{ atIn: 0, value: 0 }, ...all.flatMap(sagsOf)]),
    slopes,
  };
}

function greatest(found: readonly Greatest[]): Greatest {
  return found.reduce((most, one) => (one.value > most.value ? one : most));
}

function stretches(span: Span, shear: number, moment: number, slope: number): readonly Stretch[] {
  const { lengthIn, lbPerIn, points } = span;
  const list: Stretch[] = [];
  let here = { fromIn: 0, shear, moment, slope, sag: 0 };
  for (const { atIn, lb } of [...points, { atIn: lengthIn, lb: 0 }]) {
    const stretch: Stretch = { ...here, lengthIn: atIn - here.fromIn, lbPerIn };
    if (stretch.lengthIn > 0) list.push(stretch);
    const end = stretch.lengthIn;
    here = {
      fromIn: atIn,
      shear: stretch.shear - lbPerIn * end - lb,
      moment: momentAt(stretch, end),
      slope: slopeAt(stretch, end),
      sag: sagAt(stretch, end),
    };
  }
  return list;
}

const momentAt = ({ moment, shear, lbPerIn }: Stretch, x: number): number =>
  moment + x * (shear - (x * lbPerIn) / 2);
const slopeAt = ({ slope, moment, shear, lbPerIn }: Stretch, x: number): number =>
  slope - x * (moment + x * (shear / 2 - (x * lbPerIn) / 6));
const sagAt = ({ sag, slope, moment, shear, lbPerIn }: Stretch, x: number): number =>
  sag + x * (slope - x * (moment / 2 + x * (shear / 6 - (x * lbPerIn) / 24)));

/** Moments at the beginning of a stretch inside the span, and where its shear is 0. */
function momentsOf(stretch: Stretch): readonly Greatest[] {
  const { fromIn, lengthIn, lbPerIn, shear, moment } = stretch;
  const top = lbPerIn > 0 ? shear / lbPerIn : -1;
  return [
    ...(fromIn > 0 ? [{ atIn: fromIn, value: moment }] : []),
    ...(top > 0 && top < lengthIn ? [{ atIn: fromIn + top, value: momentAt(stretch, top) }] : []),
  ];
}

/** Deflections at the beginning of a stretch inside the span, and where its slope is 0. */
function sagsOf(stretch: Stretch): readonly Greatest[] {
  const { fromIn, lengthIn } = stretch;
  const bends = rootsOf(stretch).filter((x) => x > 0 && x < lengthIn);
  const edges = [0, ...bends, lengthIn];
  const level = edges.slice(1).flatMap((to, i) => levelBetween(stretch, edges[i] ?? 0, to));
  return [
    ...(fromIn > 0 ? [{ atIn: fromIn, value: stretch.sag }] : []),
    ...level.map((x) => ({ atIn: fromIn + x, value: sagAt(stretch, x) })),
  ];
}

/** Where the moment is 0: between two such places the slope only rises or only falls. In order. */
function rootsOf(stretch: Stretch): readonly number[] {
  // Loads times any number leave the places alone; of the size of 1, their squares neither overflow nor vanish.
  const size = Math.max(Math.abs(stretch.moment), Math.abs(stretch.shear), stretch.lbPerIn);
  if (size === 0) return [];
  const [moment, shear, lbPerIn] = [stretch.moment / size, stretch.shear / size, stretch.lbPerIn / size];
  if (lbPerIn === 0) return shear === 0 ? [] : [-moment / shear];
  const under = shear * shear + 2 * lbPerIn * moment;
  if (under < 0) return [];
  // The root that adds two numbers of one sign; the other by the product of both, so that nothing is lost.
  const sum = shear + (shear < 0 ? -1 : 1) * Math.sqrt(under);
  const roots = sum === 0 ? [0] : [sum / lbPerIn, (-2 * moment) / sum];
  return roots.sort((a, b) => a - b);
}

/** The place where the slope is 0 in a piece where it only rises or only falls, halved down to neighbouring numbers. */
function levelBetween(stretch: Stretch, from: number, to: number): readonly number[] {
  const rising = slopeAt(stretch, to) > 0;
  if (slopeAt(stretch, from) > 0 === rising) return [];
  let [low, high] = [from, to];
  for (;;) {
    const middle = low + (high - low) / 2;
    if (!(middle > low && middle < high)) return [middle];
    if (slopeAt(stretch, middle) > 0 === rising) high = middle;
    else low = middle;
  }
}
