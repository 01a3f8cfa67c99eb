/** What a page and the worker that looks for a plan say to each other. */
import type { Answered } from '../../trade/answer.ts';
import type { SticksGiven, SticksResult } from '../../trade/sticks/types.ts';

export interface Asked {
  readonly given: SticksGiven;
  /** How long to look at most. */
  readonly seconds: number;
}

export type Told =
  | { readonly told: 'better'; readonly answered: Answered<SticksResult> }
  /** `late`: the time ran out before the search had come to its end. */
  | { readonly told: 'end'; readonly answered: Answered<SticksResult>; readonly late: boolean };
