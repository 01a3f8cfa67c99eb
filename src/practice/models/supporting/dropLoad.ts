/** Drop load (T04): what the one load-bearing support of a vertical run carries, and whether it may be put on it. */
import { figure } from '../../../trade/figure.ts';
import { inches, type Ticks } from '../../../trade/length.ts';
import { vertical } from '../../../trade/vertical.ts';
import type { Drawn } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, tradeSteps, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  drop: 'length',
  cables: 'decimal',
  brackets: 'whole',
  sheet: ['rated', 'silent'],
  rated: 'whole',
} as const;

interface Job {
  readonly width: string;
  readonly drop: Ticks;
  readonly feet: number;
  readonly cables: number;
  readonly tray: number;
  readonly brackets: number;
  readonly sharedBy: number;
  /** What the bracket's sheet allows; null: it says nothing. */
  readonly rated: number | null;
  /** What someone takes it to allow where the sheet says nothing. */
  readonly guessed: boolean;
  readonly asks: boolean;
}

const given = ({ feet, cables, tray, sharedBy }: Job) => ({
  dropFt: feet,
  lbPerFt: cables + tray,
  loadSupports: sharedBy,
});
const load = (job: Job) => vertical(given(job)).result.lb;
function mayOf(job: Job, lb = load(job)): string {
  if (job.asks) return 'ask';
  if (job.rated === null) return job.guessed ? 'yes' : 'ask';
  return lb <= job.rated ? 'yes' : 'no';
}
/** How far apart, in lb, the load and what is allowed must lie: the answer is not to hang on a digit. */
const CLEAR = 2;
const say = lineOf('supporting');

/** Feet and inches written with a point between them: 9'-4" as 9.4. */
function asTenths({ drop }: Job): number {
  const inch = inches(drop);
  return Number(`${Math.floor(inch / 12)}.${inch % 12}`);
}

export const dropLoad = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ width, drop, cables, brackets, sheet, rated }: Drawn<typeof wants>, world) => {
    const job: Job = {
      width,
      drop,
      feet: inches(drop) / 12,
      cables,
      tray: read(world, width, 'tray').weightLbPerFt,
      brackets,
      sharedBy: 1,
      rated: sheet === 'silent' ? null : rated,
      guessed: false,
      asks: false,
    };
    return job.rated !== null && Math.abs(job.rated - load(job)) < CLEAR ? null : job;
  },
  facts: ({ width, drop, cables, tray, brackets, rated }) => ({
    width: wordFact(width),
    drop: lengthFact(drop),
    cables: numberFact(cables, 2),
    tray: numberFact(tray),
    brackets: numberFact(brackets),
    guides: numberFact(brackets - 1),
    sheet: wordFact(rated === null ? 'silent' : 'rated'),
    rated: numberFact(rated ?? 0),
  }),
  asks: {
    load: {
      kind: 'number',
      answer: (job) => load(job),
      steps: (job) => [
        say(
          'total',
          { cables: figure(job.cables), tray: figure(job.tray) },
          job.cables + job.tray,
          'lbPerFt',
        ),
        ...tradeSteps(vertical(given(job)).steps.slice(0, 1)),
        say('oneBears', { guides: job.brackets - 1 }),
      ],
    },
    may: {
      kind: 'choice',
      answer: (job) => mayOf(job),
      steps: (job) =>
        job.rated === null
          ? [say('noRating')]
          : [
              say(load(job) <= job.rated ? 'withinRating' : 'overRating', {
                load: figure(load(job), 1),
                rated: job.rated,
              }),
            ],
      follows: {
        asks: ['load'],
        answer: (job, _, earlier) => mayOf(job, earlier['load'] as number),
      },
    },
  },
  slips: {
    guessed: (job) => (job.rated === null ? { ...job, guessed: true } : null),
    overTaken: (job) =>
      job.rated !== null && load(job) > job.rated ? { ...job, rated: Number.POSITIVE_INFINITY } : null,
    withinRefused: (job) => (job.rated !== null && load(job) <= job.rated ? { ...job, rated: 0 } : null),
    askedAnyway: (job) => (job.rated === null ? null : { ...job, asks: true }),
    shared: (job) => ({ ...job, sharedBy: job.brackets }),
    trayOnly: (job) => ({ ...job, cables: 0 }),
    cablesOnly: (job) => ({ ...job, tray: 0 }),
    /** Few inches are nearly the same as tenths. */
    inchesAsTenths: (job) =>
      Math.abs(asTenths(job) - job.feet) < 0.05 ? null : { ...job, feet: asTenths(job) },
  },
  figures: () => [],
  figured: () => [],
  says: [
    ...keysOf('supporting', ['total', 'oneBears', 'noRating', 'withinRating', 'overRating']),
    'vertical.whole',
  ],
});
