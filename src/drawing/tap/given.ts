/** What the tapped run is told, and what it gives back besides its lines. */
import type { ResolvedRun } from '../../run/resolved.ts';
import type { Box } from '../shapes.ts';
import type { Sheet } from '../svg.ts';
import type { Drawing } from '../types.ts';

/** What a person sets down on a run. */
export const PLACE_WHATS = ['support', 'splice', 'jumper', 'anchor'] as const;
export type PlaceWhat = (typeof PLACE_WHATS)[number];

/** Something set down, or a part that was found at fault. */
export interface TapChosen {
  readonly leg: string;
  /** Inches from the leg's first working point; `null`: the whole leg. */
  readonly at: number | null;
  /** Of the things set down its kind, of a fault its rule. */
  readonly what: string;
  /** Once taped: whether it holds. */
  readonly held?: boolean | undefined;
}

/** What was found wrong when it was taped, with the number of its note. */
export interface TapFound {
  readonly leg: string;
  readonly at: number | null;
  readonly note: number;
}

export interface TapGiven {
  readonly resolved: ResolvedRun;
  /** What a tap does now: sets a thing down, or names a part. */
  readonly tap: { readonly kind: 'place'; readonly what: PlaceWhat } | { readonly kind: 'faults' };
  readonly chosen: readonly TapChosen[];
  /** What is to be looked at again, once it was taped. */
  readonly found?: readonly TapFound[] | undefined;
  /** Nothing besides was found: every other measure is ringed. */
  readonly ringed?: boolean | undefined;
  /** Drawn 304 px wide, for screens under 360. */
  readonly tiny?: boolean | undefined;
}

/** Kinds of what can be tapped. */
export type TapPart =
  | 'mark'
  | 'place'
  | 'support'
  | 'span'
  | 'joint'
  | 'start'
  | 'fitting'
  | 'face'
  | 'end'
  | 'step'
  | 'leg';

export interface TapPlace {
  /** One of its kind on the run; the same in every form. */
  readonly key: string;
  readonly leg: string;
  /** Inches; `null`: the whole leg. */
  readonly at: number | null;
  readonly part: TapPart;
  /** Where else a fault of this part may stand: inches by the rule's id. */
  readonly elsewhere: Readonly<Record<string, number>>;
  /** What stands in the box: `A`, `S1`, `4'`. */
  readonly letters: string;
  /** Its name for someone who does not see it. */
  readonly words: string;
}

export interface TapTarget extends TapPlace {
  /** 48 by 48 px of the drawing. */
  readonly box: Box;
}

export interface TapSheet extends Sheet {
  readonly targets: readonly TapTarget[];
}

export interface TapDrawing extends Drawing {
  readonly targets: readonly TapTarget[];
}

/** Whether two places are one: the same leg, nearer than 1/64 in. */
export function samePlace(
  a: { readonly leg: string; readonly at: number | null },
  b: { readonly leg: string; readonly at: number | null },
): boolean {
  if (a.leg !== b.leg) return false;
  return a.at === null || b.at === null ? a.at === b.at : Math.abs(a.at - b.at) < 1 / 64;
}
