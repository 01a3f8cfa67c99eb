/**
 * String and level (T03): five supports under a string. Each is to stand within 1/8 in of it, and no two within 20 ft more
 * than 1/4 in apart in height (common practice, no source); the string itself may hang out of true.
 */
import { figure } from '../../../trade/figure.ts';
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, rowsFact, wordFact } from '../parts/told.ts';

const wants = {
  wanted: 'length',
  supports: { rows: { off: 'whole' } },
  wild: 'whole',
  wildOff: 'whole',
  wildWay: ['high', 'low'],
  string: ['flat', 'eighth', 'quarter'],
} as const;

interface Job {
  readonly wanted: Ticks;
  /** From string to support; larger is lower. */
  readonly readings: readonly Ticks[];
  /** By how much the string falls from the first to the last support. */
  readonly fall: Ticks;
  readonly falls: number;
  readonly larger: 'lower' | 'higher';
  readonly each: Ticks;
  readonly over: 'all' | 'ends';
  readonly takes: boolean;
}
const SIXTEENTH = fromInches(1 / 16);
const [EACH, ALL] = [fromInches(1 / 8), fromInches(1 / 4)];
const FALLS = { flat: 0, eighth: 1 / 8, quarter: 1 / 4 } as const;

const offs = ({ wanted, readings, larger }: Job) =>
  readings.map((r) => (larger === 'lower' ? wanted - r : r - wanted));
/** The support that stands farthest from the string, where it stands too far. */
function off(job: Job): string {
  const all = offs(job).map(Math.abs);
  const most = Math.max(...all);
  return most > job.each ? `s${all.indexOf(most) + 1}` : 'none';
}
function spread(job: Job): number {
  const heights = offs(job).map((d, i) => d - (job.falls * i) / (job.readings.length - 1));
  const seen = job.over === 'all' ? heights : [heights[0] ?? 0, heights.at(-1) ?? 0];
  return (Math.max(...seen) - Math.min(...seen)) / fromInches(1);
}
function next(job: Job, found = off(job), apart = spread(job)): string {
  if (found !== 'none' && !job.takes) return 'reset';
  return apart > inches(ALL) + 1e-9 && !job.takes ? 'string' : 'accept';
}
const say = lineOf('supporting');

export const stringAndLevel = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ wanted, supports, wild, wildOff, wildWay, string }: Drawn<typeof wants>) => {
    const sixteenths = supports.map(({ off: n }, i) =>
      i + 1 === wild ? (wildWay === 'high' ? wildOff : -wildOff) : n,
    );
    const fall = fromInches(FALLS[string]);
    return {
      wanted,
      readings: sixteenths.map((n) => ticks(wanted - n * SIXTEENTH)),
      fall,
      falls: fall,
      larger: 'lower',
      each: EACH,
      over: 'all',
      takes: false,
    };
  },
  facts: ({ wanted, readings, fall }) => ({
    wanted: lengthFact(wanted),
    fall: lengthFact(fall),
    string: wordFact(fall === 0 ? 'flat' : 'falls'),
    supports: rowsFact(readings.map((reading) => ({ reading: lengthFact(reading) }))),
    each: lengthFact(EACH),
    all: lengthFact(ALL),
  }),
  asks: {
    off: { kind: 'choice', answer: (job) => off(job), steps: (job) => [offStep(job)] },
    spread: {
      kind: 'number',
      answer: (job) => spread(job),
      steps: (job) => [
        job.fall === 0 ? say('flatString') : say('fallingString', { part: shortLength(ticks(job.fall / 4)) }),
        say('spread', { spread: shortLength(fromInches(spread(job))) }),
      ],
    },
    next: {
      kind: 'choice',
      answer: (job) => next(job),
      steps: (job) => [say(`next-${next(job)}`)],
      follows: {
        asks: ['off', 'spread'],
        answer: (job, _, earlier) => next(job, earlier['off'] as string, earlier['spread'] as number),
      },
    },
  },
  slips: {
    taken: (job) => ({ ...job, takes: true }),
    quarterEach: (job) => ({ ...job, each: ALL }),
    sixteenthEach: (job) => ({ ...job, each: SIXTEENTH }),
    fallIgnored: (job) => ({ ...job, falls: 0 }),
    fallTurned: (job) => ({ ...job, falls: -job.fall }),
    endsOnly: (job) => ({ ...job, over: 'ends' }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', [
    'offNone',
    'offOne',
    'flatString',
    'fallingString',
    'spread',
    'next-reset',
    'next-string',
    'next-accept',
  ]),
});

function offStep(job: Job) {
  const found = off(job);
  if (found === 'none') return say('offNone');
  const by = Math.max(...offs(job).map(Math.abs));
  return say('offOne', { support: found.slice(1), by: figure(inches(ticks(by))) });
}
