/** What the figures of a draw show, said by its model in a form that the proofs can find again in their lines and letters. */
import type { Vec } from '../run/vector.ts';
import type { Say } from '../trade/answer.ts';
import type { Ticks } from '../trade/length.ts';

/** A place along a leg, from its first working point, under the name it has on the drawing. */
export interface FiguredPlace {
  readonly name: string;
  readonly at: Ticks;
}
export interface FiguredLeg {
  readonly length: Ticks;
  readonly supports: readonly FiguredPlace[];
  readonly joints: readonly FiguredPlace[];
}
/** A leg as it goes in space: east, north, up. */
export interface FiguredCourse {
  readonly length: Ticks;
  readonly along: Vec;
}

interface Kinds {
  /** Lettered, each as often as it stands here, and a given of the draw. */
  readonly lengths: { readonly ticks: readonly Ticks[] };
  /** Lettered, each as often as it stands here; of parts, which no given names by itself. */
  readonly sizes: { readonly ticks: readonly Ticks[] };
  /** Said in its words in this order; others may be said between them. */
  readonly said: { readonly ticks: readonly Ticks[] };
  /** Whole number in its words. */
  readonly count: { readonly value: number };
  /** In its letters, from left to right. */
  readonly names: { readonly says: readonly Say[] };
  /** From the hook to the pointer of a tape. */
  readonly tape: { readonly ticks: Ticks };
  /** Drawn as it is, and lettered. */
  readonly slope: { readonly deg: number };
  /** All legs of a run drawn unfolded to one scale, with everything that stands on them; the lengths are givens. */
  readonly legs: { readonly legs: readonly FiguredLeg[] };
  /** All legs of a run drawn in space, in their order: lettered, said, dimensioned to one scale. */
  readonly courses: { readonly courses: readonly FiguredCourse[] };
  /** Uncut bars to one scale, in their order. */
  readonly bars: { readonly ticks: readonly Ticks[] };
  /** Everything that lies in a channel drawn across, in the order of its legend. */
  readonly cables: {
    readonly widthIn: number;
    readonly cables: readonly { readonly odIn: number; readonly count: number }[];
  };
  /** The side of the mark that is waste, and the middle of the saw cut off the mark, in cuts, to the right more than 0. */
  readonly cut: { readonly waste: 'left' | 'right'; readonly off: number };
  /** Holes at one end of a piece, and none at the other. */
  readonly holes: { readonly end: 'left' | 'right'; readonly count: number };
}

export type FiguredKind = keyof Kinds;
export type FiguredOf<K extends FiguredKind> = { readonly kind: K } & Kinds[K];
export type Figured = { [K in FiguredKind]: FiguredOf<K> }[FiguredKind];
