/** Strut length (T03): the piece of strut under the channel, its clamps on both sides, and what several of them take. */
import { figure } from '../../../trade/figure.ts';
import { KERF } from '../../../trade/habits.ts';
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  trays: ['one', 'two'],
  gap: 'length',
  clamp: 'length',
  edge: 'length',
  count: 'whole',
} as const;

interface Job {
  readonly width: string;
  readonly trays: 1 | 2;
  readonly across: Ticks;
  readonly inside: Ticks;
  readonly outside: Ticks;
  readonly gap: Ticks;
  readonly clamp: Ticks;
  readonly edge: Ticks;
  readonly sides: 1 | 2;
  readonly kerf: Ticks;
  readonly count: number;
  readonly cuts: number;
}
/** Strut as it comes. */
const STOCK = fromInches(120);

const length = ({ trays, across, gap, clamp, edge, sides }: Job): Ticks =>
  ticks(trays * across + (trays - 1) * gap + sides * clamp + 2 * edge);
const all = ({ count, cuts, kerf }: Job, each: Ticks): Ticks => ticks(count * each + cuts * kerf);
const say = lineOf('supporting');

export const strutLength = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ width, trays, gap, clamp, edge, count }: Drawn<typeof wants>, world) => {
    const tray = read(world, width, 'tray');
    const job: Job = {
      width,
      trays: trays === 'one' ? 1 : 2,
      across: tray.outsideWidth,
      inside: tray.width,
      outside: tray.outsideWidth,
      gap,
      clamp,
      edge,
      sides: 2,
      kerf: KERF.length,
      count,
      cuts: count,
    };
    // An 8 stands in the saw's 1/8: an answer is not to be read off there.
    return all(job, length(job)) > STOCK || length(job) === fromInches(8) ? null : job;
  },
  facts: ({ width, trays, inside, outside, gap, clamp, edge, kerf, count }) => ({
    width: wordFact(width),
    trays: wordFact(trays === 1 ? 'one' : 'two'),
    inside: lengthFact(inside),
    outside: lengthFact(outside),
    gap: lengthFact(gap),
    clamp: lengthFact(clamp),
    edge: lengthFact(edge),
    stock: lengthFact(STOCK),
    kerf: lengthFact(kerf),
    count: numberFact(count),
  }),
  asks: {
    strut: {
      kind: 'number',
      answer: (job) => inches(length(job)),
      steps: (job) => [
        job.trays === 1
          ? say('strutOne', { outside: shortLength(job.outside) })
          : say('strutTwo', { outside: shortLength(job.outside), gap: shortLength(job.gap) }),
        say(
          'strutSides',
          { clamp: shortLength(job.clamp), edge: shortLength(job.edge) },
          inches(length(job)),
          'in',
        ),
      ],
    },
    all: {
      kind: 'number',
      answer: (job) => inches(all(job, length(job))),
      steps: (job) => [
        say(
          'strutAll',
          { count: job.count, strut: figure(inches(length(job))), kerf: shortLength(job.kerf) },
          inches(all(job, length(job))),
          'in',
        ),
      ],
      follows: {
        asks: ['strut'],
        answer: (job, _, earlier) => {
          const each = earlier['strut'] as number;
          return each > 0 && each <= 120 ? inches(all(job, fromInches(each))) : null;
        },
      },
    },
  },
  slips: {
    insideWidth: (job) => ({ ...job, across: job.inside }),
    oneClamp: (job) => ({ ...job, sides: 1 }),
    noClamps: (job) => ({ ...job, clamp: ticks(0) }),
    edgesForgotten: (job) => ({ ...job, edge: ticks(0) }),
    gapForgotten: (job) => (job.trays === 2 ? { ...job, gap: ticks(0) } : null),
    oneTray: (job) => (job.trays === 2 ? { ...job, trays: 1 } : null),
    noKerf: (job) => ({ ...job, cuts: 0 }),
    oneKerf: (job) => ({ ...job, cuts: 1 }),
    oneFewer: (job) => ({ ...job, count: job.count - 1, cuts: job.cuts - 1 }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', ['strutOne', 'strutTwo', 'strutSides', 'strutAll']),
});
