/** What the search for a cutting plan is given, and what it answers. */
import type { Answered, Say } from '../answer.ts';
import type { Ticks } from '../length.ts';

export interface Stock {
  readonly length: Ticks;
  /** How many there are; as many as it takes when left out. */
  readonly count?: number | undefined;
}

export interface Offcut {
  readonly length: Ticks;
  readonly count: number;
}

export interface Wanted {
  readonly length: Ticks;
  readonly count: number;
  /** Written on the piece; pieces of one length may carry several. */
  readonly mark?: string | undefined;
}

export interface SticksGiven {
  readonly stock: readonly Stock[];
  /** Left over from earlier work; used up first. */
  readonly offcuts?: readonly Offcut[] | undefined;
  readonly pieces: readonly Wanted[];
  /** What one cut takes away, from 0. */
  readonly kerf: Ticks;
  /** The shortest remainder worth keeping; 12 in when left out. */
  readonly minReusable?: Ticks | undefined;
}

/** How long to look. Without `stop` the search ends after a fixed amount of work, the same on every machine. */
export interface Budget {
  /** Asked now and then; true ends the search with the best plan so far. */
  readonly stop?: (() => boolean) | undefined;
  /** Told every better plan, with its bound, while the search goes on. */
  readonly found?: ((soFar: Answered<SticksResult>) => void) | undefined;
}

export interface CutPiece {
  readonly in: number;
  readonly mark?: string;
}

/** One bar and what is cut from it, longest first. */
export interface CutLength {
  readonly fromIn: number;
  readonly offcut: boolean;
  readonly pieces: readonly CutPiece[];
  /** What is left after a kerf for each piece; 0 where the last cut falls on the end. */
  readonly leftIn: number;
}

export interface Weight {
  /** Piece length in grid units. */
  readonly length: number;
  readonly u: number;
}

/** Every bar holds pieces of weight U at most, and all pieces weigh more than fewer bars can hold. */
export interface BarCertificate {
  /** One grid unit in inches; lengths of the certificate are whole numbers of it. */
  readonly grid: number;
  readonly weights: readonly Weight[];
  readonly U: number;
  /** Bars needed at least: the whole weight over U, rounded up. */
  readonly bound: number;
}

/** The same with several lengths of bar: each has its own U. */
export interface StockCertificate {
  readonly grid: number;
  readonly weights: readonly Weight[];
  readonly perStock: readonly { readonly length: number; readonly U: number }[];
  /** Inches of new stock needed at least: the cheapest bars whose U add up to the whole weight. */
  readonly bound: number;
}

export type Certificate = BarCertificate | StockCertificate;

export interface SticksResult {
  readonly feasible: boolean;
  /** New stock lengths opened; null, as the numbers below, when there is no plan. */
  readonly lengthsUsed: number | null;
  readonly newStockIn: number | null;
  /** No plan takes less new stock than this. */
  readonly lowerBoundIn: number | null;
  /** Whether no plan takes less new stock than this one: the certificate shows it. */
  readonly proven: boolean;
  /** How many of the five aims, in their order, are proven to be met as well as can be. */
  readonly provenLevels: number;
  readonly cutFromOffcutsIn: number | null;
  readonly longestReusableIn: number | null;
  readonly setups: number | null;
  readonly stopSettings: number | null;
  readonly lengths: readonly CutLength[];
  readonly certificate: Certificate | null;
  readonly why?: readonly Say[];
}
