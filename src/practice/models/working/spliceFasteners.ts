/** Splice fasteners (T07): how many belong in a row of sleeve splices, how many are as they must be, how many are put right. */

import { drawSplice } from '../../../drawing/splice.ts';
import type { Drawing, How } from '../../../drawing/types.ts';
import { placeSplice } from '../../../run/joints.ts';
import type { Drawn, World } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, numberFact, wordFact } from '../parts/told.ts';

const STATES = ['sound', 'large', 'proud', 'empty', 'all', 'other'] as const;
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  lengths: 'whole',
  /** What is not as it must be: nothing, one thing alone, or the first three; `other`: kinds that the sheet does not name. */
  state: STATES,
  large: 'whole',
  proud: 'whole',
  empty: 'whole',
  other: 'whole',
} as const;

interface Job {
  readonly drawn: Drawn<typeof wants>;
  readonly splices: number;
  readonly each: number;
  readonly large: number;
  readonly proud: number;
  readonly empty: number;
  readonly other: number;
  readonly does: 'by count' | 'accept' | 'rework' | 'ask';
}

const wanted = ({ splices, each }: Job) => splices * each;
/** To be put right by whoever works there. */
const again = ({ large, proud, empty }: Job) => large + proud + empty;
const good = (job: Job) => wanted(job) - again(job) - job.other;
/** What the maker names no word of is neither let pass nor taken out before it is asked. */
const verdict = (job: Job) => (again(job) > 0 ? 'rework' : job.other > 0 ? 'ask' : 'accept');

/** One splice as it must be. */
function spliceDrawn(width: string, world: World, how: How): readonly Drawing[] {
  const tray = read(world, width, 'tray');
  const item = read(world, tray.own.socketed, 'sleeve');
  const { length, insertion } = item;
  const insertions = [insertion, insertion] as const;
  const joint = placeSplice('S1', length, { kind: 'socketed', length, insertions }, item.id);
  const fastening = read(world, item.fastened.fastening, 'fastening');
  return joint.kind === 'socketed' ? [drawSplice({ joint, tray, item, fastening }, how)] : [];
}

const say = lineOf('working');

export const spliceFasteners = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn, world) => {
    const sleeve = read(world, read(world, drawn.width, 'tray').own.socketed, 'sleeve');
    const { lengths, state } = drawn;
    const is = (one: 'large' | 'proud' | 'empty') => (state === one || state === 'all' ? drawn[one] : 0);
    const other = state === 'other' ? drawn.other : 0;
    const job: Job = {
      drawn,
      splices: lengths - 1,
      each: sleeve.fastened.count,
      large: is('large'),
      proud: is('proud'),
      empty: is('empty'),
      other,
      does: 'by count',
    };
    return again(job) + other > job.splices ? null : job;
  },
  facts: ({ drawn, each, large, proud, empty, other }, world) => ({
    width: wordFact(drawn.width),
    lengths: numberFact(drawn.lengths),
    each: numberFact(each),
    side: numberFact(each / 2),
    large: numberFact(large),
    proud: numberFact(proud),
    empty: numberFact(empty),
    other: numberFact(other),
    hole: lengthFact(read(world, 'splice-fastener', 'fastening').hole.width),
    rule: wordFact('rule'),
  }),
  asks: {
    wanted: {
      kind: 'number',
      answer: wanted,
      steps: (job) => [
        say('fastenersWanted', { splices: job.splices, each: job.each }, wanted(job), 'count'),
      ],
    },
    good: {
      kind: 'number',
      answer: good,
      steps: (job) => [
        say(
          'fastenersGood',
          { wanted: wanted(job), large: job.large, proud: job.proud, empty: job.empty, other: job.other },
          good(job),
          'count',
        ),
      ],
    },
    verdict: {
      kind: 'choice',
      answer: (job) => (job.does === 'by count' ? verdict(job) : job.does),
      // A line sent back or asked about that is sound harms nobody.
      critical: (job) => verdict(job) !== 'accept',
      steps: () => [],
    },
  },
  slips: {
    spliceALength: (job) => ({ ...job, splices: job.drawn.lengths }),
    oneASide: (job) => ({ ...job, each: job.each / 2 }),
    sidesForgotten: (job) => ({ ...job, each: 2 * job.each }),
    // Where there are none the slip cannot be made, alone or with another.
    largeCounted: (job) => (job.large === 0 ? null : { ...job, large: 0 }),
    proudCounted: (job) => (job.proud === 0 ? null : { ...job, proud: 0 }),
    emptyOverlooked: (job) => (job.empty === 0 ? null : { ...job, empty: 0 }),
    otherCounted: (job) => (job.other === 0 ? null : { ...job, other: 0 }),
    otherTakenOut: (job) => (verdict(job) === 'ask' ? { ...job, does: 'rework' } : null),
    mostAreIn: (job) => (again(job) === 0 ? null : { ...job, does: 'accept' }),
    sentBackSound: (job) => (verdict(job) === 'accept' ? { ...job, does: 'rework' } : null),
    askedAnyway: (job) => (verdict(job) === 'ask' ? null : { ...job, does: 'ask' }),
  },
  figures: ({ drawn }, world, how) => spliceDrawn(drawn.width, world, how),
  figured: ({ drawn, each }, world) => {
    const { width, own } = read(world, drawn.width, 'tray');
    const { insertion } = read(world, own.socketed, 'sleeve');
    return [
      { kind: 'sizes', ticks: [width, insertion, insertion] },
      { kind: 'count', value: each },
    ];
  },
  says: keysOf('working', ['fastenersWanted', 'fastenersGood']),
});
