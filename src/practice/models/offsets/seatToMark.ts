/**
 * Seated to the mark (T08): how far each leg has gone into an elbow, from a second mark that stays in sight, and whether it
 * may be fastened so.
 */
import { inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Drawn } from '../../model.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lengthFact, lineOf, wordFact } from '../parts/told.ts';

/** Sixteenths of a leg that is off. */
const OFF = [-4, -3, -2, 2, 3, 4];
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  turn: ['elbow', 'inside', 'outside'],
  beyond: 'length',
  /** Which leg is off its mark. */
  off: ['none', 'first', 'second', 'both'],
  /** How far an end that is seated has gone beyond its mark, in sixteenths. */
  firstSeated: 'whole',
  secondSeated: 'whole',
  /** The same where it is off: which of `OFF`, from 0. */
  firstOff: 'whole',
  secondOff: 'whole',
} as const;

interface Job {
  readonly width: string;
  readonly turn: string;
  readonly wanted: Ticks;
  /** From the channel's end to the mark that stays in sight. */
  readonly mark: Ticks;
  /** From the elbow's face to that mark, as the tape shows it. */
  readonly seen: readonly [Ticks, Ticks];
  readonly reads: 'less' | 'tape' | 'mark' | 'added';
  /** How far off an end may be, deeper and shallower. */
  readonly deep: number;
  readonly shallow: number;
  readonly looksAt: 'both' | 'first';
}
const SIXTEENTH = ticks(8128 / 16);
const ANY = Number.POSITIVE_INFINITY;

function goesIn({ mark, seen, reads }: Job, i: 0 | 1): Ticks {
  const shown = seen[i];
  if (reads === 'tape') return shown;
  if (reads === 'mark') return mark;
  return ticks(reads === 'added' ? mark + shown : mark - shown);
}
function verdict(job: Job, [first, second]: readonly [number, number]): string {
  const out = (depth: number) => {
    const off = depth - inches(job.wanted);
    return off > job.deep + 1e-9 || -off > job.shallow + 1e-9;
  };
  const [a, b] = [out(first), job.looksAt === 'both' && out(second)];
  return a ? (b ? 'both' : 'first') : b ? 'second' : 'accept';
}
const depths = (job: Job) => [inches(goesIn(job, 0)), inches(goesIn(job, 1))] as const;
const say = lineOf('offsets');
const ask = (i: 0 | 1) => ({
  kind: 'number' as const,
  answer: (job: Job) => inches(goesIn(job, i)),
  steps: (job: Job) => [
    say('seated', {
      mark: shortLength(job.mark),
      seen: shortLength(job.seen[i]),
      depth: shortLength(goesIn(job, i)),
    }),
  ],
});

export const seatToMark = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn: Drawn<typeof wants>, world) => {
    const { width, turn, beyond } = drawn;
    const { insertion } = read(world, `${width}-${turn}-90`, 'elbow');
    const mark = ticks(insertion + beyond);
    const within = inches(world.tables.limits.insertionOff.value);
    const isOff = (leg: 'first' | 'second') => drawn.off === leg || drawn.off === 'both';
    const first = isOff('first') ? (OFF[drawn.firstOff] ?? 0) : drawn.firstSeated;
    const second = isOff('second') ? (OFF[drawn.secondOff] ?? 0) : drawn.secondSeated;
    return {
      width,
      turn,
      wanted: insertion,
      mark,
      seen: [ticks(beyond - first * SIXTEENTH), ticks(beyond - second * SIXTEENTH)],
      reads: 'less',
      deep: within,
      shallow: within,
      looksAt: 'both',
    };
  },
  facts: ({ width, turn, wanted, mark, seen }, world) => ({
    width: wordFact(width),
    turn: wordFact(turn),
    wanted: lengthFact(wanted),
    mark: lengthFact(mark),
    seenFirst: lengthFact(seen[0]),
    seenSecond: lengthFact(seen[1]),
    within: lengthFact(world.tables.limits.insertionOff.value),
  }),
  asks: {
    first: ask(0),
    second: ask(1),
    seated: {
      kind: 'choice',
      answer: (job) => verdict(job, depths(job)),
      steps: (job) => [say('seatedWithin', { wanted: shortLength(job.wanted) })],
      follows: {
        asks: ['first', 'second'],
        answer: (job, _, earlier) => verdict(job, [earlier['first'] as number, earlier['second'] as number]),
      },
    },
  },
  slips: {
    anyDepth: (job) => ({ ...job, deep: ANY, shallow: ANY }),
    firstOnly: (job) => ({ ...job, looksAt: 'first' }),
    deepTaken: (job) => ({ ...job, deep: ANY }),
    eighth: (job) => ({ ...job, deep: 2 * job.deep, shallow: 2 * job.shallow }),
    exact: (job) => ({ ...job, deep: 0, shallow: 0 }),
    tapeTaken: (job) => ({ ...job, reads: 'tape' }),
    markTaken: (job) => ({ ...job, reads: 'mark' }),
    added: (job) => ({ ...job, reads: 'added' }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('offsets', ['seated', 'seatedWithin']),
});
