/**
 * Plumb drop (T04): a vertical run beside a plumb line, on both faces. It is to stand plumb within 1/8 in on any 4 ft and
 * within 1/4 in on 10 ft (common practice, no source).
 */
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, rowsFact } from '../parts/told.ts';

const wants = {
  front: 'length',
  side: 'length',
  /** Against the first reading, in sixteenths: 4 ft and 6 ft below it, then at the foot. */
  places: { rows: { front: 'whole', side: 'whole' } },
  frontEnd: 'whole',
  sideEnd: 'whole',
} as const;

/** Heights below the top at which it is measured, in feet: stretches of 4 ft, and the whole 10. */
const HEIGHTS = [0, 4, 6, 10] as const;
const FOURS = [
  [0, 1],
  [2, 3],
] as const;
const [ON_FOUR, ON_TEN] = [fromInches(1 / 8), fromInches(1 / 4)];
const SIXTEENTH = fromInches(1 / 16);
type Face = 'front' | 'side';

interface Job {
  readonly front: readonly Ticks[];
  readonly side: readonly Ticks[];
  readonly looksAt: readonly Face[];
  readonly fours: boolean;
  readonly ten: Ticks;
  readonly lean: 'whole' | 'first four' | 'added';
}
const between = (readings: readonly Ticks[], a: number, b: number) =>
  Math.abs((readings[b] ?? 0) - (readings[a] ?? 0));
function lean(job: Job, face: Face): number {
  const readings = job[face];
  if (job.lean === 'first four') return inches(ticks(between(readings, 0, 1)));
  if (job.lean === 'added')
    return inches(ticks(FOURS.reduce((sum, [a, b]) => sum + between(readings, a, b), 0)));
  return inches(ticks(between(readings, 0, 3)));
}
function stands(job: Job): string {
  const out = (face: Face) =>
    job.looksAt.includes(face) &&
    (between(job[face], 0, 3) > job.ten ||
      (job.fours && FOURS.some(([a, b]) => between(job[face], a, b) > ON_FOUR)));
  if (out('front')) return out('side') ? 'both' : 'front';
  return out('side') ? 'side' : 'yes';
}
const say = lineOf('supporting');

export const plumbDrop = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ front, side, places, frontEnd, sideEnd }: Drawn<typeof wants>) => {
    const readings = (base: Ticks, face: Face, end: number) => [
      base,
      ...[...places.map((place) => place[face]), end].map((n) => ticks(base + n * SIXTEENTH)),
    ];
    return {
      front: readings(front, 'front', frontEnd),
      side: readings(side, 'side', sideEnd),
      looksAt: ['front', 'side'],
      fours: true,
      ten: ON_TEN,
      lean: 'whole',
    };
  },
  facts: ({ front, side }) => ({
    places: rowsFact(
      HEIGHTS.map((height, i) => ({
        height: numberFact(height),
        front: lengthFact(front[i] as Ticks),
        side: lengthFact(side[i] as Ticks),
      })),
    ),
    onFour: lengthFact(ON_FOUR),
    onTen: lengthFact(ON_TEN),
  }),
  asks: {
    front: { kind: 'number', answer: (job) => lean(job, 'front'), steps: (job) => leanSteps(job, 'front') },
    side: { kind: 'number', answer: (job) => lean(job, 'side'), steps: (job) => leanSteps(job, 'side') },
    stands: { kind: 'choice', answer: stands, steps: (job) => [say(`plumb-${stands(job)}`)] },
  },
  slips: {
    frontOnly: (job) => ({ ...job, looksAt: ['front'] }),
    tenOnly: (job) => ({ ...job, fours: false }),
    /** 1/8 on 4 ft carried on to 10 ft. */
    carriedOn: (job) => ({ ...job, ten: ticks((ON_FOUR * 10) / 4) }),
    firstFour: (job) => ({ ...job, lean: 'first four' }),
    foursAdded: (job) => ({ ...job, lean: 'added' }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', ['onTen', 'onFour', 'plumb-yes', 'plumb-front', 'plumb-side', 'plumb-both']),
});

function leanSteps(job: Job, face: Face) {
  const readings = job[face];
  const apart = (a: number, b: number) => shortLength(ticks(between(readings, a, b)));
  return [
    say('onTen', {
      top: shortLength(readings[0] as Ticks),
      bottom: shortLength(readings[3] as Ticks),
      lean: apart(0, 3),
    }),
    ...FOURS.map(([a, b]) => say('onFour', { from: HEIGHTS[a], to: HEIGHTS[b], lean: apart(a, b) })),
  ];
}
