/**
 * Rod load (T02): what one rod of a trapeze carries. Half of each neighbouring span hangs on an inner strut, the run taken
 * span by span. At the last one the overhang prises about it and lifts the support before: of a load w a foot, a span L and
 * an overhang a, w (L + a)² / 2L hang there (statics: moments about the support before). The strut's own weight comes to
 * it; two rods share it.
 */
import { figure } from '../../../trade/figure.ts';
import { inches, type Ticks } from '../../../trade/length.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, wordFact } from '../parts/told.ts';

const wants = {
  where: ['inside', 'end'],
  before: 'length',
  behind: 'length',
  overhang: 'length',
  load: 'decimal',
  strut: 'decimal',
} as const;

interface Job {
  readonly where: 'inside' | 'end';
  readonly before: Ticks;
  /** The span behind, or what overhangs at the end. */
  readonly behind: Ticks;
  readonly load: number;
  readonly strut: number;
  readonly rods: number;
  /** Of the span before and of what lies behind, how much hangs here. */
  readonly shares: readonly [number, number];
  /** Whether the overhang is seen to lift the support before. */
  readonly prises: boolean;
}

const feet = (length: Ticks) => inches(length) / 12;
const hangs = ({ before, behind, shares, prises }: Job) =>
  shares[0] * feet(before) + shares[1] * feet(behind) + (prises ? feet(behind) ** 2 / (2 * feet(before)) : 0);
const rod = (job: Job) => (hangs(job) * job.load + job.strut) / job.rods;
/** In lb: more than twice what an answer may be out. */
const TOLD_APART = 0.25;
const say = lineOf('supporting');

export const rodLoad = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ where, before, behind, overhang, load, strut }: Drawn<typeof wants>) => ({
    where,
    before,
    behind: where === 'inside' ? behind : overhang,
    load,
    strut,
    rods: 2,
    shares: where === 'inside' ? [1 / 2, 1 / 2] : [1 / 2, 1],
    prises: where === 'end',
  }),
  facts: ({ where, before, behind, load, strut }) => ({
    where: wordFact(where),
    before: lengthFact(before),
    behind: lengthFact(behind),
    load: numberFact(load, 2),
    strut: numberFact(strut, 1),
  }),
  asks: {
    rod: {
      kind: 'number',
      answer: (job) => rod(job),
      steps: (job) => [
        say(
          job.where === 'inside' ? 'hangsInside' : 'hangsEnd',
          {
            before: figure(feet(job.before)),
            behind: figure(feet(job.behind)),
            all: figure(feet(job.before) + feet(job.behind)),
          },
          hangs(job),
          'ft',
        ),
        say(
          'onStrut',
          { feet: figure(hangs(job)), load: figure(job.load), strut: figure(job.strut) },
          hangs(job) * job.load + job.strut,
          'lb',
        ),
        say('perRod', {}, rod(job), 'lb'),
      ],
    },
  },
  slips: {
    rodsForgotten: (job) => ({ ...job, rods: 1 }),
    oneSide: (job) => ({ ...job, shares: [job.shares[0], 0], prises: false }),
    wholeSpans: (job) => ({ ...job, shares: [1, 1], prises: false }),
    strutLeftOut: (job) => ({ ...job, strut: 0 }),
    asInside: (job) =>
      job.where === 'end' ? { ...job, behind: job.before, shares: [1 / 2, 1 / 2], prises: false } : null,
    /** Half the span and the overhang, as if the one did not act on the other; a short one is not told apart. */
    notPrised: (job) => {
      const other = { ...job, prises: false };
      return rod(job) - rod(other) > TOLD_APART ? other : null;
    },
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', ['hangsInside', 'hangsEnd', 'onStrut', 'perRod']),
});
