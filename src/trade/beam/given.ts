/** What is asked of a beam and what is answered. */

/** A load at one place. */
export interface PointLoad {
  /** Span from 0; −1 the left overhang, the number of spans the right one. */
  readonly span: number;
  /** From the span's left support; on the left overhang from its tip. From 0 to the length. */
  readonly atIn: number;
  /** Down, from 0. */
  readonly lb: number;
}

/** A uniform load on one span. */
export interface SpanLoad {
  readonly span: number;
  readonly lbPerFt: number;
}

export interface BeamGiven {
  /** Support to support, from the left, each above 0; at least one. */
  readonly spansIn: readonly number[];
  /** The same on every span. Exactly one of this and `loads` is given. */
  readonly loadLbPerFt?: number | undefined;
  /** Span by span; one that is not named carries nothing, entries for one span add up. */
  readonly loads?: readonly SpanLoad[] | undefined;
  readonly points?: readonly PointLoad[] | undefined;
  /** Beyond the first and the last support; each carries the uniform load of the span beside it. */
  readonly overhangLeftIn?: number | undefined;
  readonly overhangRightIn?: number | undefined;
  /** Modulus of elasticity, above 0. */
  readonly ePsi: number;
  /** Moment of inertia, above 0. */
  readonly iIn4: number;
}

export interface SpanMoment {
  readonly span: number;
  readonly atIn: number;
  readonly lbIn: number;
}

export interface SpanDeflection {
  readonly span: number;
  readonly atIn: number;
  readonly in: number;
}

export interface BeamResult {
  /** One a support, up positive. */
  readonly reactionsLb: readonly number[];
  /** One a support, hogging negative. */
  readonly supportMomentsLbIn: readonly number[];
  /** Greatest moment of each span, its ends included. */
  readonly spanMaxima: readonly SpanMoment[];
  /** Greatest downward deflection of each span, not below 0. */
  readonly deflections: readonly SpanDeflection[];
  /** Left, right; downward positive; null without an overhang. */
  readonly tipDeflectionsIn: readonly [number | null, number | null];
}
