/** Editions of NFPA 70: which are known here, and what changed from one to the next. */
import type { Say, Source } from './answer.ts';

/** Editions of NFPA 70 whose tables are known here. */
export const EDITIONS = [2017, 2020, 2023] as const;
export type Edition = (typeof EDITIONS)[number];
/** The edition taken when none is named and the site has adopted none. */
export const NEWEST: Edition = 2023;

/** Something that each edition has its own of. */
export type PerEdition<Value> = Readonly<Record<Edition, Value>>;
/** Where each edition says it. */
export type ByEdition = PerEdition<Source>;

/** What a change bears on: a calculator by its verb, or the whole of a tray job. */
export const CHANGE_TOPICS = [
  'general',
  'fill',
  'jumper',
  'groundpath',
  'expansion',
  'radius',
  'transition',
  'ampacity',
  'marking',
  'separation',
] as const;
export type ChangeTopic = (typeof CHANGE_TOPICS)[number];

/** What an edition says otherwise than the one before it. */
export interface Change {
  readonly topic: ChangeTopic;
  /** The edition that brought it. */
  readonly edition: Edition;
  /** Where it stood before; null where it is new. */
  readonly was: string | null;
  readonly now: string;
  /** What changed, in a sentence. */
  readonly what: Say;
  /** Where the newer edition says it. */
  readonly source: Source;
}

/**
 * What changed between two editions, in whichever order they are named, oldest change first.
 * @param topic  only what bears on it; all when left out
 */
export function changesBetween(
  changes: readonly Change[],
  editions: readonly [Edition, Edition],
  topic?: ChangeTopic,
): readonly Change[] {
  const [from, to] = [Math.min(...editions), Math.max(...editions)];
  return changes
    .filter((c) => c.edition > from && c.edition <= to && (topic === undefined || c.topic === topic))
    .sort((a, b) => a.edition - b.edition);
}
