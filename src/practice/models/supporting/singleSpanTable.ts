/**
 * Single-span table (T02): which use of a load table overloads the channel, and which only keeps a reserve. The gain of
 * several spans is there in inner spans without a splice, and nowhere else; a figure for one span alone holds anywhere.
 */
import { figure } from '../../../trade/figure.ts';
import type { Drawn } from '../../model.ts';
import { SEVERAL_SPANS } from '../parts/loadTable.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  figure: ['alone', 'several'],
  place: ['single', 'end', 'inner', 'splice'],
  span: ['4', '5', '6', '8', '10'],
  above: 'decimal',
  below: 'decimal',
} as const;

type Use = 'overloads' | 'reserve' | 'as-listed';
interface Job {
  readonly width: string;
  readonly figure: 'alone' | 'several';
  readonly place: 'single' | 'end' | 'inner' | 'splice';
  readonly spanFt: number;
  readonly alone: number;
  readonly load: number;
  /** The figure that the load is held against, and whether the two are exchanged. */
  readonly against: 'alone' | 'several';
  readonly inverted: boolean;
  readonly thought: Use | null;
}

function useOf({ figure: used, place, thought }: Job): Use {
  if (thought !== null) return thought;
  if (used === 'several') return place === 'inner' ? 'as-listed' : 'overloads';
  return place === 'single' ? 'as-listed' : 'reserve';
}
const WHY: Readonly<Record<Use, string>> = {
  overloads: 'no-gain',
  reserve: 'bends-less',
  'as-listed': 'meant-for-it',
};
function percent({ load, alone, against, inverted }: Job): number {
  const listed = alone * (against === 'several' ? SEVERAL_SPANS : 1);
  return inverted ? (listed / load) * 100 : (load / listed) * 100;
}
const thinks = (right: Use, thought: Use) => (job: Job) =>
  useOf(job) === right ? { ...job, thought } : null;
const say = lineOf('supporting');

export const singleSpanTable = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ width, figure: used, place, span, above, below }: Drawn<typeof wants>, world) => {
    const row = read(world, width, 'tray').loadTable.find(({ spanFt }) => spanFt === Number(span));
    // What one span alone carries says nothing of a splice.
    if (row === undefined || (used === 'alone' && place === 'splice')) return null;
    return {
      width,
      figure: used,
      place,
      spanFt: row.spanFt,
      alone: row.lbPerFt,
      load: Math.round(row.lbPerFt * (used === 'several' ? above : below) * 100) / 100,
      against: 'alone',
      inverted: false,
      thought: null,
    };
  },
  facts: ({ width, figure: used, place, spanFt, alone, load }) => ({
    width: wordFact(width),
    figure: wordFact(used),
    place: wordFact(place),
    span: numberFact(spanFt),
    alone: numberFact(alone, 1),
    several: numberFact(Number((alone * SEVERAL_SPANS).toFixed(2)), 2),
    load: numberFact(load, 2),
  }),
  asks: {
    percent: {
      kind: 'number',
      answer: (job) => percent(job),
      steps: (job) => [
        say('share', { load: figure(job.load), alone: figure(job.alone) }, percent(job), 'percent'),
      ],
    },
    use: { kind: 'choice', answer: (job) => useOf(job), steps: (job) => [say(`use-${useOf(job)}`)] },
    why: { kind: 'choice', answer: (job) => WHY[useOf(job)], steps: () => [] },
  },
  slips: {
    gainBelieved: thinks('overloads', 'as-listed'),
    gainCalledReserve: thinks('overloads', 'reserve'),
    reserveFeared: thinks('reserve', 'overloads'),
    reserveUnseen: thinks('reserve', 'as-listed'),
    listedFeared: thinks('as-listed', 'overloads'),
    listedAsReserve: thinks('as-listed', 'reserve'),
    ofSeveral: (job) => ({ ...job, against: 'several' }),
    inverted: (job) => ({ ...job, inverted: true }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('supporting', ['share', 'use-overloads', 'use-reserve', 'use-as-listed']),
});
