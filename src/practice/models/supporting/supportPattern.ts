/**
 * Support pattern (T02): where splices fall in an even row of supports. A splice holds between a support and the quarter
 * point of its span, not beyond it, and not right over a support.
 */
import { figure } from '../../../trade/figure.ts';
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, wordFact } from '../parts/told.ts';

const wants = {
  spacing: 'length',
  piece: 'length',
  aim: ['over', 'after', 'before', 'any'],
  near: 'length',
  anywhere: 'length',
} as const;

interface Job {
  readonly spacing: Ticks;
  /** First piece; whole lengths follow. */
  readonly piece: Ticks;
  readonly stock: Ticks;
  readonly start: Ticks;
  readonly splices: readonly [Ticks, Ticks];
  readonly share: number;
  readonly measured: 'nearest' | 'before';
  readonly allows: readonly ('over' | 'far')[];
  readonly refuses: boolean;
}
type Where = 'yes' | 'far' | 'over';

const modulo = (n: number, by: number) => ((n % by) + by) % by;
/** From a splice to the support it is measured from, in inches. */
function off({ spacing, start, measured }: Job, splice: Ticks): number {
  const behind = modulo(splice - start, spacing);
  return inches(ticks(measured === 'before' ? behind : Math.min(behind, spacing - behind)));
}
/** A support that is nearer than this stands under the splice. */
const UNDER = 6;
function holds(job: Job, [first, second]: readonly [number, number]): Where {
  if (job.refuses) return 'far';
  const limit = inches(job.spacing) * job.share;
  const found = [first, second].map((d): Where => (d < 1 ? 'over' : d > limit ? 'far' : 'yes'));
  const left = found.filter((one) => one === 'yes' || !job.allows.includes(one));
  return left.find((one) => one !== 'yes') ?? 'yes';
}
const offs = (job: Job) => [off(job, job.splices[0]), off(job, job.splices[1])] as const;
/** Loose from limits, so that the answer does not hang on a mark's width. */
function clear(job: Job): boolean {
  const quarter = inches(job.spacing) * job.share;
  const both = offs(job);
  const odd = both.some((d) => (d > 0 && d < UNDER) || Math.abs(d - quarter) < 1);
  return !odd && !(both.some((d) => d === 0) && both.some((d) => d > quarter));
}

const say = lineOf('supporting');

export const supportPattern = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ spacing, piece, aim, near, anywhere }: Drawn<typeof wants>, world) => {
    const behind = { over: 0, after: near, before: -near, any: anywhere }[aim];
    const start = ticks(modulo(piece - behind, spacing));
    const stock = fromInches(240);
    const job: Job = {
      spacing,
      piece,
      stock,
      start,
      splices: [piece, ticks(piece + stock)],
      share: world.tables.limits.spliceShare.value,
      measured: 'nearest',
      allows: [],
      refuses: false,
    };
    return clear(job) ? job : null;
  },
  facts: ({ spacing, piece, stock, start }) => ({
    spacing: lengthFact(spacing),
    piece: lengthFact(piece),
    stock: lengthFact(stock),
    start: lengthFact(start),
    rule: wordFact('rule'),
  }),
  asks: {
    first: {
      kind: 'number',
      answer: (job) => off(job, job.splices[0]),
      steps: (job) => spliceSteps(job, 0),
    },
    second: {
      kind: 'number',
      answer: (job) => off(job, job.splices[1]),
      steps: (job) => spliceSteps(job, 1),
    },
    holds: {
      kind: 'choice',
      answer: (job) => holds(job, offs(job)),
      steps: (job) => [
        say('quarter', { spacing: shortLength(job.spacing) }, inches(job.spacing) * job.share, 'in'),
      ],
      follows: {
        asks: ['first', 'second'],
        answer: (job, _, earlier) => holds(job, [earlier['first'] as number, earlier['second'] as number]),
      },
    },
  },
  slips: {
    third: (job) => ({ ...job, share: 1 / 3 }),
    anywhereTaken: (job) => ({ ...job, allows: ['far'] }),
    overTaken: (job) => ({ ...job, allows: ['over'] }),
    refused: (job) => (holds(job, offs(job)) === 'yes' ? { ...job, refuses: true } : null),
    startIgnored: (job) => ({ ...job, start: ticks(0) }),
    wholeFirst: (job) => ({ ...job, splices: [job.stock, ticks(2 * job.stock)] }),
    fromBefore: (job) => ({ ...job, measured: 'before' }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', ['splice', 'quarter']),
});

function spliceSteps(job: Job, i: 0 | 1) {
  const at = job.splices[i];
  const past = modulo(at - job.start, job.spacing);
  return [
    say(
      'splice',
      {
        at: figure(inches(at)),
        start: figure(inches(job.start)),
        past: figure(inches(ticks(past))),
        spacing: figure(inches(job.spacing)),
      },
      off(job, at),
      'in',
    ),
  ];
}
