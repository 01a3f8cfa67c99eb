/** The four states as pages speak of them, in the order in which they always stand. */
import type { Standing } from '../register/standing.ts';

export const stateKeys = ['shown', 'show-again', 'practice-only', 'not-shown'] as const;
export type StateKey = (typeof stateKeys)[number];

const keys: Readonly<Record<Standing, StateKey>> = {
  shown: 'shown',
  'show again': 'show-again',
  'practice only': 'practice-only',
  'not shown': 'not-shown',
};
export const stateOf = (standing: Standing): StateKey => keys[standing];
