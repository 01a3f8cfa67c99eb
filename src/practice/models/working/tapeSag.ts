/** Tape sag (T05): how much too long a tape reads that hangs free between two faces, and what is done with its reading. */
import { inches } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, wordFact } from '../parts/told.ts';

const wants = {
  hangs: ['slight', 'deep'],
  reading: 'length',
  slight: 'length',
  deep: 'length',
} as const;

/** What a measured length may be off, in inches: common practice, no source. */
const MAY_BE_OFF = 1 / 16;
/** Nearer to that, the answer would hang on how well the sag was seen; and less than this nobody could measure. */
const CLEAR = 1 / 128;
const LEAST = 1 / 50;
/** Answers nearer to each other than this could not be told apart. */
const TOLD = 1 / 32;

interface Job {
  readonly drawn: Drawn<typeof wants>;
  /** Inches. */
  readonly reading: number;
  readonly sag: number;
  readonly sum: 'whole' | 'not squared' | 'not by three';
  readonly takes: 'excess' | 'nothing' | 'sag' | 'added';
  readonly does: 'by limit' | 'take' | 'again' | 'off';
}

/** A tape hangs in a flat curve: longer than the straight line by 8 s² / 3 L (surveying, flat parabola; from memory). */
function excess({ reading, sag, sum }: Job): number {
  const times = sum === 'not squared' ? sag : sag * sag;
  return (8 * times) / ((sum === 'not by three' ? 1 : 3) * reading);
}
function straight(job: Job): number {
  return job.reading - { excess: excess(job), nothing: 0, sag: job.sag, added: -excess(job) }[job.takes];
}
const tooMuch = (job: Job) => excess(job) > MAY_BE_OFF;
const verdict = (job: Job) => (job.does === 'by limit' ? (tooMuch(job) ? 'again' : 'take') : job.does);
/** A slip that any tape would show as the right answer is none. */
const told = (right: Job, taken: Job): Job | null =>
  [excess, straight].some((of) => Math.abs(of(right) - of(taken)) > TOLD) ? taken : null;

const say = lineOf('working');

export const tapeSag = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn) => {
    const job: Job = {
      drawn,
      reading: inches(drawn.reading),
      sag: inches(drawn.hangs === 'slight' ? drawn.slight : drawn.deep),
      sum: 'whole',
      takes: 'excess',
      does: 'by limit',
    };
    const long = excess(job);
    if (long < LEAST || Math.abs(long - MAY_BE_OFF) < CLEAR) return null;
    return tooMuch(job) === (drawn.hangs === 'deep') ? job : null;
  },
  facts: ({ drawn }) => ({
    reading: lengthFact(drawn.reading),
    sag: lengthFact(drawn.hangs === 'slight' ? drawn.slight : drawn.deep),
    off: numberFact(MAY_BE_OFF),
    rule: wordFact('rule'),
  }),
  asks: {
    excess: {
      kind: 'number',
      answer: excess,
      steps: ({ drawn, sag, reading }) => [
        say('tapeExcess', {
          sag: shortLength(drawn.hangs === 'slight' ? drawn.slight : drawn.deep),
          reading: reading.toFixed(2),
          excess: ((8 * sag * sag) / (3 * reading)).toFixed(3),
        }),
      ],
    },
    straight: {
      kind: 'number',
      answer: straight,
      steps: (job) => [
        say(
          'tapeStraight',
          { reading: job.reading.toFixed(3), excess: excess(job).toFixed(3) },
          straight(job),
          'in',
        ),
      ],
      follows: {
        asks: ['excess'],
        answer: ({ reading }, _, earlier) =>
          typeof earlier['excess'] === 'number' ? reading - earlier['excess'] : null,
      },
    },
    verdict: {
      kind: 'choice',
      answer: verdict,
      // Who measures again although it was good enough harms nobody.
      critical: tooMuch,
      steps: (job) => [say(tooMuch(job) ? 'tapeAgain' : 'tapeTaken')],
    },
  },
  slips: {
    sagIgnored: (job) => (tooMuch(job) ? { ...job, takes: 'nothing', does: 'take' } : null),
    sagTakenOff: (job) => ({ ...job, takes: 'sag', does: 'off' }),
    againAnyway: (job) => (tooMuch(job) ? null : { ...job, does: 'again' }),
    addedOn: (job) => told(job, { ...job, takes: 'added' }),
    notSquared: (job) =>
      Math.abs(excess({ ...job, sum: 'not squared' }) - excess(job)) > TOLD
        ? { ...job, sum: 'not squared' }
        : null,
    notByThree: (job) => told(job, { ...job, sum: 'not by three' }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['tapeExcess', 'tapeStraight', 'tapeAgain', 'tapeTaken']),
});
