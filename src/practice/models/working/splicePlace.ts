/** Place of a splice (T07, T02): its distance to the nearest support, the quarter point of the span, and whether it may stand there. */
import { inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  kind: ['sleeve', 'plate'],
  span: ['inner', 'inner', 'inner', 'end', 'single'],
  first: 'length',
  length: 'length',
  from: 'length',
} as const;

interface Job {
  readonly drawn: Drawn<typeof wants>;
  /** Length of the splice itself. */
  readonly splice: Ticks;
  /** From the first support of the span to the middle of the splice. */
  readonly at: Ticks;
  readonly share: number;
  readonly measures: 'nearest' | 'first' | 'edge';
  /** A splice in an end span or a single one, or over a support, is let pass. */
  readonly passes: { readonly anySpan: boolean; readonly overSupport: boolean };
  readonly does: 'by rule' | 'middle';
}

const nearest = ({ at, drawn: { length }, measures, splice }: Job): number => {
  if (measures === 'first') return at;
  const middle = Math.min(at, length - at);
  return measures === 'edge' ? middle - splice / 2 : middle;
};
const most = ({ drawn, share }: Job) => drawn.length * share;

/** By its place in the span alone. */
function placed(job: Job): string {
  if (nearest(job) < job.splice / 2 && !job.passes.overSupport) return 'over-support';
  return nearest(job) > most(job) ? 'past' : 'holds';
}
function verdict(job: Job): string {
  if (job.does === 'middle') return nearest(job) > most(job) ? 'holds' : 'past';
  return job.drawn.span !== 'inner' && !job.passes.anySpan ? 'wrong-span' : placed(job);
}

/** How far from a limit a splice must stand, so that the answer does not hang on the tape. */
const CLEAR = ticks(8128 / 2);
const say = lineOf('working');

export const splicePlace = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn, world) => {
    const tray = read(world, drawn.width, 'tray');
    const splice =
      drawn.kind === 'sleeve'
        ? read(world, tray.own.socketed, 'sleeve').length
        : read(world, tray.own.butt, 'plate').length;
    const share = world.tables.limits.spliceShare.value;
    const job: Job = {
      drawn,
      splice,
      at: drawn.from,
      share,
      measures: 'nearest',
      passes: { anySpan: false, overSupport: false },
      does: 'by rule',
    };
    if (drawn.from >= drawn.length) return null;
    const near = [most(job), splice / 2].some((limit) => Math.abs(nearest(job) - limit) < CLEAR);
    // Wrong for its span and for its place too: one ground must do.
    const twice = drawn.span !== 'inner' && placed(job) !== 'holds';
    return near || twice ? null : job;
  },
  facts: ({ drawn, splice }) => ({
    width: wordFact(drawn.width),
    kind: wordFact(drawn.kind),
    span: wordFact(drawn.span),
    left: lengthFact(drawn.first),
    right: lengthFact(ticks(drawn.first + drawn.length)),
    at: lengthFact(ticks(drawn.first + drawn.from)),
    splice: lengthFact(splice),
    rule: wordFact('rule'),
  }),
  asks: {
    nearest: {
      kind: 'number',
      answer: (job) => inches(ticks(Math.round(nearest(job)))),
      steps: (job) => [say('nearestSupport', { length: shortLength(ticks(nearest(job))) })],
    },
    quarter: {
      kind: 'number',
      answer: (job) => most(job) / 8128,
      steps: (job) => [say('quarterOf', { span: shortLength(job.drawn.length) }, most(job) / 8128, 'in')],
    },
    verdict: { kind: 'choice', answer: verdict, steps: () => [] },
  },
  slips: {
    inTheMiddle: (job) => (job.drawn.span === 'inner' ? { ...job, does: 'middle' } : null),
    anySpan: (job) => ({ ...job, passes: { ...job.passes, anySpan: true } }),
    overSupport: (job) => ({ ...job, passes: { ...job.passes, overSupport: true } }),
    third: (job) => ({ ...job, share: 1 / 3 }),
    halfOfIt: (job) => ({ ...job, share: 1 / 2 }),
    fromFirst: (job) => ({ ...job, measures: 'first' }),
    fromEdge: (job) =>
      Math.min(job.at, job.drawn.length - job.at) > job.splice / 2 ? { ...job, measures: 'edge' } : null,
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['nearestSupport', 'quarterOf']),
});
