/**
 * How long a practice family rests, by npm ts-fsrs (MIT; FSRS-6 with its own default weights, which come from the study of
 * words, not of hands: so a rest never says anything about a person, and never passes half of the shortest time that a
 * showing is good for, 12 months). Chance is off, so the same tries give the same rest on every device.
 * Fetched once a page stands.
 */
import { createEmptyCard, fsrs, type Grade, Rating } from 'ts-fsrs';
import type { Came } from '../practice/attempts.ts';
import type { RestUntil } from '../practice/comingBack.ts';

/** The longest rest, in days (common practice, no source); a day more may come of it. */
const LONGEST = 181;
/** A draw that did not pass comes again this soon: the same day, with other numbers. */
const SOON = ['10m'] as const;

const engine = fsrs({
  enable_fuzz: false,
  enable_short_term: true,
  learning_steps: SOON,
  relearning_steps: SOON,
  maximum_interval: LONGEST,
});

/** From the grade alone: nobody is asked how it felt. */
const RATINGS: Readonly<Record<Came, Grade>> = {
  passed: Rating.Good,
  near: Rating.Hard,
  not: Rating.Again,
};

export const restUntil: RestUntil = (tries) => {
  const start = createEmptyCard(tries[0]?.at ?? 0);
  return tries
    .reduce((state, { at, came }) => engine.next(state, at, RATINGS[came]).card, start)
    .due.getTime();
};
