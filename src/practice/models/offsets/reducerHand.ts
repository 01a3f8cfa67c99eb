/**
 * Reducers (T08d): which hand keeps a wall in line, and where the channel behind lands with the reducer that came. The hand
 * names, seen from the wide end, the wall that runs straight on.
 */
import { inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, wordFact } from '../parts/told.ts';

const HANDS = ['left', 'right', 'straight'] as const;
type Hand = (typeof HANDS)[number];
const wants = {
  pair: ['6-4', '4-2'],
  goes: ['down', 'up'],
  keeps: ['left', 'right', 'centre'],
  sent: HANDS,
  wall: 'length',
} as const;

interface Job {
  readonly pair: '6-4' | '4-2';
  readonly goes: 'down' | 'up';
  readonly keeps: 'left' | 'right' | 'centre';
  readonly sent: Hand;
  readonly wide: Ticks;
  readonly narrow: Ticks;
  /** From the columns, on the left as the run goes, to the line that is kept. */
  readonly wall: Ticks;
  /** A hand is seen from the wide end; else as the run goes. */
  readonly seen: 'wide end' | 'as it goes';
  readonly says: Hand | null;
  /** How far off it is taken to land: as it does, not at all, half or twice, the other way. */
  readonly lands: 1 | 0 | 0.5 | 2 | -1;
}

const OTHER: Readonly<Record<Hand, Hand>> = { left: 'right', right: 'left', straight: 'straight' };
/** A hand as the run goes, and back: from the narrow end the two are exchanged. */
const turned = ({ goes, seen }: Job, hand: Hand): Hand =>
  goes === 'up' && seen === 'wide end' ? OTHER[hand] : hand;
const needed = (job: Job): Hand => job.says ?? (job.keeps === 'centre' ? 'straight' : turned(job, job.keeps));

/** How far to the right the kept line lands with the reducer that came, in ticks. */
function shift(job: Job): Ticks {
  const flush = turned(job, job.sent);
  const [first, second] = job.goes === 'down' ? [job.wide, job.narrow] : [job.narrow, job.wide];
  // From the first channel's left wall to the second's; the second's kept line lies as far from its own left wall.
  const step = { left: 0, right: first - second, straight: (first - second) / 2 }[flush];
  const across = { left: 0, right: 1, centre: 1 / 2 }[job.keeps];
  return ticks(step + across * (second - first));
}
const landed = (job: Job) => inches(ticks(job.wall + job.lands * shift(job)));
const say = lineOf('offsets');

export const reducerHand = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ pair, goes, keeps, sent, wall }: Drawn<typeof wants>, world) => {
    const { width, narrow } = read(world, `card-${pair}-reducer-${sent}`, 'reducer');
    const job: Job = {
      pair,
      goes,
      keeps,
      sent,
      wide: width,
      narrow,
      wall,
      seen: 'wide end',
      says: null,
      lands: 1,
    };
    return needed(job) === sent ? null : job;
  },
  facts: ({ goes, keeps, sent, wide, narrow, wall }) => ({
    first: lengthFact(goes === 'down' ? wide : narrow),
    second: lengthFact(goes === 'down' ? narrow : wide),
    keeps: wordFact(keeps),
    sent: wordFact(sent),
    wall: lengthFact(wall),
    rule: wordFact('rule'),
  }),
  asks: {
    hand: {
      kind: 'choice',
      answer: needed,
      steps: (job) => [say(job.goes === 'down' ? 'handDown' : 'handUp')],
    },
    lands: {
      kind: 'number',
      answer: landed,
      steps: (job) => [
        say(shift(job) > 0 ? 'landsAway' : 'landsNear', {
          wall: shortLength(job.wall),
          off: shortLength(ticks(Math.abs(shift(job)))),
        }),
      ],
    },
  },
  slips: {
    handAsItGoes: (job) => (job.goes === 'up' ? { ...job, seen: 'as it goes' } : null),
    otherHand: (job) => (job.keeps === 'centre' ? null : { ...job, says: OTHER[needed(job)] }),
    straightTaken: (job) => ({ ...job, says: 'straight' }),
    handedTaken: (job) => (job.keeps === 'centre' ? { ...job, says: 'left' } : null),
    notMoved: (job) => ({ ...job, lands: 0 }),
    halfOfIt: (job) => (Math.abs(shift(job)) === job.wide - job.narrow ? { ...job, lands: 0.5 } : null),
    allOfIt: (job) => (Math.abs(shift(job)) < job.wide - job.narrow ? { ...job, lands: 2 } : null),
    otherWay: (job) => ({ ...job, lands: -1 }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('offsets', ['handDown', 'handUp', 'landsAway', 'landsNear']),
});
