/** The four states as pages speak of them, in the order in which they always stand. */
import type { Standing } from '../register/standing.ts';

const standings = {
  shown: 'shown',
  'show-again': 'show again',
  'practice-only': 'practice only',
  'not-shown': 'not shown',
} as const satisfies Readonly<Record<string, Standing>>;

export type StateKey = keyof typeof standings;
export const stateKeys = Object.keys(standings) as readonly StateKey[];
export const standingOf = (state: StateKey): Standing => standings[state];
/** @throws Error on a standing that has no state: none is left out of the table. */
export function stateOf(standing: Standing): StateKey {
  const found = stateKeys.find((key) => standings[key] === standing);
  if (found === undefined) throw new Error(`no state for ${standing}`);
  return found;
}
