import { problemKeys } from './problems.ts';
import { reasons } from './refusal.ts';

/** Every sentence that the register says, by its key in content/words. */
export const registerSays: readonly string[] = [
  ...reasons.map((key) => `registerProblem.${key}` as const),
  ...problemKeys.map((key) => `registerProblem.${key}` as const),
  'registerProblem.no-beginning',
  'registerProblem.torn-tail',
  'registerProblem.altered-form',
  'registerProblem.altered-signature',
  'registerProblem.body-altered',
  'registerWhy.withdrawn',
  'registerWhy.second-withdrawn',
  'registerWhy.not-yet',
  'registerWhy.revision',
  'registerWhy.time',
  'registerWhy.back-dated',
  'registerWhy.fork',
  'registerWhy.hole',
  'registerWhy.appointment',
  'registerWhy.second-doubt',
  'registerWhy.evidence',
  'registerWhy.body',
  'registerWhy.gap',
  'registerWhy.second-missing',
  'registerNote.owner-forked',
  'registerNote.no-successor',
  'registerNote.ahead',
  'registerNote.unknown-kind',
  'registerNote.problems',
  'registerNote.no-zone',
];

/** What is said to a question (may.ts); words in content/words, may.json. */
export const maySays: readonly string[] = [
  'registerMay.shown',
  'registerMay.practice-only',
  'registerMay.nothing',
  'registerMay.not-yet',
  'registerMay.erased',
  'registerMay.ticket-good',
  'registerMay.ticket-lapses',
  'registerMay.ticket-unrecorded',
];
