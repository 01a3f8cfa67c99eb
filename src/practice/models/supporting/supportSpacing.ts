/**
 * Support spacing (T02): how many supports a straight takes, how far apart, and where one of them stands. Count and
 * spacing are one answer: a forgotten support and a span too many give the same count.
 */
import { figure } from '../../../trade/figure.ts';
import { inches, type Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact } from '../parts/told.ts';

const wants = { length: 'length', most: ['4', '5', '6', '8'], end: 'length', asked: 'whole' } as const;

interface Job {
  readonly length: Ticks;
  readonly most: number;
  readonly end: Ticks;
  /** Ends at which the first and last support stand in. */
  readonly ends: 0 | 1 | 2;
  readonly spans: 'up' | 'down';
  readonly more: 0 | 1;
  readonly spaced: 'even' | 'most';
  /** The support whose place is asked, counted from 1, and how many spacings lie before it. */
  readonly asked: number;
  readonly before: number;
  readonly fromEnd: boolean;
}

const between = ({ length, end, ends }: Job) => inches(length) - ends * inches(end);
function spansOf(job: Job): number {
  const exact = between(job) / (job.most * 12);
  return job.spans === 'up' ? Math.ceil(exact - 1e-9) : Math.floor(exact + 1e-9);
}
const count = (job: Job) => spansOf(job) + job.more;
const spacing = (job: Job) => (job.spaced === 'most' ? job.most * 12 : between(job) / spansOf(job));
const place = (job: Job, apart = spacing(job)) => (job.fromEnd ? inches(job.end) : 0) + job.before * apart;

const say = lineOf('supporting');
const SAYS = ['between', 'spans', 'count', 'spacing', 'place'];

export const supportSpacing = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ length, most, end, asked }: Drawn<typeof wants>) => {
    const job: Job = {
      length,
      most: Number(most),
      end,
      ends: 2,
      spans: 'up',
      more: 1,
      spaced: 'even',
      asked,
      before: asked - 1,
      fromEnd: true,
    };
    return count(job) > asked ? job : null;
  },
  facts: ({ length, most, end, asked }) => ({
    length: lengthFact(length),
    most: numberFact(most),
    end: lengthFact(end),
    asked: numberFact(asked),
  }),
  asks: {
    layout: {
      kind: 'job',
      answer: (job) => ({ count: count(job), spacing: spacing(job) }),
      steps: (job) => [
        say('between', { length: figure(inches(job.length)), end: shortLength(job.end) }, between(job), 'in'),
        say('spans', { between: figure(between(job)), most: job.most * 12, spans: spansOf(job) }),
        say('count', { spans: spansOf(job), count: count(job) }),
        say('spacing', { between: figure(between(job)), spans: spansOf(job) }, spacing(job), 'in'),
      ],
    },
    place: {
      kind: 'number',
      answer: (job) => place(job),
      steps: (job) => [
        say(
          'place',
          { end: shortLength(job.end), before: job.before, spacing: figure(spacing(job)) },
          place(job),
          'in',
        ),
      ],
      follows: {
        asks: ['layout'],
        answer: (job, _, { layout }) => {
          const apart = (layout as Readonly<Record<string, number>>)['spacing'];
          return apart === undefined || apart <= 0 ? null : place(job, apart);
        },
      },
    },
  },
  slips: {
    roundedDown: (job) => ({ ...job, spans: 'down' }),
    mostTaken: (job) => ({ ...job, spaced: 'most' }),
    oneForgotten: (job) => ({ ...job, more: 0 }),
    endsIgnored: (job) => ({ ...job, ends: 0 }),
    oneEndIgnored: (job) => ({ ...job, ends: 1 }),
    oneTooFar: (job) => ({ ...job, before: job.asked }),
    fromTheStart: (job) => ({ ...job, fromEnd: false }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', SAYS),
});
