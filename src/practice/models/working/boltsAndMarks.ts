/** Bolts and marks (T07): plate splices in a row, how many bolts are in, how many of those have no torque mark, and whether they pass. */
import type { Drawn } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  lengths: 'whole',
  /** Splices with half of their bolts. */
  half: 'whole',
  unmarked: 'whole',
} as const;

interface Job {
  readonly drawn: Drawn<typeof wants>;
  readonly splices: number;
  readonly each: number;
  readonly half: number;
  readonly marks: number;
  readonly takes: 'bolts' | 'marks';
  readonly asks: { readonly bolts: boolean; readonly marks: boolean };
}

const wanted = ({ splices, each }: Job) => splices * each;
const bolts = (job: Job) => wanted(job) - (job.half * job.each) / 2;
const open = (job: Job) => bolts(job) - job.marks;

function verdict(job: Job): string {
  const missing = job.asks.bolts && bolts(job) < wanted(job);
  const unmarked = job.asks.marks && job.marks < bolts(job);
  return missing && unmarked ? 'both' : missing ? 'bolts' : unmarked ? 'marks' : 'holds';
}
const say = lineOf('working');

export const boltsAndMarks = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn, world) => {
    const plate = read(world, read(world, drawn.width, 'tray').own.butt, 'plate');
    const job: Job = {
      drawn,
      splices: drawn.lengths - 1,
      each: plate.fastened.count,
      half: drawn.half,
      marks: 0,
      takes: 'bolts',
      asks: { bolts: true, marks: true },
    };
    return drawn.half > job.splices / 2 ? null : { ...job, marks: bolts(job) - drawn.unmarked };
  },
  facts: ({ drawn, splices, each, half, marks }) => ({
    width: wordFact(drawn.width),
    lengths: numberFact(drawn.lengths),
    each: numberFact(each),
    full: numberFact(splices - half),
    half: numberFact(half),
    halfCount: numberFact(each / 2),
    marks: numberFact(marks),
    rule: wordFact('rule'),
  }),
  asks: {
    bolts: {
      kind: 'number',
      answer: (job) => (job.takes === 'marks' ? job.marks : bolts(job)),
      steps: (job) => [
        say(
          'boltsIn',
          { full: job.splices - job.half, each: job.each, half: job.half, two: job.each / 2 },
          bolts(job),
          'count',
        ),
      ],
    },
    unmarked: {
      kind: 'number',
      answer: open,
      steps: (job) => [say('boltsUnmarked', { bolts: bolts(job), marks: job.marks }, open(job), 'count')],
      follows: {
        asks: ['bolts'],
        answer: (job, _, earlier) => Math.max(0, (earlier['bolts'] as number) - job.marks),
      },
    },
    verdict: { kind: 'choice', answer: verdict, steps: () => [] },
  },
  slips: {
    twoOfFour: (job) => (job.half === 0 ? null : { ...job, asks: { ...job.asks, bolts: false } }),
    marksOverlooked: (job) => ({ ...job, asks: { ...job.asks, marks: false } }),
    halfOverlooked: (job) => ({ ...job, half: 0 }),
    spliceALength: (job) => ({ ...job, splices: job.drawn.lengths }),
    marksCounted: (job) => ({ ...job, takes: 'marks' }),
    halfAsOne: (job) => ({ ...job, half: job.half / 2 }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['boltsIn', 'boltsUnmarked']),
});
